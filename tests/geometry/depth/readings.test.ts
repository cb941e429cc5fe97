import { describe, expect, test } from 'vitest';
import { depthAt } from '../../../geometry/depth/depth-at.ts';
import { deepestOf } from '../../../geometry/depth/depth-map.ts';
import { replay } from '../../../geometry/depth/replay.ts';
import { survey } from '../../../geometry/depth/survey.ts';
import type { Mark, Readings } from '../../../geometry/job/job.ts';
import { lostMetal } from '../../../geometry/moments/integrate.ts';
import { type Face, toGridPoint } from '../../../geometry/part/face.ts';
import { wearPlate } from '../../../geometry/part/wear-plate.ts';
import { toRadians } from '../../../geometry/units.ts';
import { faceOf, patch, pit, plate, polar } from '../made.ts';
import { franke, seeded } from './kriging/fields.ts';
import { readAtRandom, readings } from './read-made.ts';

const face = faceOf('face', {}, 1);
const read = (on: Face, ...marks: readonly Mark[]) =>
  replay(on, marks, { surfaceOf: (mark) => survey(on, mark)?.surface ?? null });
const field = (x: number, y: number) => 4 * franke((x + 160) / 320, (y + 160) / 320);
const strewn = (count: number, change: Partial<Readings> = {}) =>
  readings('face', readAtRandom(face, count, seeded(count), field), change);

test('exact at the readings when the gauge has no error', () => {
  const mark = strewn(40, { gaugeError: 0 });
  const map = read(face, mark);
  for (const { at, depth } of mark.points) {
    const [u, v] = toGridPoint(face, at);
    expect(Math.abs(depthAt(map, face, u, v) - depth)).toBeLessThan(1e-4);
  }
});

test('with a gauge error not pulled about by each, but near them', () => {
  const mark = strewn(40, { gaugeError: 0.3 });
  const map = read(face, mark);
  const off = mark.points.map(({ at, depth }) => depthAt(map, face, ...toGridPoint(face, at)) - depth);
  expect(Math.max(...off.map(Math.abs))).toBeGreaterThan(0.01);
  expect(Math.sqrt(off.reduce((sum, d) => sum + d * d, 0) / off.length)).toBeLessThan(0.3);
});

test('never below 0, though the readings are', () => {
  const map = read(
    face,
    readings('face', [
      [100, 0, -0.3],
      [100, 1, -0.2],
      [100, 2, 0.1],
      [140, 3, 2],
    ]),
  );
  expect(Math.min(...map.depth)).toBe(0);
  expect(deepestOf(map)).toBeGreaterThan(1);
});

test("no deeper than the wall: the surface may overshoot, the metal can't", () => {
  const steep = Array.from({ length: 12 }, (_, i) => [100, i * 0.05, i < 6 ? 17.9 : 2] as const);
  expect(deepestOf(read(face, readings('face', steep, { gaugeError: 0 })))).toBeLessThanOrEqual(18);
});

describe('within an outline', () => {
  const box = [polar(80, 340), polar(120, 340), polar(120, 20), polar(80, 20)];
  test('nothing outside of it, and readings outside still count', () => {
    const all = read(face, strewn(60));
    const some = read(face, strewn(60, { within: box }));
    // Corners are joined by straight lines in the flat picture: well inside and well outside of them.
    for (const [radius, degrees, isIn] of [
      [100, 0, true],
      [100, 350, true],
      [100, 40, false],
      [70, 0, false],
    ] as const) {
      const at = [radius, toRadians(degrees)] as const;
      expect(depthAt(some, face, ...at)).toBeCloseTo(isIn ? depthAt(all, face, ...at) : 0, 5);
    }
  });
  test('its edge is true to a share of a cell: an even depth over it is its area times that depth', () => {
    const even = readings('face', [[100, 0, 2]], { gaugeError: 0, within: box });
    // The quadrilateral of these corners, by the shoelace formula.
    const corners = box.map(([r, a]) => [r * Math.cos(a), r * Math.sin(a)]);
    const area = corners.reduce((sum, [x, y], i) => {
      const [p, q] = corners[(i + 1) % 4];
      return sum + (x * q - p * y) / 2;
    }, 0);
    expect(lostMetal(face, read(face, even)).volume / (2 * area)).toBeCloseTo(1, 3);
  });
});

