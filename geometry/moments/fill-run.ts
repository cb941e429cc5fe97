import type { Face } from '../part/face.ts';
import { TURN } from '../units.ts';
import type { Layer } from './tally.ts';

/** How one layer of the filler of a face lies along the way it is worked: bin by bin, mm3, with its extent across. */
export interface RunBins {
  readonly along: 'first' | 'second';
  readonly closed: boolean;
  readonly start: number;
  readonly step: number;
  readonly volume: Float64Array;
  readonly from: Float64Array;
  readonly to: Float64Array;
}

export function runBins(face: Face, layer: Layer): RunBins {
  const { grid, columnsAre, worked } = face;
  const byRow = worked === 'by-row';
  const rowsAre = columnsAre === 'first' ? 'second' : 'first';
  const [start, step] = byRow ? [grid.v0, grid.dv] : [grid.u0, grid.du];
  const across = (cells: number, bin: number): number =>
    layer.fill[bin] > 0 ? start + cells * step : Number.NaN;
  return {
    along: byRow ? rowsAre : columnsAre,
    closed: !byRow && grid.wraps && Math.abs(grid.columns * grid.dv - TURN) < 1e-9,
    start: byRow ? grid.u0 : grid.v0,
    step: byRow ? grid.du : grid.dv,
    volume: layer.fill,
    from: Float64Array.from(layer.from, across),
    to: Float64Array.from(layer.to, across),
  };
}
