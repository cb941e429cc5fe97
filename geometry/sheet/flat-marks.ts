import type { Deg } from '../units.ts';
import type { FlatPoint } from './flat-frame.ts';

/** A place on the picture of a face with a word or a number to it. */
export interface FlatMark {
  readonly at: FlatPoint;
  readonly text: string;
}

/** A word that lies along something. */
export interface TurnedMark extends FlatMark {
  /** Clockwise on the page. */
  readonly angle: Deg;
}

/** A damage region: its number in a ring, its depth beside it when there is room for one. */
export interface RegionMark extends FlatMark {
  readonly depth: string | null;
}

/** What stands on the picture of a face beside its depth. */
export interface FlatMarks {
  /** Numbers of the damage regions, at their deepest points. */
  readonly regions: readonly RegionMark[];
  /** Words outside the face that say how it lies: angles, x, y. */
  readonly bearings: readonly FlatMark[];
  /** Gauge readings: where, and the depth read. */
  readonly readings: readonly FlatMark[];
  /** Names of the vanes on their footprints. */
  readonly vanes: readonly TurnedMark[];
}
