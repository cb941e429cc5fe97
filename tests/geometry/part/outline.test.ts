import { describe, expect, test } from 'vitest';
import { replay } from '../../../geometry/depth/replay.ts';
import type { OutlinePlate } from '../../../geometry/job/job.ts';
import { lostMetal } from '../../../geometry/moments/integrate.ts';
import { polygonArea, polygonHolds } from '../../../geometry/part/polygon.ts';
import { wearPlate } from '../../../geometry/part/wear-plate.ts';
import { TURN } from '../../../geometry/units.ts';
import { plate } from '../made.ts';

/** L-shape 120 x 90 with a 30 x 20 window: closed form 8400 - 600 = 7800 at (53.4615385, 39.2307692). */
const L_SHAPE: OutlinePlate = {
  kind: 'outline',
  edge: [
    [0, 0],
    [120, 0],
    [120, 50],
    [60, 50],
    [60, 90],
    [0, 90],
  ],
  holes: [
    [
      [10, 10],
      [40, 10],
      [40, 30],
      [10, 30],
    ],
  ],
};

function faceOf(shape: OutlinePlate, cell: number | null = null) {
  return wearPlate({ ...plate(), shape }, cell).faces[0];
}

function evenlyWorn(shape: OutlinePlate, depth: number, cell: number | null = null) {
  const face = faceOf(shape, cell);
  const map = replay(face, [
    {
      kind: 'patch',
      face: 'face',
      blend: 'deepest',
      first: [-1e4, 1e4],
      second: [-1e4, 1e4],
      depth: [depth, depth],
    },
  ]);
  return lostMetal(face, map);
}

describe('an outline plate worn evenly', () => {
  test('the L-shape has the area and centroid of its polygons', () => {
    expect(faceOf(L_SHAPE).area).toBe(7800);
    const lost = evenlyWorn(L_SHAPE, 2);
    // Cover is exact for straight edges; the centroid takes a cut cell at its centre: 1e-5.
    expect(lost.volume / 2).toBeCloseTo(7800, 2);
    expect(lost.x / lost.volume).toBeCloseTo(53.4615385, 3);
    expect(lost.y / lost.volume).toBeCloseTo(39.2307692, 3);
    expect(lost.z / lost.volume).toBeCloseTo(-1, 6);
  });
  test('the L-shape turned by 30 degrees about the origin keeps its area, whatever the cells cut', () => {
    const [c, s] = [Math.cos(Math.PI / 6), Math.sin(Math.PI / 6)];
    const turn = ([x, y]: readonly [number, number]) => [c * x - s * y, s * x + c * y] as const;
    const turned: OutlinePlate = {
      kind: 'outline',
      edge: L_SHAPE.edge.map(turn),
      holes: L_SHAPE.holes.map((h) => h.map(turn)),
    };
    const lost = evenlyWorn(turned, 2, 1.7);
    const [x, y] = turn([53.4615385, 39.2307692]);
    expect(lost.volume / 2).toBeCloseTo(7800, 1);
    expect(lost.x / lost.volume).toBeCloseTo(x, 2);
    expect(lost.y / lost.volume).toBeCloseTo(y, 2);
  });
  test('a triangle (0,0)(6,0)(0,3) is 9 mm2 at (2, 1), a regular pentagon of radius 10 is 237.764129 mm2 at the origin', () => {
    // Shoelace, closed forms.
    const triangle: OutlinePlate = {
      kind: 'outline',
      edge: [
        [0, 0],
        [6, 0],
        [0, 3],
      ],
      holes: [],
    };
    const lost = evenlyWorn(triangle, 1);
    expect(lost.volume).toBeCloseTo(9, 4);
    // Cells cut by the slope stand at their centres: the shift is of the order cell^2 / size.
    expect(lost.x / lost.volume).toBeCloseTo(2, 2);
    expect(lost.y / lost.volume).toBeCloseTo(1, 2);
    const edge = Array.from(
      { length: 5 },
      (_, k) => [10 * Math.cos((TURN * k) / 5), 10 * Math.sin((TURN * k) / 5)] as const,
    );
    expect(polygonArea(edge)).toBeCloseTo(237.764129, 6);
    expect(evenlyWorn({ kind: 'outline', edge, holes: [] }, 1).volume).toBeCloseTo(237.764129, 3);
  });
  test('corners given clockwise make the same face', () => {
    const reversed: OutlinePlate = {
      ...L_SHAPE,
      edge: [...L_SHAPE.edge].reverse(),
      holes: L_SHAPE.holes.map((h) => [...h].reverse()),
    };
    expect(evenlyWorn(reversed, 2).volume).toBeCloseTo(15600, 2);
  });
});

test('a point is inside a polygon when a ray from it crosses the edge an odd number of times', () => {
  expect(polygonHolds(L_SHAPE.edge, 100, 25)).toBe(true);
  expect(polygonHolds(L_SHAPE.edge, 100, 70)).toBe(false);
});
