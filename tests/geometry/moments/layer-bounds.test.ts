import fc from 'fast-check';
import { expect, test } from 'vitest';
import { depthAt } from '../../../geometry/depth/depth-at.ts';
import { deepestOf } from '../../../geometry/depth/depth-map.ts';
import { reachOf } from '../../../geometry/depth/reach.ts';
import { replay } from '../../../geometry/depth/replay.ts';
import type { Patch, Pit } from '../../../geometry/job/job.ts';
import { layerBounds } from '../../../geometry/moments/layer-bounds.ts';
import { TURN, toRadians } from '../../../geometry/units.ts';
import { faceOf } from '../made.ts';

const onBore = (
  degrees: readonly [number, number],
  below: readonly [number, number],
  depth: readonly [number, number],
): Patch => ({
  kind: 'patch',
  face: 'bore',
  blend: 'deepest',
  first: [toRadians(degrees[0]), toRadians(degrees[1])],
  second: below,
  depth,
});
const bowl: Pit = {
  kind: 'pit',
  face: 'bore',
  blend: 'deepest',
  at: [toRadians(120), 9],
  radius: 7,
  depth: 3,
  form: 'bowl',
};

test('no place of a box is deeper or shallower than its bounds say, across the seam and off the face too', () => {
  const face = faceOf('bore', {}, 1);
  const { grid } = face;
  const map = replay(face, [onBore([300, 430], [3, 14], [4, 2]), bowl]);
  // Every third row is no part of the layer.
  const holds = (cell: number) => Math.floor(cell / grid.columns) % 3 !== 0;
  const bounds = layerBounds(face, { map, from: 0, reach: deepestOf(map), near: reachOf(map), holds });
  const u = fc.double({ min: -4, max: 22, noNaN: true });
  const v = fc.double({ min: -2, max: 8, noNaN: true });
  const share = fc.double({ min: 0, max: 1, noNaN: true });
  fc.assert(
    fc.property(u, u, v, v, share, share, (u0, u1, v0, v1, a, b) => {
      const { least, most } = bounds(u0, v0, u1, v1);
      const [atU, atV] = [u0 + a * (u1 - u0), v0 + b * (v1 - v0)];
      const row = Math.floor((atU - grid.u0) / grid.du);
      const turned = atV - TURN * Math.floor(atV / TURN);
      const cell = row * grid.columns + Math.min(grid.columns - 1, Math.floor(turned / grid.dv));
      const isHeld = row >= 0 && row < grid.rows && holds(cell);
      const depth = isHeld ? depthAt(map, face, atU, atV) : 0;
      expect(depth).toBeLessThanOrEqual(most);
      expect(depth).toBeGreaterThanOrEqual(least);
    }),
    { numRuns: 2000 },
  );
});

test('bounds of a layer that is worn all over say so: a long stretch is taken at once', () => {
  const face = faceOf('bore', {}, 1);
  const map = replay(face, [onBore([0, 360], [0, 18], [5, 5])]);
  const bounds = layerBounds(face, { map, from: 0, reach: 5, near: reachOf(map), holds: () => true });
  expect(bounds(0.1, 1, 17.9, 1)).toEqual({ least: 5, most: 5 });
  expect(bounds(0.1, 1, 18.1, 1)).toEqual({ least: 0, most: 5 });
});
