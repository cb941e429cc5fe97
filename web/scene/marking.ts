/**
 * The tool in hand, whichever picture it is used on. Holds what is being drawn; writes to live maps while a brush moves and adds one
 * mark when it is done. Nothing here is React: pictures listen and draw the draft.
 */
import type { MarkFile } from '../../geometry/job/job-file.ts';
import { toGridPoint } from '../../geometry/part/face.ts';
import type { FacePoint, Mm } from '../../geometry/units.ts';
import { jobStore } from '../job/job-store.ts';
import { type AreaInHand, startArea } from '../tools/area.ts';
import { type BrushInHand, putBrushDown } from '../tools/brush.ts';
import { type EdgeInHand, startEdge, takesEdge } from '../tools/edge.ts';
import { filePoint, ownPoint } from '../tools/file-point.ts';
import { type PatchInHand, startPatch } from '../tools/patch.ts';
import { pitMark } from '../tools/pit.ts';
import { layStraightedge, type StraightedgeInHand } from '../tools/straightedge.ts';
import { viewStore } from '../view/view-store.ts';
import { addEdgePoint, addMark } from '../wear/add-mark.ts';
import { addSection } from '../wear/add-section.ts';
import { layInHand, straightedgeStore } from '../wear/laid-section.ts';
import { announceTouched, claimPressed, type LiveFace, liveFace } from '../wear/live-faces.ts';
import { dropStroke, takeStroke, watchFace } from '../wear/live-totals.ts';
import { onReadingPlace, readingPlace, setReadingPlace, tapReadingPlace } from '../wear/reading-place.ts';

/** What is being drawn and is no mark yet, in our units: the edge of a box, the corners of an area so far, a place whose reading is to come. */
export type Draft =
  | { readonly kind: 'box'; readonly live: LiveFace; readonly lines: readonly (readonly FacePoint[])[] }
  | { readonly kind: 'corners'; readonly live: LiveFace; readonly corners: readonly FacePoint[] }
  | { readonly kind: 'place'; readonly live: LiveFace; readonly at: FacePoint };

type InHand =
  | { readonly tool: 'brush'; readonly live: LiveFace; readonly brush: BrushInHand }
  | { readonly tool: 'patch'; readonly live: LiveFace; readonly patch: PatchInHand }
  | { readonly tool: 'edge'; readonly live: LiveFace; readonly edge: EdgeInHand }
  | { readonly tool: 'straightedge'; readonly live: LiveFace; readonly rule: StraightedgeInHand }
  /** A tap on its way: the place may still be moved. */
  | { readonly tool: 'pit' | 'corner' | 'place'; readonly live: LiveFace; readonly at: FacePoint };

let inHand: InHand | null = null;
let area: { readonly live: LiveFace; readonly inHand: AreaInHand } | null = null;
const listeners = new Set<() => void>();

/** True when a press on a face marks: a marking tool is chosen on the step that marks. */
export function isMarking(): boolean {
  const { step, tool } = viewStore.getState();
  return step === 'wear' && tool !== 'turn';
}

/** Whether the tool in hand marks this face at all: an edge can be eaten back, a side can't. */
export function marksFace({ face }: LiveFace): boolean {
  return viewStore.getState().tool !== 'edge' || takesEdge(face);
}

/** The face that is being marked; an area keeps its face from corner to corner. */
export function faceInHand(): LiveFace | null {
  return inHand?.live ?? area?.live ?? null;
}

export function isBrushDown(): boolean {
  return inHand?.tool === 'brush';
}

export function beginMark(live: LiveFace, at: FacePoint): void {
  const { tool, brush, set, face, part } = viewStore.getState();
  if (face !== live.face.name || part !== live.part) set({ face: live.face.name, part: live.part });
  if (tool === 'brush') {
    watchFace(live);
    const held = putBrushDown(live.face, live.map, brush, (block) => announceTouched(live, block));
    inHand = { tool: 'brush', live, brush: held };
    held.drawTo(at);
  } else if (tool === 'patch') inHand = { tool: 'patch', live, patch: startPatch(live.face, brush, at) };
  else if (tool === 'edge') {
    if (takesEdge(live.face)) inHand = { tool: 'edge', live, edge: startEdge(live.face, brush, at) };
  } else if (tool === 'straightedge') {
    const rule = layStraightedge(live.face, straightedgeStore.getState().lay, at);
    inHand = { tool: 'straightedge', live, rule };
    showRule(live, rule);
  } else if (tool === 'pit') inHand = { tool: 'pit', live, at };
  else if (tool === 'readings') inHand = { tool: 'place', live, at };
  else if (tool === 'area' && (area === null || area.live.face === live.face))
    inHand = { tool: 'corner', live, at };
  tell();
}

/** Draws on; the point may lie beyond the face's edges. */
export function drawMark(at: FacePoint): void {
  if (inHand === null) return;
  if (inHand.tool === 'brush') inHand.brush.drawTo(at);
  else if (inHand.tool === 'patch') inHand.patch.drawTo(at);
  else if (inHand.tool === 'edge') inHand.edge.drawTo(at);
  else if (inHand.tool === 'straightedge') {
    inHand.rule.drawTo(at);
    showRule(inHand.live, inHand.rule);
  } else inHand = { ...inHand, at };
  tell();
}

/**
 * Ends what is in hand with a mark, where it leaves one.
 * @param closeWithin  how near its first corner an area closes, mm
 * @param isDouble     the second half of a double tap: an area closes
 */
