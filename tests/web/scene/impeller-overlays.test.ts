import { describe, expect, test } from 'vitest';
import { replay } from '../../../geometry/depth/replay.ts';
import type { ImpellerFile } from '../../../geometry/job/job-file.ts';
import { measured } from '../../../geometry/job/measured.ts';
import { partOf } from '../../../geometry/part/part-of.ts';
import { toDegrees, type Vec3 } from '../../../geometry/units.ts';
import { compass } from '../../../web/scene/compass.ts';
import { dimensionOf } from '../../../web/scene/dimension.ts';
import type { Dimension } from '../../../web/scene/dimension-shape.ts';
import { wallShare } from '../../../web/scene/drawn-times.ts';
import { flatEnds } from '../../../web/scene/flat-ends.ts';
import { partBounds } from '../../../web/scene/part-bounds.ts';
import { vaneMarks } from '../../../web/scene/vane-marks.ts';
import type { LivePart } from '../../../web/wear/live-faces.ts';
import { bodyOf } from '../../geometry/part/impellers.ts';
import { IMPELLER, impellerJob } from '../tools/impellers.ts';
import { faceNamed } from '../tools/plates.ts';

const builtOf = (file: ImpellerFile) => partOf(measured(impellerJob([], file)).parts[0], 2);
const TAPERED: ImpellerFile = {
  ...IMPELLER,
  rotation: 'counter-clockwise',
  vanes: {
    ...IMPELLER.vanes,
    firstAngle: 40,
    camber: 'arc',
    wrap: 80,
    thicknessInlet: 9,
    thicknessOutlet: 6,
    nose: 'square',
  },
};
const apart = (a: Vec3, b: Vec3) => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);

describe.each([
  ['usual', IMPELLER],
  ['tapered, single arc, the other way', TAPERED],
] as const)('the dimension in hand on an impeller: %s', (_, file) => {
  const part = builtOf(file);
  const of = (name: string) => {
    const found = dimensionOf(`parts[2].${name}`, 2, file, part);
    if (found === null) throw new Error(`no dimension ${name}`);
    return found;
  };
  const ends = ({ measured: line }: Dimension) => [line[0], line[line.length - 1]] as const;

  test.each([
    ['outerDiameter', 300],
    ['hubDiameter', 60],
    ['boreDiameter', 30],
    ['hubHeight', 36],
    ['shroudThickness', 10],
    ['vanes.inletDiameter', 130],
    ['vanes.thicknessInlet', file.vanes.thicknessInlet],
    ['vanes.thicknessOutlet', file.vanes.thicknessOutlet],
    ['vanes.heightInlet', 40],
    ['vanes.heightOutlet', 26],
  ])('%s is as long as it says', (name, size) => {
    const dimension = of(name);
    expect(dimension.value).toBeCloseTo(size, 9);
    // The thickness at the inlet is taken a little way behind the leading edge.
    expect(apart(...ends(dimension))).toBeCloseTo(size, name === 'vanes.thicknessInlet' ? 0 : 6);
  });

  test.each([
    ['vanes.inletAngle', 22],
    ['vanes.outletAngle', 28],
  ])('%s is as wide as it says, between the tangent and the vane', (name, degrees) => {
    const { thin, value } = of(name);
    const [a, b] = thin.map(([foot, end]) => Math.atan2(end[1] - foot[1], end[0] - foot[0]));
    expect(value).toBe(degrees);
    expect(Math.abs(toDegrees(Math.atan2(Math.sin(b - a), Math.cos(b - a))))).toBeCloseTo(degrees, 6);
    // One arm runs round the shaft: at right angles to the way out.
    const [[foot, end]] = thin;
    const out = foot[0] * (end[0] - foot[0]) + foot[1] * (end[1] - foot[1]);
    expect(out).toBeCloseTo(0, 6);
  });

  test('the wrap is drawn from the leading edge to the outer end', () => {
    const [start, end] = ends(of('vanes.wrap')).map(([x, y]) => Math.atan2(y, x));
    const [vane] = bodyOf(part).vanes;
    const last = vane.camber(vane.length);
    expect(Math.cos(start - vane.angle)).toBeCloseTo(1, 9);
    expect(Math.cos(end - Math.atan2(last.y, last.x))).toBeCloseTo(1, 9);
    expect(of('vanes.wrap').value).toBe(file.vanes.wrap ?? 0);
  });

  test('the number of vanes is a ring about each', () => {
    expect(of('vanes.count')).toMatchObject({ value: 5, noun: 'vanes' });
    expect(of('vanes.count').thin).toHaveLength(5);
  });

  test('anything else is no dimension', () => {
    for (const name of ['density', 'leastThickness', 'vanes.nose', 'wear[0].depth'])
      expect(dimensionOf(`parts[0].${name}`, 0, file, part)).toBeNull();
    expect(dimensionOf('parts[1].hubDiameter', 0, file, part)).toBeNull();
  });
});

