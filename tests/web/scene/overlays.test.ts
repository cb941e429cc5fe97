import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createDepthMap } from '../../../geometry/depth/depth-map.ts';
import { replay } from '../../../geometry/depth/replay.ts';
import { decideFill } from '../../../geometry/fill/fill-map.ts';
import type { MarkFile, WearPlateFile } from '../../../geometry/job/job-file.ts';
import { measured } from '../../../geometry/job/measured.ts';
import type { Face } from '../../../geometry/part/face.ts';
import { polygonArea } from '../../../geometry/part/polygon.ts';
import { flatFrame } from '../../../geometry/sheet/flat-frame.ts';
import { type Mm, toRadians } from '../../../geometry/units.ts';
import { presetRig, sightOf } from '../../../web/scene/camera.ts';
import { compass } from '../../../web/scene/compass.ts';
import { depthLabel } from '../../../web/scene/depth-label.ts';
import { depthScale } from '../../../web/scene/depth-scale.ts';
import { dimensionOf } from '../../../web/scene/dimension.ts';
import { drawnTimes } from '../../../web/scene/drawn-times.ts';
import { faceRing, type GridPlace } from '../../../web/scene/face-ring.ts';
import { markOutline } from '../../../web/scene/mark-outline.ts';
import { partBounds } from '../../../web/scene/part-bounds.ts';
import { regionOutline } from '../../../web/scene/region-outline.ts';
import { linePath, seenAt } from '../../../web/scene/surface-path.ts';
import { createViewport } from '../../../web/scene/viewport.ts';
import { flatDistance } from '../../../web/tools/flat-distance.ts';
import { even } from '../even.ts';
import { faceNamed, jobOf, PLATES, partOf } from '../tools/plates.ts';

const round = partOf(PLATES.round);
const [face, bore] = round.faces;
const job = (...wear: MarkFile[]) => measured(jobOf(PLATES.round, wear));
const own = (mark: MarkFile) => job(mark).parts[0].marks[0];

/** Area of a closed line in the flat picture, mm2. */
function areaOf(on: Face, line: readonly GridPlace[]): number {
  const frame = flatFrame(on);
  let v = line[0][1];
  const flat = line.map(([u, next]) => {
    v += on.grid.wraps ? Math.atan2(Math.sin(next - v), Math.cos(next - v)) : next - v;
    return frame.toFlat(u, v);
  });
  return Math.abs(polygonArea(flat));
}

describe('the ring of the brush', () => {
  test.each([
    ['round', 'face'],
    ['dished', 'face'],
    ['round', 'bore'],
    ['outline', 'face'],
  ] as const)('lies at its true radius all round: %s %s', (plate, name) => {
    const on = faceNamed(partOf(PLATES[plate]), name);
    const [a, b] = on.coordinates;
    fc.assert(
      fc.property(even(a.from, a.to), even(b.from, b.to), even(1, 25), (first, second, radius) => {
        const [u, v] = on.columnsAre === 'first' ? [second, first] : [first, second];
        const centre = on.columnsAre === 'first' ? ([v, u] as const) : ([u, v] as const);
        for (const [ru, rv] of faceRing(on, u, v, radius, 9)) {
          const point = on.columnsAre === 'first' ? ([rv, ru] as const) : ([ru, rv] as const);
          expect(flatDistance(on, centre, point)).toBeCloseTo(radius, 6);
        }
      }),
      { numRuns: 40 },
    );
  });
});

