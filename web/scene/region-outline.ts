import { cellAt } from '../../geometry/depth/depth-at.ts';
import type { Face } from '../../geometry/part/face.ts';
import { flatFrame } from '../../geometry/sheet/flat-frame.ts';
import type { FaceRegions } from '../worker/estimate-job.ts';
import type { GridPlace } from './face-ring.ts';
import { type FlatPlace, traced } from './traced.ts';

/** The edge of a damage region as closed lines on its face, to a cell or half a percent of its size; none when it is not there. */
export function regionOutline(
  face: Face,
  regions: FaceRegions,
  id: string,
): readonly (readonly GridPlace[])[] {
  const number = regions.ids.indexOf(id) + 1;
  const { grid } = face;
  if (number === 0 || regions.columns !== grid.columns || regions.rows !== grid.rows) return [];
  const frame = flatFrame(face);
  let [x0, x1, y0, y1] = [Infinity, -Infinity, Infinity, -Infinity];
  for (let cell = 0; cell < regions.label.length; cell++) {
    if (regions.label[cell] !== number) continue;
    const column = cell % grid.columns;
    const row = (cell - column) / grid.columns;
    const [x, y] = frame.toFlat(grid.u0 + (row + 0.5) * grid.du, grid.v0 + (column + 0.5) * grid.dv);
    [x0, x1, y0, y1] = [Math.min(x0, x), Math.max(x1, x), Math.min(y0, y), Math.max(y1, y)];
  }
  if (x1 < x0) return [];
  const isInside = (x: number, y: number) => {
    const cell = cellAt(face, ...frame.toGrid(x, y));
    return cell >= 0 && regions.label[cell] === number ? 0.5 : -0.5;
  };
  const margin = 2 * grid.du;
  const box = { x0: x0 - margin, x1: x1 + margin, y0: y0 - margin, y1: y1 + margin };
  return traced(box, isInside).map((line) => evened(line).map(([x, y]) => frame.toGrid(x, y)));
}

/** Cells have corners and regions do not: each point goes to the mean of its neighbours, a few times over. */
function evened(line: readonly FlatPlace[]): readonly FlatPlace[] {
  let points = line;
  for (let pass = 0; pass < 3; pass++) {
    points = points.map(([x, y], i): FlatPlace => {
      const [ax, ay] = points[(i + points.length - 1) % points.length];
      const [bx, by] = points[(i + 1) % points.length];
      return [(ax + 2 * x + bx) / 4, (ay + 2 * y + by) / 4];
    });
  }
  return points;
}
