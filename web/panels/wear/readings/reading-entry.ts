/**
 * Readings on their way into the job: how they are put in, what is typed and not put down yet, and how far the walk along a grid has
 * come. Lasts while the app is open, whatever panel is shown; the readings themselves are in the job at once.
 */
import { useStore } from 'zustand/react';
import { createStore } from 'zustand/vanilla';
import type { FacePoint, Mm } from '../../../../geometry/units.ts';
import type { ReadingKind } from '../../../tools/reading-depth.ts';
import type { ReadingGrid } from '../../../tools/reading-grid.ts';
import { viewStore } from '../../../view/view-store.ts';
import { onReadingTap, setReadingPlace } from '../../../wear/reading-place.ts';
import { forgetDrafts } from '../../forget-drafts.ts';

export type EntryMode = 'single' | 'walk' | 'paste';

/** A walk along a grid: its places, and which of them is next. Past the last one it is done. */
export interface Walk {
  readonly part: string;
  readonly face: string;
  readonly places: readonly FacePoint[];
  readonly next: number;
}

export interface EntryState {
  readonly mode: EntryMode;
  readonly kind: ReadingKind;
  /** Text of the reading that is being typed. */
  readonly reading: string;
  /** Why it was not put down, in sentences. */
  readonly faults: readonly string[];
  /** What the gauge reads on sound metal; null before it is typed. */
  readonly reference: Mm | null;
  /** What was put down last, in words. */
  readonly note: string;
  /** Text of the table to be taken. */
  readonly pasted: string;
  readonly walk: Walk | null;
  /** The grid as it is being typed, and whose face it is for; null before anything is. */
  readonly plan: { readonly of: string; readonly grid: ReadingGrid } | null;
}

const entryStore = createStore<EntryState>()(() => ({
  mode: 'single',
  kind: 'depth',
  reading: '',
  faults: [],
  reference: null,
  note: '',
  pasted: '',
  walk: null,
  plan: null,
}));

export const readingEntry = (): EntryState => entryStore.getState();

export function useEntry<T>(select: (state: EntryState) => T): T {
  return useStore(entryStore, select);
}

export function setEntry(change: Partial<EntryState>): void {
  entryStore.setState(change);
}

/** Path of the place in hand, as fields and their drafts are named. */
export const PLACE_PATH = 'reading.at';

/** Changes the way readings are put in. A walk under way goes on where it stood. */
export function chooseMode(mode: EntryMode): void {
  forgetDrafts(PLACE_PATH);
  setEntry({ mode, faults: [], note: '' });
  showNext(mode === 'walk' ? readingEntry().walk : null);
}

/** Begins a walk. */
export function startWalk(walk: Walk): void {
  setEntry({ walk, reading: '', faults: [], note: '' });
  showNext(walk);
}

/** Goes some places on (or back, below 0), never before the first and at most one past the last. */
export function walkOn(steps: number): void {
  const { walk } = readingEntry();
  if (walk === null) return;
  const next = Math.min(walk.places.length, Math.max(0, walk.next + steps));
  startWalk({ ...walk, next });
}

export function endWalk(): void {
  setEntry({ walk: null, reading: '', faults: [], note: '' });
  showNext(null);
}

/** Draws the next place in the pictures, and turns to the face it is on. */
export function showNext(walk: Walk | null): void {
  const at = walk?.places[walk.next];
  if (walk !== null) viewStore.getState().set({ part: walk.part, face: walk.face });
  setReadingPlace(walk === null || at === undefined ? null : { part: walk.part, face: walk.face, at });
}

// A tap in the middle of a walk, or of anything else, is a reading of its own; what is typed goes with it, and the walk waits.
onReadingTap(() => {
  forgetDrafts(PLACE_PATH);
  setEntry({ mode: 'single', faults: [] });
});
