import type { Minute } from '../../../geometry/units.ts';

/** A long stretch in which nothing begins or ends, drawn short. */
export interface Fold {
  readonly from: Minute;
  readonly to: Minute;
  /** px. */
  readonly x: number;
  readonly width: number;
}

/** Minutes along a line of px: even, but for the folds. */
export interface TimeScale {
  readonly width: number;
  readonly folds: readonly Fold[];
  /** Where something begins or ends, ascending. */
  readonly stops: readonly Minute[];
  x(minute: Minute): number;
}

/** A bar of 12 min, a mix, is then as wide as its number and a space. */
const PX_PER_MINUTE = 1.6;
const FOLD_OVER: Minute = 150;
const FOLD_WIDTH = 88;

/**
 * @param events  where something begins or ends, and 0 and the end of the plan; in any order
 */
export function timeScale(events: readonly Minute[]): TimeScale {
  const stops = [...new Set(events)].sort((a, b) => a - b);
  const places = [0];
  const folds: Fold[] = [];
  for (let i = 1; i < stops.length; i++) {
    const span = stops[i] - stops[i - 1];
    const x = places[i - 1];
    if (span > FOLD_OVER) folds.push({ from: stops[i - 1], to: stops[i], x, width: FOLD_WIDTH });
    places.push(x + (span > FOLD_OVER ? FOLD_WIDTH : span * PX_PER_MINUTE));
  }
  const last = stops.length - 1;
  return {
    width: places[Math.max(0, last)],
    folds,
    stops,
    x(minute) {
      if (last < 1 || minute <= stops[0]) return 0;
      const i = stops.findIndex((stop) => stop >= minute);
      if (i < 0) return places[last];
      const share = (minute - stops[i - 1]) / (stops[i] - stops[i - 1]);
      return places[i - 1] + share * (places[i] - places[i - 1]);
    },
  };
}
