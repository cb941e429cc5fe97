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
  test('a polygon whose corners lie far out, beside the axis and round it', () => {
    const worn = (corners: FacePoint[]): number =>
      lostMetal(
        face,
        replay(face, [
          area(
            corners.map(([a, b]) => polar(a, b)),
            'face',
            1,
          ),
        ]),
      ).volume;
    // All of the face beyond x = 100 mm: a segment of the disc, R^2 acos(d/R) - d sqrt(R^2 - d^2).
    const segment = 160 ** 2 * Math.acos(100 / 160) - 100 * Math.sqrt(160 ** 2 - 100 ** 2);
    const beyond = worn([
      [100, -9e4],
      [9e4, 0],
      [100, 9e4],
    ]);
    expect(Math.abs(beyond / segment - 1)).toBeLessThan(1e-3);
    const all = worn([
      [9e4, 0],
      [-5e4, 8e4],
      [-5e4, -8e4],
    ]);
    expect(Math.abs(all / (Math.PI * (160 ** 2 - 60 ** 2)) - 1)).toBeLessThan(1e-6);
    const none = worn([
      [200, 0],
      [9e4, 10],
      [9e4, -10],
    ]);
    expect(none).toBe(0);
  });
  test('an outline of 2000 corners, wavy round the axis', () => {
    const corners = Array.from({ length: 2000 }, (_, i): FacePoint => {
      const angle = (TURN * i) / 2000;
      return [110 + 10 * Math.cos(20 * angle), angle];
    });
    const { volume } = lostMetal(face, replay(face, [area(corners, 'face', 2)]));
    // Mean of r^2 / 2 over the turn: (110^2 + 10^2 / 2) / 2; chords of 0.35 mm take off less than 1e-5.
    const exact = 2 * Math.PI * (110 ** 2 + 10 ** 2 / 2 - 60 ** 2);
    expect(Math.abs(volume / exact - 1)).toBeLessThan(1e-3);
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
