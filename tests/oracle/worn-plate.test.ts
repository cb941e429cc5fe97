import { describe, expect, test } from 'vitest';
import { estimate } from '../../geometry/estimate.ts';
import type { Job, Mark } from '../../geometry/job/job.ts';
import type { Metal } from '../../geometry/part/metal.ts';
import { toRadians } from '../../geometry/units.ts';
import { job, patch, ROUND } from '../geometry/made.ts';
import { cylinder, type Measured, measured, swept } from './solids.ts';

/** 0.2 % in volume; the centroid within 0.2 % of how far it lies from the shaft. The meshes' own facets are 1e-5. */
function expectAgree(ours: Metal, theirs: Measured): void {
  expect(Math.abs(ours.volume / theirs.volume - 1)).toBeLessThan(2e-3);
  const far = Math.hypot(...theirs.centroid);
  expect(Math.abs(ours.x / ours.volume - theirs.centroid[0])).toBeLessThan(2e-3 * far);
  expect(Math.abs(ours.y / ours.volume - theirs.centroid[1])).toBeLessThan(2e-3 * far);
  expect(Math.abs(ours.z / ours.volume - theirs.centroid[2])).toBeLessThan(2e-3 * far);
}

const lost = (of: Job) => estimate(of).parts[0].lost;

describe('worn metal agrees with a solid kernel', () => {
  test('a patch through bolt holes', async () => {
    const sector = await swept(
      [
        [118.3, -3.5],
        [160, -3.5],
        [160, 0],
        [118.3, 0],
      ],
      20,
      167,
    );
    const holes = await Promise.all(ROUND.holes.map((hole) => cylinder(hole.x, hole.y, hole.radius, -5, 1)));
    const worn = holes.reduce((solid, hole) => solid.subtract(hole), sector);
    expectAgree(lost(job([patch([118.3, 160], [20, 167], 3.5)])), measured(worn));
  });

  test('a ramp on a dished face', async () => {
    const a = toRadians(9);
    const [s, c, t] = [Math.sin(a), Math.cos(a), Math.tan(a)];
    const z = (r: number) => (r - 160) * t;
    // Depth is linear in the radius and along one normal, so the worn floor is a straight line in section.
    const profile = [
      [90, z(90)],
      [90 + 2 * s, z(90) - 2 * c],
      [130 + 5 * s, z(130) - 5 * c],
      [130, z(130)],
    ] as const;
    const worn = await swept([...profile], 20, 95);
    expectAgree(lost(job([patch([90, 130], [20, 95], [2, 5])], { holes: [], coneAngle: a })), measured(worn));
  });

  for (const degrees of [0, 6]) {
    test(`a corner that face and bore share, dished ${degrees} degrees, counts once`, async () => {
      const a = toRadians(degrees);
      const [s, c, t] = [Math.sin(a), Math.cos(a), Math.tan(a)];
      const z = (r: number) => (r - 160) * t;
      const face = await swept(
        [
          [60, z(60)],
          [60 + 3 * s, z(60) - 3 * c],
          [78.4 + 3 * s, z(78.4) - 3 * c],
          [78.4, z(78.4)],
        ],
        10,
        130,
      );
      // The bore wall is worn to the face above it, which rises with a dish.
      const bore = await swept(
        [
          [60, z(60) - 9],
          [64.3, z(60) - 9],
          [64.3, z(64.3)],
          [60, z(60)],
        ],
        70,
        200,
      );
      const marks: Mark[] = [
        patch([60, 78.4], [10, 130], 3),
        {
          kind: 'patch',
          face: 'bore',
          blend: 'deepest',
          first: [toRadians(70), toRadians(200)],
          second: [0, 9],
          depth: [4.3, 4.3],
        },
      ];
      const union = measured(face.add(bore));
      const both = measured(face).volume + measured(bore).volume;
      expect(both / union.volume).toBeGreaterThan(1.03);
      const dish = { holes: [], coneAngle: a };
      const ours = lost(job(marks, dish));
      if (degrees === 0) expectAgree(ours, union);
      // On a dish the bore's depth map ends at the bore's own top edge; the wedge of metal above it is the face's alone.
      else expect(Math.abs(ours.volume / union.volume - 1)).toBeLessThan(0.01);
      // With everything filled the filler is the same solid.
      const { filled } = estimate(job(marks, dish)).parts[0];
      expect(filled.volume / ours.volume).toBeCloseTo(1, 3);
    });
  }
});