export function finishMark(closeWithin: Mm, isDouble: boolean): void {
  const done = inHand;
  inHand = null;
  if (done === null) return;
  if (done.tool === 'brush') finishStroke(done.live, done.brush);
  else if (done.tool === 'patch') add(done.live, done.patch.finish());
  else if (done.tool === 'edge') finishEdge(done.live, done.edge);
  else if (done.tool === 'straightedge') keepSection(done.live, done.rule);
  else if (done.tool === 'pit') add(done.live, pitMark(done.live.face, viewStore.getState().brush, done.at));
  else if (done.tool === 'place') takePlace(done.live, done.at);
  else if (isDouble) finishArea();
  else {
    area ??= { live: done.live, inHand: startArea(done.live.face, viewStore.getState().brush) };
    const mark = area.inHand.tap(done.at, closeWithin);
    if (mark !== null) takeArea(mark);
  }
  tell();
}

/** Calls off the stroke, box or tap in hand; corners of an area that are set stay. */
export function abandonMark(): void {
  const left = inHand;
  inHand = null;
  if (left?.tool === 'brush') {
    left.brush.abandon();
    dropStroke();
  }
  if (left?.tool === 'straightedge') layInHand(null);
  tell();
}

/** Closes the area in hand, if it has enough corners. @returns whether there was one */
export function finishArea(): boolean {
  const mark = area?.inHand.finish() ?? null;
  if (mark !== null) takeArea(mark);
  tell();
  return mark !== null;
}

/** Takes the last corner of the area back, with the last one the area. @returns whether there was one */
export function takeCornerBack(): boolean {
  if (area === null) return false;
  area.inHand.takeBack();
  if (area.inHand.corners().length === 0) area = null;
  tell();
  return true;
}

/** Gives the area up. @returns whether there was one */
export function abandonArea(): boolean {
  const had = area !== null;
  area = null;
  if (had) tell();
  return had;
}

export function draft(): Draft | null {
  if (inHand?.tool === 'patch') {
    return { kind: 'box', live: inHand.live, lines: inHand.patch.outline() };
  }
  if (inHand?.tool === 'edge') {
    return { kind: 'box', live: inHand.live, lines: inHand.edge.outline() };
  }
  if (inHand?.tool === 'place') return { kind: 'place', live: inHand.live, at: inHand.at };
  if (area === null) {
    return inHand?.tool === 'corner'
      ? { kind: 'corners', live: inHand.live, corners: [inHand.at] }
      : placeInHand();
  }
  const moving = inHand?.tool === 'corner' ? [inHand.at] : [];
  return { kind: 'corners', live: area.live, corners: [...area.inHand.corners(), ...moving] };
}

/** Hears of every change of what is in hand. @returns stops it */
export function onDraft(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

function finishStroke(live: LiveFace, brush: BrushInHand): void {
  const mark = brush.lift();
  if (mark !== null) claimPressed(live, mark);
  if (mark !== null && takeStroke(() => addMark(live.part, mark))) return;
  brush.abandon();
  dropStroke();
}

/** A tap on the edge whose mark is in hand sets a point of it; anything else is a mark of its own. */
function finishEdge(live: LiveFace, edge: EdgeInHand): void {
  const { selectedMark, brush } = viewStore.getState();
  const isPoint = edge.isTap() && selectedMark !== null;
  if (isPoint && addEdgePoint(live, selectedMark, [edge.start(), brush.depth])) return;
  add(live, edge.finish());
}

function showRule(live: LiveFace, rule: StraightedgeInHand): void {
  const section = rule.section();
  layInHand(section && { live, section });
}

/** A line laid is kept with the job, and stays in sight. */
function keepSection({ part }: LiveFace, rule: StraightedgeInHand): void {
  const section = rule.finish();
  const at = section && addSection(part, section);
  if (at !== null) straightedgeStore.setState({ kept: { part, at } });
  layInHand(null);
}

/** A reading waits for its depth where the finger came off. Beyond the edge there is nothing to read. */
function takePlace(live: LiveFace, at: FacePoint): void {
  if (!live.face.holds(...toGridPoint(live.face, at))) return;
  const [first, second] = filePoint(live.face, at);
  tapReadingPlace({ part: live.part, face: live.face.name, at: [first, second] });
}

/** Gives up the place whose reading is to come. @returns whether there was one */
export function dropPlace(): boolean {
  const had = isReading() && readingPlace() !== null;
  if (had) setReadingPlace(null);
  return had;
}

/** True while places are tapped and depths typed in turn: a tap then leaves the keyboard where it is. */
export function isReading(): boolean {
  return isMarking() && viewStore.getState().tool === 'readings';
}

function placeInHand(): Draft | null {
  const place = isReading() ? readingPlace() : null;
  const live = place === null ? undefined : liveFace(place.part, place.face);
  const [first, second] = place?.at ?? [null, null];
  if (live === undefined || first === null || second === null) return null;
  return { kind: 'place', live, at: ownPoint(live.face, [first, second]) };
}

function takeArea(mark: MarkFile): void {
  const live = area?.live;
  area = null;
  if (live !== undefined) add(live, mark);
}

/** Adds a drawn shape and puts it into the hand of the list, where its sizes can be typed. */
function add(live: LiveFace, mark: MarkFile | null): void {
  if (mark === null || !addMark(live.part, mark)) return;
  const part = jobStore.getState().job.parts.find(({ id }) => id === live.part);
  if (part !== undefined) viewStore.getState().set({ selectedMark: part.wear.length - 1 });
}

function tell(): void {
  for (const listener of listeners) listener();
}

onReadingPlace(tell);

// A job that changes under the hand (undo by key in mid-stroke) takes what is in hand with it; corners belong to the face they were set on.
jobStore.subscribe((now, before) => {
  if (now.job.parts === before.job.parts) return;
  if (inHand !== null) abandonMark();
  abandonArea();
});

viewStore.subscribe((now, before) => {
  if (now.tool === before.tool && now.step === before.step) return;
  if (inHand !== null) abandonMark();
  abandonArea();
});
