import { describe, expect, test } from 'vitest';
import { createDepthMap } from '../../../geometry/depth/depth-map.ts';
import type { MarkFile } from '../../../geometry/job/job-file.ts';
import { measured } from '../../../geometry/job/measured.ts';
import { partOf } from '../../../geometry/part/part-of.ts';
import { drawnReadings, type PlacedReading, placedReadings } from '../../../web/scene/reading-places.ts';
import { impellerJob } from '../tools/impellers.ts';
import { jobOf, PLATES } from '../tools/plates.ts';

const SCREEN = { width: 800, height: 600 };

const readings = (face: string, points: [number, number, number][]): MarkFile => ({
  kind: 'readings',
  face,
  points,
});

function facesOf(job: ReturnType<typeof jobOf>) {
  const part = partOf(measured(job).parts[0], 4);
  return part.faces.map((face) => ({ part: part.id, face, map: createDepthMap(face.grid) }));
}

describe('gauge readings of a part', () => {
  const faces = facesOf(jobOf(PLATES.round));
  const wear: readonly MarkFile[] = [
    readings('face', [
      [60, 0, 1],
      [70, 90, 3],
    ]),
    { kind: 'patch', face: 'face', first: [60, 80], second: [0, 90], depth: 2 },
    readings('bore', [[180, 8, 0.5]]),
  ];

  test('are those of its readings marks, where they were taken, the deepest first', () => {
    const placed = placedReadings(faces, wear, null);
    expect(placed.map(({ live, place, depth }) => [live.face.name, ...place, depth])).toEqual([
      ['face', 70, Math.PI / 2, 3],
      ['face', 60, 0, 1],
      ['bore', 8, Math.PI, 0.5],
    ]);
    expect(placed.some(({ isInHand }) => isInHand)).toBe(false);
  });

  test('of the mark in hand come first', () => {
    expect(placedReadings(faces, wear, 2).map(({ depth, isInHand }) => [depth, isInHand])).toEqual([
      [0.5, true],
      [3, false],
      [1, false],
    ]);
  });

  test('for all vanes stand on every vane', () => {
    const placed = placedReadings(
      facesOf(impellerJob()),
      [readings('vane-*/pressure', [[20, 5, 1.2]])],
      null,
    );
    expect(placed.map(({ live }) => live.face.name)).toEqual(
      [1, 2, 3, 4, 5].map((vane) => `vane-${vane}/pressure`),
    );
  });
});

describe('what is drawn of readings', () => {
  const [live] = facesOf(jobOf(PLATES.round));
  const many = (count: number): PlacedReading[] =>
    Array.from({ length: count }, (_, i) => ({
      live,
      place: [7 * (i % 100), 12 * Math.floor(i / 100)],
      depth: 1,
      isInHand: i % 2 === 0,
    }));
  const draw = (
    list: readonly PlacedReading[],
    pointOf: (reading: PlacedReading) => readonly [number, number] | null = ({ place }) => place,
  ) => drawnReadings(list, pointOf, (depth) => depth.toFixed(2), SCREEN, 150);
  const crosses = (path: string) => (path.match(/M/g)?.length ?? 0) / 2;

  test('is a cross for each of 2,000, however close they lie, and no more depths than can be read', () => {
    const { inHand, others, labels } = draw(many(2000));
    expect([crosses(inHand), crosses(others)]).toEqual([1000, 1000]);
    expect(labels.length).toBeLessThanOrEqual(150);
  });

  test('leaves out what is hidden or out of sight', () => {
    const [a, b, c] = many(3);
    const at = new Map([
      [a, [100, 100] as const],
      [b, null],
      [c, [900, 100] as const],
    ]);
    const { inHand, others, labels } = draw([a, b, c], (reading) => at.get(reading) ?? null);
    expect([crosses(inHand), crosses(others)]).toEqual([1, 0]);
    expect(labels).toEqual([{ text: '1.00', x: 108, y: 100, anchor: 'start', isInHand: true }]);
  });
});
