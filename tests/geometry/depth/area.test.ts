import { describe, expect, test } from 'vitest';
import { replay } from '../../../geometry/depth/replay.ts';
import type { Area } from '../../../geometry/job/job.ts';
import { lostMetal } from '../../../geometry/moments/integrate.ts';
import { polygonArea } from '../../../geometry/part/polygon.ts';
import { type FacePoint, TURN } from '../../../geometry/units.ts';
import { faceOf } from '../made.ts';

const face = faceOf('face', { holes: [] });
const bore = faceOf('bore');
const area = (outline: FacePoint[], on: 'face' | 'bore', depth: number): Area => ({
  kind: 'area',
  face: on,
  blend: 'deepest',
  outline,
  depth,
});
const polar = (x: number, y: number): FacePoint => [Math.hypot(x, y), Math.atan2(y, x)];

describe('an area is a straight-sided polygon in the flat picture', () => {
  test('a triangle on the running face', () => {
    const corners: FacePoint[] = [
      [80, 10],
      [140, -20],
      [100, 60],
    ];
    const { volume, x, y } = lostMetal(
      face,
      replay(face, [
        area(
          corners.map(([a, b]) => polar(a, b)),
          'face',
          2,
        ),
      ]),
    );
    // Shoelace area x depth, centroid the mean of the corners: closed forms. The triangle crosses the 0/360 line.
    expect(Math.abs(volume / (2 * Math.abs(polygonArea(corners))) - 1)).toBeLessThan(1e-3);
    expect(x / volume).toBeCloseTo((80 + 140 + 100) / 3, 1);
    expect(y / volume).toBeCloseTo((10 - 20 + 60) / 3, 1);
  });
  test('a polygon round the bore wears all but what lies outside it', () => {
    const square: FacePoint[] = [
      [-80, -80],
      [80, -80],
      [80, 80],
      [-80, 80],
    ];
    const { volume } = lostMetal(
      face,
      replay(face, [
        area(
          square.map(([a, b]) => polar(a, b)),
          'face',
          1,
        ),
      ]),
    );
    expect(Math.abs(volume / (160 * 160 - Math.PI * 60 * 60) - 1)).toBeLessThan(1e-3);
  });
  test('a box on the bore across the 0/360 line, unrolled', () => {
    const a = TURN / 36;
    const box: FacePoint[] = [
      [TURN - a, 3],
      [a, 3],
      [a, 11],
      [TURN - a, 11],
    ];
    const { volume } = lostMetal(bore, replay(bore, [area(box, 'bore', 2)]));
    // (62^2 - 60^2)/2 x angle x height: shell of a cylinder.
    expect(Math.abs(volume / (((62 ** 2 - 60 ** 2) / 2) * 2 * a * 8) - 1)).toBeLessThan(1e-3);
  });
});
