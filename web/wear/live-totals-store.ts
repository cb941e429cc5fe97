/** What the brush has changed so far, to be shown. Apart from what counts it: the figures on the screen need no depth maps for it. */
import { useStore } from 'zustand/react';
import { createStore } from 'zustand/vanilla';
import type { Mm, Mm3, Mm4 } from '../../geometry/units.ts';

export interface LiveTotals {
  /** mm3 more (or less) than the last estimate says, by `part:face`; a face that did not change is not there. */
  readonly lostChange: Readonly<Record<string, Mm3>>;
  /** The same metal times where it lies about the shaft, mm4, by part; a part that did not change is not there. */
  readonly lostPull: Readonly<Record<string, readonly [x: Mm4, y: Mm4]>>;
  /** Worn depth under the pointer; null when it is off the faces. */
  readonly pointerDepth: Mm | null;
}

export const liveTotals = createStore<LiveTotals>()(() => ({
  lostChange: {},
  lostPull: {},
  pointerDepth: null,
}));

export function useLiveTotals<T>(select: (totals: LiveTotals) => T): T {
  return useStore(liveTotals, select);
}
