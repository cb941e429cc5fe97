import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { polygonHolds } from '../../../geometry/part/polygon.ts';
import { polygonIndex } from '../../../geometry/part/polygon-index.ts';
import { type FacePoint, TURN } from '../../../geometry/units.ts';

/** Corners at even angles, as far out as `radii` say in turn. */
const round = (radii: readonly number[]): FacePoint[] =>
  radii.map((radius, i) => {
    const angle = (TURN * i) / radii.length;
    return [radius * Math.cos(angle), radius * Math.sin(angle)];
  });

/** Places on the height of a corner as well: there a ray runs through corners and along level sides. */
const places = (corners: readonly FacePoint[]): fc.Arbitrary<FacePoint> =>
  fc.tuple(
    fc.double({ min: -60, max: 60, noNaN: true }),
    fc.oneof(fc.double({ min: -60, max: 60, noNaN: true }), fc.constantFrom(...corners.map(([, y]) => y))),
  );

function isOnSide(corners: readonly FacePoint[], x: number, y: number): boolean {
  return corners.some(([ax, ay], i) => {
    const [bx, by] = corners[(i + 1) % corners.length];
    const length2 = (bx - ax) ** 2 + (by - ay) ** 2;
    const along = length2 > 0 ? ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / length2 : 0;
    const share = Math.max(0, Math.min(1, along));
    return Math.hypot(ax + share * (bx - ax) - x, ay + share * (by - ay) - y) < 1e-9;
  });
}

/** The sum over all sides in turn: even-odd, after M. Shimrat, Comm. ACM 5(8), 1962, algorithm 112; from memory. */
function expectAlike(corners: readonly FacePoint[]): void {
  const { holds } = polygonIndex(corners);
  fc.assert(
    fc.property(places(corners), ([x, y]) => {
      // On a side the two may round either way.
      fc.pre(!isOnSide(corners, x, y));
      expect(holds(x, y)).toBe(polygonHolds(corners, x, y));
    }),
    { numRuns: 60 },
  );
}

describe('polygonIndex holds what a walk round all sides does', () => {
  test('for outlines with any number of corners', () => {
    const radii = fc.array(fc.double({ min: 5, max: 55, noNaN: true }), { minLength: 3, maxLength: 120 });
    fc.assert(
      fc.property(radii, (list) => expectAlike(round(list))),
      { numRuns: 40 },
    );
  });
  test('on whole numbers, where corners stand at one height and sides are level', () => {
    const corner = fc.tuple(fc.integer({ min: -6, max: 6 }), fc.integer({ min: -6, max: 6 }));
    fc.assert(
      // Such a heap of corners crosses itself.
      fc.property(fc.array(corner, { minLength: 24, maxLength: 60 }), (corners) => expectAlike(corners)),
      { numRuns: 40 },
    );
  });
  test('for a comb whose teeth all stand at one height', () => {
    const teeth = Array.from({ length: 80 }, (_, i): FacePoint => [i - 40, i % 2 === 0 ? 50 : -40 - (i % 3)]);
    expectAlike([...teeth, [45, -50], [-45, -50]]);
  });
});

test('a circle of 1000 corners holds what lies within its sides and nothing without, also at its very corners', () => {
  const { holds } = polygonIndex(round(new Array(1000).fill(50)));
  // The sides of a regular polygon lie R cos(180 deg / n) from the centre.
  const within = 50 * Math.cos(Math.PI / 1000) - 1e-9;
  for (let i = 0; i < 1000; i++) {
    const angle = (TURN * i) / 777;
    expect(holds(within * Math.cos(angle), within * Math.sin(angle))).toBe(true);
    expect(holds(50.000001 * Math.cos(angle), 50.000001 * Math.sin(angle))).toBe(false);
  }
  expect(holds(0, 50.1)).toBe(false);
  expect(holds(Number.NaN, 0)).toBe(false);
  expect(holds(0, Number.NaN)).toBe(false);
});
