/**
 * The depth maps of the job on the screen, kept outside React: replayed from its marks when it changes, written by the brush in
 * between. A map is kept where it can be: a mark more at the end of the list is pressed into it, anything else replays that face.
 */
import { useMemo } from 'react';
import { useStore } from 'zustand/react';
import { createStore } from 'zustand/vanilla';
import type { CellBlock } from '../../geometry/depth/chart.ts';
import type { DepthMap } from '../../geometry/depth/depth-map.ts';
import type { ReadSurface } from '../../geometry/depth/read-surface.ts';
import { applyMark, replay } from '../../geometry/depth/replay.ts';
import { standsFor } from '../../geometry/job/face-names.ts';
import type { Mark } from '../../geometry/job/job.ts';
import type { JobFile, MarkFile, PartFile } from '../../geometry/job/job-file.ts';
import { measuredImpeller } from '../../geometry/job/measured-impeller.ts';
import { measuredMark } from '../../geometry/job/measured-mark.ts';
import { measuredPlate } from '../../geometry/job/measured-plate.ts';
import type { Face } from '../../geometry/part/face.ts';
import type { Part } from '../../geometry/part/part.ts';
import { partOf } from '../../geometry/part/part-of.ts';
import { jobStore } from '../job/job-store.ts';
import { useView } from '../view/view-store.ts';
import { onSurfaces, shapeOf, surfaceOfMark } from './read-surfaces.ts';

/** A face and its map. Another object once the job's marks have changed the map; what a brush presses into it leaves it the same. */
export interface LiveFace {
  /** Id of the part it is on. */
  readonly part: string;
  readonly face: Face;
  readonly map: DepthMap;
}

export interface LivePart {
  readonly part: Part;
  readonly faces: readonly LiveFace[];
}

/** The parts in the order of the job, at the job as it is now. */
function liveParts(): readonly LivePart[] {
  return held().map(({ live }) => live);
}

/** The part of that id, the first one when the job has none such. */
export function livePart(id: string): LivePart | undefined {
  const parts = liveParts();
  return parts.find(({ part }) => part.id === id) ?? parts[0];
}

export function liveFaces(): readonly LiveFace[] {
  return liveParts().flatMap(({ faces }) => faces);
}

export function liveFace(part: string, face: string): LiveFace | undefined {
  return liveFaces().find((live) => live.part === part && live.face.name === face);
}

const revisionStore = createStore<{ readonly revision: number }>()(() => ({ revision: 0 }));

/** A number that changes whenever marks or sizes did, so that what was drawn from the maps is drawn anew. */
export function useWearRevision(): number {
  return useStore(revisionStore, ({ revision }) => revision);
}

/** The part the person has chosen, as it stands now: another object after every change of its marks or sizes. */
export function useLivePart(): LivePart | undefined {
  const revision = useWearRevision();
  const id = useView((view) => view.part);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the revision says when the part has become another
  return useMemo(() => livePart(id), [id, revision]);
}

/** How many marks a map has been given since it was replayed: what was worked out from it holds as long as this does. */
export function marksPressed(map: DepthMap): number {
  return pressed.get(map) ?? 0;
}

type TouchListener = (live: LiveFace, block: CellBlock) => void;
const touchListeners = new Set<TouchListener>();

/** Hears of every block of cells a tool in hand may have changed. @returns stops it */
export function onTouched(listener: TouchListener): () => void {
  touchListeners.add(listener);
  return () => touchListeners.delete(listener);
}

/** Says that a tool in hand wrote into the map of a face. */
export function announceTouched(live: LiveFace, block: CellBlock): void {
  for (const listener of touchListeners) listener(live, block);
}

/**
 * Says that a map already holds a mark which is about to be added to the job: when it comes as the next one, it is not pressed
 * a second time.
 */
export function claimPressed(live: LiveFace, mark: MarkFile): void {
  claimed = { map: live.map, mark };
}

interface HeldPart {
  readonly file: PartFile;
  readonly live: LivePart;
  readonly faces: readonly HeldFace[];
}

interface HeldFace {
  readonly live: LiveFace;
  /** The marks its map holds, as the file has them. */
  readonly marks: readonly MarkFile[];
  /** The surfaces of those that are readings, as they were pressed. */
  readonly surfaces: readonly (ReadSurface | null)[];
}

const pressed = new WeakMap<DepthMap, number>();
let parts: readonly HeldPart[] = [];
let followed: JobFile | null = null;
/** A tool is writing into a map: it keeps that map until it is lifted. */
let isHeld = false;
let haveSurfacesCome = false;
let claimed: { readonly map: DepthMap; readonly mark: MarkFile } | null = null;

