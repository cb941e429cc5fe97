import { contours } from 'd3-contour';
import type { Mm } from '../../geometry/units.ts';

/** A place in the flat picture, mm, as the flat frame counts it. */
export type FlatPlace = readonly [x: Mm, y: Mm];

export interface TracedBox {
  readonly x0: Mm;
  readonly x1: Mm;
  readonly y0: Mm;
  readonly y1: Mm;
}

/** Samples along the longer side. */
const FINE = 180;

/**
 * The closed lines along which a value is 0, where it is above 0 inside and below outside.
 * @param valueAt  best a distance: between samples it is taken as linear
 */
export function traced(box: TracedBox, valueAt: (x: Mm, y: Mm) => number): readonly (readonly FlatPlace[])[] {
  const step = Math.max(box.x1 - box.x0, box.y1 - box.y0) / FINE;
  const columns = Math.ceil((box.x1 - box.x0) / step) + 3;
  const rows = Math.ceil((box.y1 - box.y0) / step) + 3;
  const x = (column: number) => box.x0 + (column - 1) * step;
  const y = (row: number) => box.y0 + (row - 1) * step;
  const values = Array.from({ length: columns * rows }, (_, i) =>
    valueAt(x(i % columns), y(Math.floor(i / columns))),
  );
  const { coordinates } = contours().size([columns, rows]).contour(values, 0);
  return coordinates
    .flat()
    .map((ring) => ring.slice(0, -1).map(([column, row]): FlatPlace => [x(column - 0.5), y(row - 0.5)]));
}
