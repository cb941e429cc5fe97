import { describe, expect, test } from 'vitest';
import { wallMap } from '../../../geometry/clearance/wall-map.ts';
import { estimate } from '../../../geometry/estimate.ts';
import type { Mark, WornPart } from '../../../geometry/job/job.ts';
import { flatPoint } from '../../../geometry/sheet/flat-frame.ts';
import { wallShapes } from '../../../geometry/sheet/wall-shapes.ts';
import { evenly, job, madeImpeller, pit, plate, polar } from '../made.ts';
import { areaOf, pointsOf } from './path-points.ts';

function shapesOf(worn: WornPart, face: string, limit: number | null, cell = 0.8) {
  const [part] = estimate({ ...job([]), parts: [worn] }, { cell }).parts;
  const map = wallMap(part.part, face, (known) => {
    const found = part.faces.find((each) => each.face === known);
    if (!found) throw new Error('no face');
    return found.map;
  });
  return { map, shapes: map && wallShapes(map, limit) };
}

describe('the map of a wall', () => {
  const cone = plate({ holes: [] }, [pit(110, 120, 80, 9.6, 'cone')]);
  test('is the wall less the depth where one side wears, and NaN beyond the face', () => {
    const { map } = shapesOf(plate({}, [pit(110, 120, 80, 9.6, 'cone')]), 'face', 10);
    if (map === null) throw new Error('no wall');
    const known = map.remaining.filter((left) => !Number.isNaN(left)).toSorted();
    expect(known.at(-1)).toBe(18);
    // Its point lies within a cell of 0.8 mm: at most 0.6 mm off, where the cone is 9.6 / 40 a mm less deep.
    expect(known[0]).toBeGreaterThan(8.4 - 1e-4);
    expect(known[0]).toBeLessThan(8.4 + (0.6 * 9.6) / 40);
    const { cover } = map.face;
    if (cover === null) throw new Error('no cover');
    map.remaining.forEach((left, cell) => {
      // Of a sliver of a cell no sample may be left.
      if (cover[cell] === 0) expect(left).toBeNaN();
      if (cover[cell] > 0.1) expect(left).not.toBeNaN();
    });
  });
  test('tips and edges have none', () => {
    expect(shapesOf(madeImpeller(), 'vane-1/tip', null).map).toBeNull();
    expect(shapesOf(madeImpeller(), 'vane-1/leading-edge', null).map).toBeNull();
  });
  test('either side of a vane gives the same one', () => {
    const worn = madeImpeller({}, {}, [evenly('vane-1/suction', 2)]);
    const [a, b] = ['vane-1/pressure', 'vane-1/suction'].map((face) => shapesOf(worn, face, null).map);
    expect(a?.face.name).toBe('vane-1/pressure');
    expect(a?.remaining).toEqual(b?.remaining);
    expect(a?.remaining[1000]).toBeCloseTo(6, 5);
  });

  test('the limit runs where the cone leaves just so much, with its name on it', () => {
    const { map, shapes } = shapesOf(cone, 'face', 10);
    if (map === null || shapes === null || shapes.limit === null) throw new Error('no limit line');
    // 18 - 9.6 (1 - x/40) = 10: x = 40 (1 - 8 / 9.6).
    const [cx, cy] = flatPoint(map.face, shapes.frame, polar(110, 120));
    const radii = pointsOf(shapes.limit.path)
      .flat()
      .map(([x, y]) => Math.hypot(x - cx, y - cy));
    // Samples of the picture lie 1 mm apart.
    for (const radius of radii) expect(Math.abs(radius - 40 * (1 - 8 / 9.6))).toBeLessThan(0.8);
    expect(shapes.limit.left).toBe(10);
  });
  test('lines at whole mm where the cone leaves so much, none on the limit', () => {
    const { map, shapes } = shapesOf(cone, 'face', 10);
    if (map === null || shapes === null) throw new Error('no wall');
    const [cx, cy] = flatPoint(map.face, shapes.frame, polar(110, 120));
    expect(shapes.scale).toEqual({ from: 8, to: 18, step: 1 });
    expect(shapes.lines.map(({ left }) => left)).toEqual([17, 16, 15, 14, 13, 12, 11, 9]);
    for (const { left, path } of shapes.lines) {
      for (const [x, y] of pointsOf(path).flat()) {
        expect(Math.abs(Math.hypot(x - cx, y - cy) - 40 * (1 - (18 - left) / 9.6))).toBeLessThan(0.8);
      }
    }
    expect(shapes.lines.some(({ labels }) => labels.length > 0)).toBe(true);
  });
  test('each band lies within the one before it, and the first covers the face', () => {
    const { shapes } = shapesOf(cone, 'face', 10);
    const areas = (shapes?.bands ?? []).map(({ path }) => areaOf(pointsOf(path)));
    expect(shapes?.bands.map(({ from }) => from)).toEqual([17, 16, 15, 14, 13, 12, 11, 10, 9, 8]);
    for (let i = 1; i < areas.length; i++) expect(areas[i]).toBeLessThan(areas[i - 1]);
    expect(areas[1] / (Math.PI * (40 * (1 - 1 / 9.6)) ** 2)).toBeCloseTo(1, 1);
    const shares = (shapes?.bands ?? []).map(({ share }) => share);
    expect(shares[0]).toBeCloseTo(0.95, 9);
    expect(shares[shares.length - 1]).toBeCloseTo(0.05, 9);
  });
  test('a hole is black over just its disc, and a sound wall has no limit line', () => {
    const through: Mark = pit(110, 120, 40, 18, 'flat');
    const { shapes } = shapesOf(plate({ holes: [] }, [through]), 'face', 10);
    expect(areaOf(pointsOf(shapes?.through ?? '')) / (Math.PI * 400)).toBeCloseTo(1, 1);
    const sound = shapesOf(plate(), 'face', 10).shapes;
    expect(sound?.through).toBe('');
    expect(sound?.limit).toBeNull();
    expect(sound?.lines).toEqual([]);
  });
  test('worn down exactly to the limit is not within its line', () => {
    const ring: Mark = { ...evenly('face', 8), first: [90, 130], second: [0, 2 * Math.PI] };
    expect(shapesOf(plate({ holes: [] }, [ring]), 'face', 10).shapes?.limit).toBeNull();
  });
});