jobStore.subscribe((now, before) => {
  if (now.job.parts !== before.job.parts)
    revisionStore.setState(({ revision }) => ({ revision: revision + 1 }));
});

onSurfaces(() => {
  haveSurfacesCome = true;
  if (!isHeld) followSurfaces();
});

/** Keeps maps from being replaced while a tool writes into one of them. */
export function holdMaps(): void {
  isHeld = true;
}

/** The tool is lifted: surfaces that came meanwhile are pressed now. */
export function letMapsGo(): void {
  isHeld = false;
  if (haveSurfacesCome) followSurfaces();
}

function followSurfaces(): void {
  haveSurfacesCome = false;
  followed = null;
  revisionStore.setState(({ revision }) => ({ revision: revision + 1 }));
}

/** Follows the job only when someone looks: several changes in a row are replayed once. */
function held(): readonly HeldPart[] {
  const { job } = jobStore.getState();
  if (job === followed) return parts;
  parts = job.parts.map((file) =>
    followPart(
      file,
      parts.find(({ live }) => live.part.id === file.id),
    ),
  );
  followed = job;
  claimed = null;
  return parts;
}

function followPart(file: PartFile, before: HeldPart | undefined): HeldPart {
  if (before?.file === file && !before.faces.some((face) => hasOtherSurfaces(file, face))) return before;
  if (before !== undefined && hasSameShape(file, before.file)) {
    return heldPart(
      file,
      before.live.part,
      before.faces.map((face) => followFace(file, face)),
    );
  }
  const part = partOf(file.kind === 'impeller' ? measuredImpeller(file, []) : measuredPlate(file, []), null);
  return heldPart(
    file,
    part,
    part.faces.map((face) => replayed(file, face)),
  );
}

function heldPart(file: PartFile, part: Part, faces: readonly HeldFace[]): HeldPart {
  return { file, live: { part, faces: faces.map(({ live }) => live) }, faces };
}

function followFace(file: PartFile, before: HeldFace): HeldFace {
  const { face, map } = before.live;
  const marks = marksOn(file, face);
  const isKept =
    marks.length >= before.marks.length && before.marks.every((mark, i) => isSame(mark, marks[i]));
  if (!isKept || marks.length > before.marks.length + 1 || hasOtherSurfaces(file, before))
    return replayed(file, face);
  const next = marks.at(before.marks.length);
  if (next === undefined) return before;
  // Its surface is still to come; that replays the face.
  if (next.kind === 'readings') return replayed(file, face);
  pressed.set(map, marksPressed(map) + 1);
  if (claimed !== null && claimed.map === map && isSame(claimed.mark, next)) return { ...before, marks };
  const mark = measuredMark(next, file);
  if (mark !== null) applyMark(map, face, mark, () => null);
  return { ...before, live: { ...before.live }, marks };
}

function replayed(file: PartFile, face: Face): HeldFace {
  const marks = marksOn(file, face);
  const surfaces = surfacesOn(file, face);
  const surfaceOf = new Map<Mark, ReadSurface | null>();
  const own = marks.flatMap((mark): Mark[] => {
    const taken = measuredMark(mark, file);
    if (taken?.kind === 'readings') surfaceOf.set(taken, surfaces[surfaceOf.size]);
    return taken === null ? [] : [taken];
  });
  const map = replay(face, own, { surfaceOf: (mark) => surfaceOf.get(mark) ?? null });
  return { live: { part: file.id, face, map }, marks, surfaces };
}

/** The surfaces of the readings on a face, in the order of the marks. */
function surfacesOn(file: PartFile, face: Face): readonly (ReadSurface | null)[] {
  return file.wear.flatMap((mark, i) =>
    mark.kind === 'readings' && standsFor(mark.face, face.name) ? [surfaceOfMark(file, i)] : [],
  );
}

function hasOtherSurfaces(file: PartFile, { live, surfaces }: HeldFace): boolean {
  const now = surfacesOn(file, live.face);
  return now.length !== surfaces.length || now.some((surface, i) => surface !== surfaces[i]);
}

function marksOn(file: PartFile, face: Face): readonly MarkFile[] {
  return file.wear.filter((mark) => standsFor(mark.face, face.name));
}

/** True when the two parts have the same metal as new. */
function hasSameShape(a: PartFile, b: PartFile): boolean {
  return isSame(shapeOf(a), shapeOf(b));
}

/** The job store keeps untouched branches, so this mostly ends at the references; a job opened once more is told by its text. */
function isSame(a: unknown, b: unknown): boolean {
  return Object.is(a, b) || (typeof a === 'object' && JSON.stringify(a) === JSON.stringify(b));
}