describe('what is written round an impeller', () => {
  test('each vane has its number just inward of its leading edge', () => {
    const part = builtOf(TAPERED);
    const { numbers } = vaneMarks(bodyOf(part));
    expect(numbers.map(({ number }) => number)).toEqual([1, 2, 3, 4, 5]);
    for (const [i, { at }] of numbers.entries()) {
      const turned = toDegrees(Math.atan2(at[1], at[0])) - (40 + 72 * i);
      expect(Math.cos((turned / 180) * Math.PI)).toBeCloseTo(1, 9);
      expect(Math.hypot(at[0], at[1])).toBeLessThan(65);
      expect(Math.hypot(at[0], at[1])).toBeGreaterThan(30);
    }
  });

  test('the arrow runs the way it turns', () => {
    const turn = (file: ImpellerFile) => {
      const { arrow } = vaneMarks(bodyOf(builtOf(file)));
      const [a, b] = [arrow[0], arrow[arrow.length - 1]].map(([x, y]) => Math.atan2(y, x));
      return Math.sign(b - a);
    };
    expect([turn(IMPELLER), turn(TAPERED)]).toEqual([-1, 1]);
  });

  test('its angles stand round the rim, and the view has room for them', () => {
    const part = builtOf(IMPELLER);
    const round = compass(part, [0, -300, 400]);
    const furthest = Math.max(...(round?.numbers ?? []).map(({ at }) => Math.hypot(at[0], at[1])));
    expect(furthest).toBeGreaterThan(150);
    const { points, middle } = partBounds({ part, faces: [] });
    expect(Math.max(...points.map(([x, y]) => Math.hypot(x, y)))).toBeGreaterThanOrEqual(furthest - 12);
    expect(Math.min(...points.map(([, , z]) => z))).toBe(-10);
    expect(middle.slice(0, 2)).toEqual([expect.closeTo(0, 9), expect.closeTo(0, 9)]);
  });

  test('laid flat, each face of a vane says what it ends at', () => {
    const part = builtOf(IMPELLER);
    const words = (name: string) => flatEnds(faceNamed(part, name)).map((end) => end.words);
    expect(words('vane-2/suction')).toEqual(['Leading edge', 'Trailing edge']);
    expect(words('vane-2/tip')).toContain('Pressure side');
    expect(words('vane-2/leading-edge')).toEqual(['Tip', 'Foot', 'Suction side', 'Pressure side']);
    expect(words('shroud/front')).toEqual([]);
  });
});

describe('how much of its wall the wear takes', () => {
  const shareOf = (
    ...marks: Parameters<typeof impellerJob>[0] extends readonly (infer M)[] | undefined ? M[] : never
  ) => {
    const [worn] = measured(impellerJob(marks)).parts;
    const part = partOf(worn, 1);
    const live: LivePart = {
      part,
      faces: part.faces.map((face) => ({ part: 'impeller', face, map: replay(face, worn.marks) })),
    };
    return wallShare(live);
  };
  const patch = (face: string, depth: number) =>
    ({ kind: 'patch', face, first: [30, 60], second: [5, 20], depth }) as const;

  test('counts both sides of a vane together, and an eaten edge against its length', () => {
    expect(shareOf()).toBe(0);
    expect(shareOf(patch('vane-1/pressure', 2))).toBeCloseTo(2 / 8, 6);
    expect(shareOf(patch('vane-1/pressure', 2), patch('vane-1/suction', 3))).toBeCloseTo(5 / 8, 6);
    expect(shareOf(patch('vane-1/pressure', 2), patch('vane-2/suction', 3))).toBeCloseTo(3 / 8, 6);
    const edge = { kind: 'edge', face: 'vane-1/leading-edge', profile: [[0, 20]] } as const;
    expect(
      shareOf({
        ...edge,
        profile: [
          [0, 20],
          [40, 20],
        ],
      }),
    ).toBeCloseTo(20 / 202.07248, 4);
  });
});
