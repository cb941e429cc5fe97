import { describe, expect, test } from 'vitest';
import { depthAt } from '../../../geometry/depth/depth-at.ts';
import { replay } from '../../../geometry/depth/replay.ts';
import type { Smooth } from '../../../geometry/job/job.ts';
import { toRadians } from '../../../geometry/units.ts';
import { faceOf, patch, polar } from '../made.ts';

const face = faceOf('face', { holes: [] });
const smooth: Smooth = {
  kind: 'smooth',
  face: 'face',
  path: [polar(110, 40), polar(110, 50)],
  radius: 12,
  strength: 1,
};

describe('smoothing', () => {
  test('an even surface stays as it is', () => {
    const even = patch([60, 160], [0, 360], 3);
    const before = replay(face, [even]);
    const after = replay(face, [even, smooth]);
    let most = 0;
    for (let cell = 0; cell < before.depth.length; cell++)
      most = Math.max(most, Math.abs(after.depth[cell] - before.depth[cell]));
    expect(most).toBeLessThan(1e-5);
  });
  test('a step under the brush becomes a slope between the two depths, and nothing changes away from it', () => {
    const step = [patch([60, 110], [0, 360], 4), patch([110, 160], [0, 360], 1)];
    const before = replay(face, step);
    const after = replay(face, [...step, smooth]);
    const at = (map: typeof before, radius: number) => depthAt(map, face, radius, toRadians(45));
    expect(at(before, 109) - at(before, 111)).toBeCloseTo(3, 5);
    expect(at(after, 109) - at(after, 111)).toBeLessThan(1.6);
    expect(at(after, 109)).toBeGreaterThan(at(after, 111));
    expect(at(after, 95)).toBeCloseTo(4, 6);
    expect(at(after, 125)).toBeCloseTo(1, 6);
  });
  test('the scale is the brush and not the cell', () => {
    const middle = (cell: number) => {
      const grid = faceOf('face', { holes: [] }, cell);
      const groove = patch([108, 112], [0, 360], 4);
      return depthAt(replay(grid, [groove, { ...smooth, path: [polar(110, 40)] }]), grid, 110, toRadians(40));
    };
    // A 4 mm wide groove, 4 mm deep, evened over 12 mm: 4 x 4 / 12 in its middle; the square is whole cells, so 10 %.
    for (const cell of [1, 0.5, 0.25]) expect(Math.abs(middle(cell) / (16 / 12) - 1)).toBeLessThan(0.1);
  });
});
