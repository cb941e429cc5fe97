import { expect, test } from 'vitest';
import type { JobFile } from '../../../../geometry/job/job-file.ts';
import { partTotals } from '../../../../web/panels/fill/face-totals.ts';
import { listedRegions } from '../../../../web/panels/fill/listed-regions.ts';
import { estimateService } from '../../../../web/worker/estimate-job.ts';
import { jobOf, PLATES } from '../../tools/plates.ts';

function resultOf(job: JobFile) {
  const answer = estimateService().estimateJob(job);
  if (!('result' in answer)) throw new Error(JSON.stringify(answer));
  return answer.result;
}

/** Deep and narrow, shallow and wide, and one between that lost the most. */
const job = jobOf(PLATES.round, [
  { kind: 'pit', face: 'face', at: [50, 0], diameter: 6, depth: 5, form: 'flat' },
  { kind: 'patch', face: 'face', first: [60, 80], second: [90, 180], depth: 0.6 },
  { kind: 'patch', face: 'face', first: [60, 80], second: [200, 260], depth: 2 },
  { kind: 'patch', face: 'bore', first: [30, 60], second: [4, 10], depth: 1.2 },
]);

test('the list comes by depth, by area or by volume; the numbers stay those of the sheet', () => {
  const result = resultOf(job);
  const numbers = (order: 'depth' | 'area' | 'volume') =>
    listedRegions(result, job, order).map(({ number, region }) => [number, region.face]);
  expect(numbers('depth')).toEqual([
    [1, 'face'],
    [2, 'face'],
    [3, 'bore'],
    [4, 'face'],
  ]);
  expect(numbers('area').map(([number]) => number)).toEqual([4, 2, 3, 1]);
  expect(numbers('volume').map(([number]) => number)).toEqual([2, 4, 3, 1]);
});

test('totals name the worn faces; the sum is that of the part', () => {
  const [part] = resultOf(job).parts;
  const { faces, sum, sharesCorners } = partTotals(part, job);
  expect(faces.map(({ face }) => face)).toEqual(['face', 'bore']);
  expect(sum).toMatchObject({ deepest: 5, lost: part.lostVolume, fill: part.fillVolume });
  expect(sum.wornArea).toBeCloseTo(
    part.regions.reduce((area, region) => area + region.area, 0),
    9,
  );
  expect(faces.reduce((lost, face) => lost + face.lost, 0)).toBeCloseTo(sum.lost, 6);
  // The shallow patch, closed form: 0.6 mm of a quarter ring.
  expect(Math.abs((sum.left ?? 0) / (((Math.PI / 4) * (80 ** 2 - 60 ** 2) * 0.6) / 1000) - 1)).toBeLessThan(
    0.005,
  );
  expect(sharesCorners).toBe(false);
});

test('what two faces share at their corner is said, and in the sum once', () => {
  const worn = jobOf(PLATES.round, [
    { kind: 'patch', face: 'face', first: [40, 44], second: [0, 90], depth: 3 },
    { kind: 'patch', face: 'bore', first: [0, 90], second: [0, 5], depth: 2 },
  ]);
  const { faces, sum, sharesCorners } = partTotals(resultOf(worn).parts[0], worn);
  expect(sharesCorners).toBe(true);
  // Both take the quarter ring from radius 40 to 42, 3 mm deep.
  const shared = ((Math.PI / 4) * (42 ** 2 - 40 ** 2) * 3) / 1000;
  const together = faces.reduce((lost, face) => lost + face.lost, 0);
  expect(Math.abs((together - sum.lost) / shared - 1)).toBeLessThan(0.01);
});

test('nothing is left for the coat on a face that has none', () => {
  const bare = { ...job, repair: { coatedFaces: ['plate:bore'] } };
  const { faces, sum } = partTotals(resultOf(bare).parts[0], bare);
  expect(faces[0].left).toBeNull();
  expect(sum.left).toBeCloseTo(faces[1].left ?? Number.NaN, 9);
});
