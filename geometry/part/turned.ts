import type { Grid } from './face.ts';

/** Mean of cos or sin over each column: the value at its middle times sin(h) / h, h the half width. */
export function columnMean(grid: Grid, wave: (angle: number) => number): Float64Array {
  const half = grid.dv / 2;
  const mean = Math.sin(half) / half;
  return Float64Array.from({ length: grid.columns }, (_, j) => wave(grid.v0 + (j + 0.5) * grid.dv) * mean);
}
