import type { Face } from '../part/face.ts';
import { TURN } from '../units.ts';
import type { Tally } from './tally.ts';

/** How the filler of a face lies along the coordinate its columns run: bin by bin, mm3, with its extent across. */
export interface RunBins {
  readonly along: 'first' | 'second';
  readonly closed: boolean;
  readonly start: number;
  readonly step: number;
  readonly volume: Float64Array;
  readonly from: Float64Array;
  readonly to: Float64Array;
}

export function runBins(face: Face, tally: Tally): RunBins {
  const { grid } = face;
  const across = (row: number, column: number): number =>
    tally.columnFill[column] > 0 ? grid.u0 + row * grid.du : Number.NaN;
  return {
    along: face.columnsAre,
    closed: grid.wraps && Math.abs(grid.columns * grid.dv - TURN) < 1e-9,
    start: grid.v0,
    step: grid.dv,
    volume: tally.columnFill,
    from: Float64Array.from(tally.rowFrom, across),
    to: Float64Array.from(tally.rowTo, across),
  };
}
