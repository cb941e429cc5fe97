/**
 * The straightedge as it lies: how the next one is laid, which kept section is looked at, and the one under the hand. Outside React but for
 * what is chosen; who draws the one under the hand hears of it once a frame.
 */
import { useStore } from 'zustand/react';
import { createStore } from 'zustand/vanilla';
import type { Section } from '../../geometry/job/job.ts';
import type { PartFile, SectionFile } from '../../geometry/job/job-file.ts';
import { jobStore } from '../job/job-store.ts';
import { type Lay, ownSection } from '../tools/straightedge.ts';
import { viewStore } from '../view/view-store.ts';
import { type LiveFace, liveFace } from './live-faces.ts';

interface Chosen {
  readonly lay: Lay;
  /** The kept section that was chosen last, and of which part; the newest while none was. */
  readonly kept: { readonly part: string; readonly at: number } | null;
}

export const straightedgeStore = createStore<Chosen>()(() => ({ lay: 'line', kept: null }));

export function useStraightedge<T>(select: (chosen: Chosen) => T): T {
  return useStore(straightedgeStore, select);
}

/** A section on the face it lies on, as it is worn now. */
export interface LaidSection {
  readonly live: LiveFace;
  readonly section: Section;
}

let inHand: LaidSection | null = null;
let isWaiting = false;
const listeners = new Set<() => void>();

/** Sets what lies under the hand; null when it is lifted. */
export function layInHand(laid: LaidSection | null): void {
  inHand = laid;
  if (isWaiting) return;
  isWaiting = true;
  nextFrame(() => {
    isWaiting = false;
    for (const listener of listeners) listener();
  });
}

/** Hears, at most once a frame, that the straightedge under the hand moved. @returns stops it */
export function onLaid(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

export function laidInHand(): LaidSection | null {
  return inHand;
}

/** Place in the part's list of the kept section that is looked at; null when it has none. */
export function keptInSight(
  { id, sections = [] }: PartFile,
  kept = straightedgeStore.getState().kept,
): number | null {
  if (sections.length === 0) return null;
  const last = sections.length - 1;
  return kept?.part === id ? Math.min(kept.at, last) : last;
}

/** What is to be seen in section: the line under the hand, else the kept one that is looked at. */
export function laidInSight(): LaidSection | null {
  if (inHand !== null) return inHand;
  const { parts } = jobStore.getState().job;
  const part = parts.find(({ id }) => id === viewStore.getState().part) ?? parts.at(0);
  const at = part === undefined ? null : keptInSight(part);
  const file = at === null ? undefined : part?.sections?.[at];
  return part === undefined || file === undefined ? null : laidOn(part, file);
}

/** A kept section of a part on its face. */
export function laidOn(part: Pick<PartFile, 'id'>, file: SectionFile): LaidSection | null {
  const live = liveFace(part.id, file.face);
  if (live === undefined) return null;
  const known = own.get(file);
  const section = known?.face === live.face ? known.section : ownSection(live.face, file);
  own.set(file, { face: live.face, section });
  return { live, section };
}

/** A kept section stays one object, so that what was worked out for it is found again. */
const own = new WeakMap<object, { readonly face: LiveFace['face']; readonly section: Section }>();

function nextFrame(run: () => void): void {
  if (typeof requestAnimationFrame === 'function') requestAnimationFrame(run);
  else queueMicrotask(run);
}
