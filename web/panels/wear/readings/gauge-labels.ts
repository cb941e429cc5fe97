import type { ReadingKind } from '../../../tools/reading-depth.ts';

/** What the field for a reading is called, by what is read. */
export const GAUGE_LABELS: Readonly<Record<ReadingKind, string>> = {
  depth: 'Depth here',
  'two-readings': 'Gauge reading here',
  'wall-left': 'Wall left here',
};