describe('outlines', () => {
  // Closed forms: sector, disc, stadium. Traced ones to half a percent of the size.
  test('a patch, an area and a pit enclose their areas', () => {
    const patch = own({ kind: 'patch', face: 'face', first: [60, 80], second: [350, 95], depth: 2 });
    const [line] = markOutline(face, patch);
    expect(areaOf(face, line) / (((80 ** 2 - 60 ** 2) / 2) * toRadians(105))).toBeCloseTo(1, 2);
    const pit = own({ kind: 'pit', face: 'face', at: [70, 10], diameter: 20, depth: 2, form: 'cone' });
    expect(areaOf(face, markOutline(face, pit)[0]) / (Math.PI * 100)).toBeCloseTo(1, 2);
    const area = own({
      kind: 'area',
      face: 'face',
      outline: [
        [60, 0],
        [80, 0],
        [70, 40],
      ],
      depth: 1,
    });
    const corners = [
      [60, 0],
      [80, 0],
      [70 * Math.cos(toRadians(40)), 70 * Math.sin(toRadians(40))],
    ] as const;
    expect(areaOf(face, markOutline(face, area)[0]) / polygonArea(corners)).toBeCloseTo(1, 6);
  });

  test('a ring has two lines', () => {
    const ring = own({ kind: 'patch', face: 'face', first: [60, 80], second: [0, 360], depth: 2 });
    expect(markOutline(face, ring).length).toBe(2);
  });

  test('a stroke is outlined at its radius, one on the bore across the 0/360 line in one piece', () => {
    const path: [number, number][] = [
      [60, 90],
      [80, 90],
    ];
    const stroke = own({ kind: 'stroke', face: 'face', path, radius: 8, depth: 2 });
    const lines = markOutline(face, stroke);
    expect(lines.length).toBe(1);
    expect(areaOf(face, lines[0]) / (20 * 16 + Math.PI * 64)).toBeCloseTo(1, 2);
    const across = own({
      kind: 'stroke',
      face: 'bore',
      path: [
        [350, 8],
        [10, 8],
      ],
      radius: 3,
      depth: 2,
    });
    const found = markOutline(bore, across);
    expect(found.length).toBe(1);
    const length = 40 * toRadians(20);
    expect(areaOf(bore, found[0]) / (length * 6 + Math.PI * 9)).toBeCloseTo(1, 1);
  });

  test('a damage region is outlined to a cell, another number finds nothing', () => {
    const marks = job(
      { kind: 'patch', face: 'face', first: [55, 85], second: [20, 110], depth: 3 },
      { kind: 'pit', face: 'face', at: [70, 250], diameter: 12, depth: 2, form: 'flat' },
    );
    const map = replay(face, marks.parts[0].marks);
    const { label, regions } = decideFill('plate', face, map, marks.repair);
    const { rows, columns } = face.grid;
    const found = {
      part: 'plate',
      face: 'face',
      rows,
      columns,
      label: new Int32Array(label),
      ids: regions.map(({ id }) => id),
    };
    const [line] = regionOutline(face, found, 'face-1');
    expect(areaOf(face, line) / (((85 ** 2 - 55 ** 2) / 2) * toRadians(90))).toBeCloseTo(1, 1);
    expect(regionOutline(face, found, 'face-9')).toEqual([]);
    expect(regionOutline(face, { ...found, rows: rows + 1 }, 'face-1')).toEqual([]);
  });
});

describe('what is seen', () => {
  const viewport = createViewport();
  viewport.resize({ width: 800, height: 600 });
  viewport.show(partBounds({ part: round, faces: [] }), { top: 0, bottom: 0, side: 0 });
  const map = createDepthMap(face.grid);
  const live = { part: 'plate', face, map };

  test('the face is seen from before it and not from behind it', () => {
    viewport.go('front');
    expect(seenAt(viewport.sight(), live, 1, [70, 1]).faces).toBe(true);
    viewport.turn(0, -1000);
    expect(seenAt(viewport.sight(), live, 1, [70, 1]).faces).toBe(false);
  });

  test('of the bore the far wall is seen and the near one is not', () => {
    viewport.go('angled');
    const on = { part: 'plate', face: bore, map: createDepthMap(bore.grid) };
    expect(seenAt(viewport.sight(), on, 1, [8, toRadians(110)]).faces).toBe(true);
    expect(seenAt(viewport.sight(), on, 1, [8, toRadians(290)]).faces).toBe(false);
  });

  test('a line is broken where it is not seen, and closed only when it is whole', () => {
    const at = (x: number, faces: boolean) => ({ x, y: 0, faces });
    expect(linePath([at(0, true), at(1, true), at(2, true)], true)).toBe('M0.0 0.0L1.0 0.0L2.0 0.0Z');
    expect(linePath([at(0, true), at(1, false), at(2, true)], true)).toBe('M0.0 0.0M2.0 0.0L0.0 0.0');
    expect(linePath([at(0, false), at(1, true), at(2, true)], false)).toBe('M1.0 0.0L2.0 0.0');
  });

  test('a view nobody has touched follows the size of part and screen, one that was chosen stays', () => {
    viewport.go('angled');
    const fitted = viewport.rig().distance;
    viewport.resize({ width: 500, height: 600 });
    expect(viewport.rig().distance).toBeGreaterThan(fitted);
    viewport.turn(10, 5);
    const chosen = viewport.rig();
    viewport.resize({ width: 800, height: 600 });
    expect(viewport.rig()).toEqual(chosen);
    const grown = partOf({ ...PLATES.round, outerDiameter: 220 });
    viewport.show(partBounds({ part: grown, faces: [] }), { top: 0, bottom: 0, side: 0 });
    expect(viewport.rig()).toEqual(chosen);
    const other = partOf({ ...PLATES.round, outerDiameter: 600 });
    viewport.show(partBounds({ part: other, faces: [] }), { top: 0, bottom: 0, side: 0 });
    expect(viewport.rig().distance).toBeGreaterThan(1.5 * chosen.distance);
  });
});

