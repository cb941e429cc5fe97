import { describe, expect, test } from 'vitest';
import { depthsAt, krige } from '../../../geometry/depth/kriging/kriging.ts';
import { readSurface, surfaceDepth } from '../../../geometry/depth/read-surface.ts';
import { placedReadings, placesOf } from '../../../geometry/depth/reading-places.ts';
import { faceOf, impellerFace, madeImpeller } from '../made.ts';
import { franke, seeded } from './kriging/fields.ts';
import { readAtRandom, readings } from './read-made.ts';

describe.each([
  ['the face', faceOf('face')],
  ['the bore', faceOf('bore')],
  ['a vane side', impellerFace('vane-1/pressure', madeImpeller())],
  ['a vane tip', impellerFace('vane-1/tip', madeImpeller())],
])('on %s', (_name, face) => {
  const random = seeded(11);
  const points = readAtRandom(face, 60, random, (x, y) => 4 * franke((x + 160) / 320, (y + 160) / 320));
  const placed = placedReadings(face, readings(face.name, points));

  test.each(['matern-3/2', 'matern-5/2'] as const)(
    'a cubic between its nodes is within 0.001 mm of kriging each place, %s',
    (shape) => {
      const kriging = krige(placed.observed, { shape, length: 60, sill: 1.5 });
      const surface = readSurface(face, kriging, placed.at);
      const { grid } = face;
      const at = Array.from(
        { length: 400 },
        () =>
          [grid.u0 + random() * grid.rows * grid.du, grid.v0 + random() * grid.columns * grid.dv] as const,
      );
      const exact = depthsAt(kriging, placesOf(face, at));
      for (const [i, [u, v]] of at.entries())
        expect(Math.abs(surfaceDepth(surface, grid, u, v) - exact[i])).toBeLessThan(1e-3);
    },
  );
});

test('a place at the seam is the same from both sides, and one off the grid takes the edge', () => {
  const face = faceOf('face');
  const placed = placedReadings(
    face,
    readings('face', [
      [100, 0.1, 1],
      [120, 6.2, 3],
      [150, 3, 0.4],
    ]),
  );
  const surface = readSurface(
    face,
    krige(placed.observed, { shape: 'matern-5/2', length: 60, sill: 1 }),
    placed.at,
  );
  const at = (u: number, v: number) => surfaceDepth(surface, face.grid, u, v);
  // Either side has a cubic of its own, true to 0.001 mm.
  expect(Math.abs(at(110, 0) - at(110, 2 * Math.PI))).toBeLessThan(1e-3);
  expect(Math.abs(at(110, -1e-7) - at(110, 1e-7))).toBeLessThan(1e-3);
  expect(at(20, 1)).toBe(at(60, 1));
});