describe('with other marks', () => {
  const even = readings('face', [[100, 0, 2]], { gaugeError: 0 });
  test('deepest: the deeper wins; add: both; replace: the readings alone', () => {
    const marks = [patch([60, 160], [0, 360], 3)];
    expect(deepestOf(read(face, ...marks, even))).toBeCloseTo(3, 5);
    expect(deepestOf(read(face, ...marks, { ...even, blend: 'add' }))).toBeCloseTo(5, 5);
    expect(deepestOf(read(face, ...marks, { ...even, blend: 'replace' }))).toBeCloseTo(2, 5);
  });
  test('a pit after them is as deep as a pit', () => {
    expect(deepestOf(read(face, even, pit(120, 40, 12, 5, 'flat')))).toBeCloseTo(5, 5);
  });
});

describe('few and odd readings give a sensible surface', () => {
  const volume = (points: readonly (readonly [number, number, number])[], gaugeError = 0.1) =>
    lostMetal(face, read(face, readings('face', points, { gaugeError }))).volume;
  test('one: that depth all over', () => {
    expect(volume([[100, 1, 2]]) / (2 * face.area)).toBeCloseTo(1, 6);
  });
  test('all equal: that depth all over', () => {
    const same = Array.from({ length: 8 }, (_, i) => [70 + 10 * i, i, 1.5] as const);
    expect(volume(same) / (1.5 * face.area)).toBeCloseTo(1, 6);
    expect(volume(same, 0) / (1.5 * face.area)).toBeCloseTo(1, 6);
  });
  test('two, and all in a line: between the least and the deepest', () => {
    for (const points of [
      [
        [80, 1, 1],
        [140, 2, 3],
      ],
      Array.from({ length: 9 }, (_, i) => [70 + 10 * i, 1, 1 + (i % 3)] as const),
    ] as const) {
      const mean = volume(points) / face.area;
      expect(mean).toBeGreaterThan(1);
      expect(mean).toBeLessThan(3);
    }
  });
  test('none on the face: the mark changes nothing and says so', () => {
    const landed = new Set<Mark>();
    const off = readings('face', [[300, 0, 2]]);
    const map = replay(face, [off], { surfaceOf: (mark) => survey(face, mark)?.surface ?? null, landed });
    expect(deepestOf(map)).toBe(0);
    expect(landed.size).toBe(0);
  });
});

test('turning all readings turns the surface: no seam', () => {
  const points = readAtRandom(face, 30, seeded(30), field);
  const volumes = [0, 1, 3].map((turn) => {
    const turned = points.map(([r, a, d]) => [r, (a + turn) % (2 * Math.PI), d] as const);
    const plain = faceOf('face', { holes: [] }, 1);
    return lostMetal(plain, read(plain, readings('face', turned))).volume;
  });
  expect(volumes[1] / volumes[0]).toBeCloseTo(1, 4);
  expect(volumes[2] / volumes[0]).toBeCloseTo(1, 4);
});

test('the same on every face of a kind: the bore and a finer grid agree with the coarse one', () => {
  const points = [
    [0.1, 4, 1],
    [2, 9, 2],
    [6.2, 14, 1.4],
  ] as const;
  const [coarse, fine] = [1, 0.5].map((cell) => {
    const bore = wearPlate(plate(), cell).faces[1];
    return lostMetal(bore, read(bore, readings('bore', points))).volume;
  });
  expect(fine / coarse).toBeCloseTo(1, 3);
});
