import { expect, test } from 'vitest';
import { estimate } from '../../../geometry/estimate.ts';
import type { Patch } from '../../../geometry/job/job.ts';
import { TURN } from '../../../geometry/units.ts';
import { job, patch } from '../made.ts';

test('a plate worn to its walls from the face and from the bore has lost its metal once', () => {
  const bore: Patch = {
    kind: 'patch',
    face: 'bore',
    blend: 'deepest',
    first: [0, TURN],
    second: [0, 18],
    depth: [60, 60],
  };
  const made = job([patch([60, 160], [0, 360], 18), bore], { holes: [] });
  const { lost, filled } = estimate(made, { cell: 1 }).parts[0];
  // pi (160^2 - 60^2) 18, whatever of it the bore has lost too: all of the ring.
  const ring = Math.PI * (160 ** 2 - 60 ** 2) * 18;
  // Where the bore's wear ends is found to 1/64 of a third of a cell, on 18 mm: 3e-4.
  expect(Math.abs(lost.volume / ring - 1)).toBeLessThan(3e-4);
  expect(Math.abs(filled.volume / ring - 1)).toBeLessThan(3e-4);
  expect(lost.z / lost.volume).toBeCloseTo(-9, 2);
});