describe('angles round the rim', () => {
  test('stand outside the part as it is seen, arrow at 0', () => {
    const screen = { width: 900, height: 700 };
    const rig = presetRig('angled', partBounds({ part: round, faces: [] }), screen, {
      top: 0,
      bottom: 0,
      side: 0,
    });
    const { eye, project } = sightOf(rig, screen);
    const found = compass(round, eye);
    expect(found?.numbers.map(({ degrees }) => degrees)).toEqual([0, 90, 180, 270]);
    expect(found?.ticks.length).toBe(11);
    // The number nearest the eye lies below the lower edge of the rim.
    const near = project(found?.numbers[3].at ?? [0, 0, 0]);
    expect(near[1]).toBeGreaterThan(project([0, -100, -16])[1]);
    const [tip, left, right] = found?.arrow ?? [];
    expect(tip?.[0]).toBeLessThan(left?.[0] ?? 0);
    expect(left?.[1]).toBeCloseTo(-(right?.[1] ?? 0), 1);
  });

  test('are not there round an outline', () => {
    expect(compass(partOf(PLATES.outline), [0, 0, 300])).toBeNull();
  });
});

describe('the dimension in hand', () => {
  const of = (field: string, plate: WearPlateFile = PLATES.round) =>
    dimensionOf(`parts[0].${field}`, 0, plate, partOf(plate));
  const length = (field: string, plate?: WearPlateFile): Mm => {
    const [a, b] = of(field, plate)?.measured ?? [];
    return a === undefined || b === undefined
      ? Number.NaN
      : Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
  };

  test.each([
    ['outerDiameter', 200],
    ['boreDiameter', 80],
    ['thickness', 16],
    ['boltHoles[0].circleDiameter', 180],
    ['boltHoles[0].holeDiameter', 9],
  ])('%s is as long on the part as its value', (field, value) => {
    expect(length(field)).toBeCloseTo(value, 9);
    expect(of(field)?.value).toBe(value);
  });

  test('a cone angle is measured at the rim', () => {
    const dished = { ...PLATES.round, coneAngle: 4 };
    const { measured: arc = [] } = of('coneAngle', dished) ?? {};
    const angle = (at: number) => Math.atan2(-arc[at][2], 100 - arc[at][0]);
    expect(angle(arc.length - 1) - angle(0)).toBeCloseTo(toRadians(4), 9);
  });

  test('the count is shown by a ring round every hole', () => {
    expect(of('boltHoles[0].count')).toMatchObject({ quantity: 'plain', value: 6 });
    expect(of('boltHoles[0].count')?.thin.length).toBe(7);
  });

  test('a corner of an outline is measured from its axis', () => {
    expect(of('outline.edge[1][0]', PLATES.outline)?.value).toBe(120);
    expect(length('outline.holes[0][2][1]', PLATES.outline)).toBe(30);
  });

  test('anything else is no dimension', () => {
    for (const field of ['density', 'boltHoles[3].count', 'outline.edge[0][0]', 'wear[0].depth'])
      expect(of(field)).toBeNull();
    expect(dimensionOf('parts[1].thickness', 0, PLATES.round, round)).toBeNull();
  });
});

describe('the scale of depth', () => {
  test('ends at a whole step, on the depth of the tool in hand if that is more', () => {
    expect(depthScale(4.7, 0)).toEqual({ deepest: 4.7, most: 4.7, step: 1, to: 5 });
    expect(depthScale(4.7, 6.5)).toEqual({ deepest: 4.7, most: 6.5, step: 1, to: 7 });
    expect(depthScale(5.001, 0).to).toBe(5);
    expect(depthScale(0, 0).to).toBeGreaterThan(0);
  });

  test('wear is never drawn through the back', () => {
    expect(drawnTimes(3, 4 / 20)).toBe(3);
    expect(drawnTimes(10, 4 / 20)).toBe(4.5);
    expect(drawnTimes(10, 30 / 20)).toBe(1);
    expect(drawnTimes(10, 0)).toBe(10);
  });

  test('numbers are in the units of the screen', () => {
    expect([0, 0.5, 3].map((depth) => depthLabel(depth, 'mm'))).toEqual(['0', '0.5', '3']);
    expect([0, 2.54, 3].map((depth) => depthLabel(depth, 'in'))).toEqual(['0', '0.100', '0.118']);
  });
});
