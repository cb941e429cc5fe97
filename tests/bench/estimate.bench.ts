import { replay } from '../../geometry/depth/replay.ts';
import { estimate } from '../../geometry/estimate.ts';
import type { Mark } from '../../geometry/job/job.ts';
import { partOf } from '../../geometry/part/part-of.ts';
import { job, patch, pit, polar } from '../geometry/made.ts';
import { type BenchResult, measure, ratio } from './measure.ts';
import { plainSum } from './worn-face.ts';

/** Replaying a job's marks, and the full estimate, counted in plain sums of the same cells. */
export function bench(): BenchResult {
  const worn = job(marks());
  const face = partOf(worn.parts[0], null).faces[0];
  const map = replay(face, worn.parts[0].marks);
  const results = [
    ratio(
      'replay, 60 marks, 0.4M cells',
      () => replay(face, worn.parts[0].marks),
      'plain sum',
      () => plainSum(map),
    ),
    ratio(
      'full estimate, 60 marks, face and bore',
      () => estimate(worn),
      'plain sum',
      () => plainSum(map),
    ),
  ];
  const coarse = measure('full estimate, 60 marks, 2 mm cells', () => estimate(worn, { cell: 2 }));
  return {
    timings: [coarse, ...results.flatMap((r) => r.timings)],
    ratios: results.flatMap((r) => r.ratios),
  };
}

/** Twenty strokes along a ring, twenty pits and twenty patches: a believable plate. */
function marks(): Mark[] {
  return Array.from({ length: 20 }, (_, k): Mark[] => [
    {
      kind: 'stroke',
      face: 'face',
      blend: 'deepest',
      path: [0, 1, 2, 3].map((i) => polar(90 + k, 17 * k + 8 * i)),
      radius: 9,
      depth: 2 + k / 10,
      edge: 'soft',
      clear: false,
    },
    pit(80 + 3 * k, 31 * k, 6 + (k % 5), 1 + (k % 3), 'bowl'),
    patch([100, 110 + k], [15 * k, 15 * k + 12], 1 + (k % 4)),
  ]).flat();
}
