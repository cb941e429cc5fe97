import type { Face } from '../part/face.ts';
import type { FlatFrame, FlatPoint } from './flat-frame.ts';

/**
 * Cuts closed rings into the runs that lie on the face; each keeps one point beyond the edge at either end, so that it reaches it.
 * A ring that lies on the face all round stays whole, its last point the first again.
 */
export function runsOnFace(
  rings: readonly (readonly FlatPoint[])[],
  face: Face,
  frame: FlatFrame,
): FlatPoint[][] {
  const runs: FlatPoint[][] = [];
  for (const ring of rings) {
    const points = ring.slice(0, -1);
    const on = points.map(([x, y]) => face.holds(...frame.toGrid(x, y)));
    const gap = on.indexOf(false);
    if (gap < 0) {
      runs.push([...ring]);
      continue;
    }
    let run: FlatPoint[] = [];
    for (let step = 0; step <= points.length; step++) {
      const i = (gap + step) % points.length;
      if (on[i]) run.push(points[i]);
      else {
        if (run.length > 1) runs.push([...run, points[i]]);
        run = [points[i]];
      }
    }
  }
  return runs;
}
