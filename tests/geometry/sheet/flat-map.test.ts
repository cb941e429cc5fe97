import { describe, expect, it } from 'vitest';
import type { DepthMap } from '../../../geometry/depth/depth-map.ts';
import { replay } from '../../../geometry/depth/replay.ts';
import type { Mark, WornPart } from '../../../geometry/job/job.ts';
import type { Face } from '../../../geometry/part/face.ts';
import { partOf } from '../../../geometry/part/part-of.ts';
import { flatFrame, flatPoint } from '../../../geometry/sheet/flat-frame.ts';
import { contourStep, flatMap } from '../../../geometry/sheet/flat-map.ts';
import { toRadians } from '../../../geometry/units.ts';
import { pointsOf } from './path-points.ts';
import { WORN_JOB } from './worn-plate.ts';

const [PLATE, WING] = WORN_JOB.parts;

/** The faces of one plate and their maps, with these marks and no others. */
function facesOf(plate: WornPart, marks: readonly Mark[], cell = 0.8): { face: Face; map: DepthMap }[] {
  return partOf(plate, cell).faces.map((face) => ({ face, map: replay(face, marks) }));
}

const onFace = { face: 'face', blend: 'deepest' } as const;

describe('flatMap', () => {
  it('draws the contours of a cone where the cone has that depth', () => {
    // Cone of 4.8 mm over radius 40: depth d lies at 40 (1 - d / 4.8) from its centre (job format, "pit").
    const at = [110, toRadians(120)] as const;
    const [{ face, map }] = facesOf(PLATE, [
      { ...onFace, kind: 'pit', at, radius: 40, depth: 4.8, form: 'cone' },
    ]);
    const { lines } = flatMap(face, map);
    const [cx, cy] = flatPoint(face, flatFrame(face), at);
    expect(lines.map(({ depth }) => depth)).toEqual([1, 2, 3, 4]);
    for (const { depth, path } of lines) {
      for (const [x, y] of pointsOf(path).flat()) {
        // Lines are drawn 0.02 mm early, which is 0.17 mm outward; samples lie 1 mm apart.
        expect(Math.abs(Math.hypot(x - cx, y - cy) - 40 * (1 - depth / 4.8))).toBeLessThan(0.6);
      }
    }
  });

  it('fills bands from shallow to deep, each a share of the scale', () => {
    const [{ face, map }] = facesOf(PLATE, [
      { ...onFace, kind: 'patch', first: [80, 140], second: [0.5, 1.5], depth: [0, 3.6] },
    ]);
    const { bands, step, scaleTo } = flatMap(face, map);
    expect([step, scaleTo]).toEqual([1, 4]);
    expect(bands.map(({ depth, to, share }) => [depth, to, share])).toEqual([
      [0, 1, 0.125],
      [1, 2, 0.375],
      [2, 3, 0.625],
      [3, 4, 0.875],
    ]);
  });

  it('holds a flat bottom of 3 mm inside one 3 mm line', () => {
    const [{ face, map }] = facesOf(PLATE, [
      { ...onFace, kind: 'patch', first: [90, 120], second: [0.5, 1.5], depth: [3, 3] },
    ]);
    const deepest = flatMap(face, map).bands.at(-1);
    expect(deepest?.depth).toBe(3);
    expect(pointsOf(deepest?.path ?? '')).toHaveLength(1);
  });

  it('does not break a ring at the 0/360 mark', () => {
    const [{ face, map }] = facesOf(PLATE, [
      { ...onFace, kind: 'patch', first: [80, 110], second: [0, 2 * Math.PI], depth: [0, 4] },
    ]);
    const line = flatMap(face, map).lines.find(({ depth }) => depth === 2);
    const [inner, ...rest] = pointsOf(line?.path ?? '').sort((a, b) => b.length - a.length);
    expect(rest).toHaveLength(1);
    expect(inner[0]).toEqual(inner[inner.length - 1]);
  });

  it('carries contours across a bolt hole up to its rim, and not round it', () => {
    // Wear as deep everywhere round the hole at (145, 0): no line may show on the face near it.
    const [{ face, map }] = facesOf(PLATE, [
      { ...onFace, kind: 'patch', first: [125, 160], second: [-0.3, 0.3], depth: [2.4, 2.4] },
    ]);
    for (const { path } of flatMap(face, map).lines) {
      for (const [x, y] of pointsOf(path).flat()) expect(Math.hypot(x - 145, y)).toBeGreaterThan(9);
    }
  });

  it('reads upright, and keeps numbers apart and off cliffs', () => {
    const [{ face, map }] = facesOf(WING, [
      {
        ...onFace,
        kind: 'stroke',
        path: [
          [60, 25],
          [110, 25],
        ],
        radius: 20,
        depth: 2.4,
        edge: 'soft',
        clear: false,
      },
      { ...onFace, kind: 'patch', first: [5, 55], second: [40, 80], depth: [2.2, 2.2] },
    ]);
    const labels = flatMap(face, map).lines.flatMap((line) => line.labels);
    expect(labels.length).toBeGreaterThanOrEqual(3);
    for (const [i, a] of labels.entries()) {
      expect(a.angle).toBeGreaterThan(-90);
      expect(a.angle).toBeLessThanOrEqual(90);
      // The patch with its upright sides lies at x < 55: its stacked lines carry no number.
      expect(a.x).toBeGreaterThan(40);
      for (const b of labels.slice(0, i)) expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeGreaterThan(6);
    }
  });

  it('is empty of bands and lines on a face that is not worn', () => {
    const [{ face, map }] = facesOf(PLATE, []);
    expect(flatMap(face, map)).toMatchObject({ bands: [], lines: [] });
  });
});

describe('contourStep', () => {
  it.each([
    [0.4, 0.1],
    [0.6, 0.5],
    [2.9, 0.5],
    [3, 1],
    [12, 1],
    [12.5, 2],
    [30, 5],
  ])('for %f mm is %f mm', (deepest, step) => {
    expect(contourStep(deepest)).toBe(step);
  });
});

describe('flatFrame', () => {
  const [face, bore] = facesOf(PLATE, [], 3);
  const [wing] = facesOf(WING, [], 3);
  const drawn = (one: { face: Face }, point: readonly [number, number]) =>
    flatPoint(one.face, flatFrame(one.face), point);

  it('puts the reference mark to the right and angles counter-clockwise, y down the page', () => {
    expect(drawn(face, [100, 0])).toEqual([100, -0]);
    expect(drawn(face, [100, Math.PI / 2])[1]).toBeCloseTo(-100, 9);
  });

  it('unrolls the bore from angle 0, its edge at the face on top', () => {
    const [x, y] = drawn(bore, [Math.PI, 5]);
    expect(x).toBeCloseTo(Math.PI * 60, 9);
    expect(y).toBe(5);
    expect(flatFrame(bore.face).box).toMatchObject({ x: 0, y: 0, height: 18 });
  });

  it('has y up on a face in x, y', () => {
    expect(drawn(wing, [120, 50])).toEqual([120, -50]);
  });

  it('goes there and back', () => {
    for (const [one, u, v] of [
      [face, 100, 5.5],
      [face, 70, 0.01],
      [bore, 4, 3],
      [wing, 20, 100],
    ] as const) {
      const frame = flatFrame(one.face);
      const back = frame.toGrid(...frame.toFlat(u, v));
      expect(back[0]).toBeCloseTo(u, 9);
      expect(back[1]).toBeCloseTo(v, 9);
    }
  });
});
