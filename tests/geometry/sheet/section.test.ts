import { describe, expect, test } from 'vitest';
import { type DepthMap, deepestOf } from '../../../geometry/depth/depth-map.ts';
import { replay } from '../../../geometry/depth/replay.ts';
import { decideFill } from '../../../geometry/fill/fill-map.ts';
import type { Mark, Repair, Section } from '../../../geometry/job/job.ts';
import type { Face } from '../../../geometry/part/face.ts';
import {
  isThrough,
  type SectionOptions,
  type SectionProfile,
  sectionProfile,
} from '../../../geometry/sheet/section.ts';
import { toRadians } from '../../../geometry/units.ts';
import { evenly, faceOf, impellerFace, job, madeImpeller, patch, pit, polar } from '../made.ts';

/** Every expected depth is the closed form of the mark; tolerances are what a cell of the map leaves open, as said beside them. */
const CELL = 0.5;
const BARE = { holes: [] };
/** The whole face, 2 mm deep. */
const WHOLE = patch([0, 200], [0, 360], 2);
const NOTHING: SectionOptions = { fill: null, film: 0, behind: null, readings: [] };

const spoke = (degrees: number): Section => ({ kind: 'along-first', face: 'face', at: toRadians(degrees) });

function under(
  marks: readonly Mark[],
  section: Section,
  { face = faceOf('face', BARE, CELL), ...options }: Partial<SectionOptions> & { face?: Face } = {},
): SectionProfile {
  return sectionProfile(face, replay(face, marks), section, { ...NOTHING, ...options });
}

function filled(face: Face, map: DepthMap, repair: Partial<Repair> = {}): SectionOptions {
  const { label, regions, allowance } = decideFill('plate', face, map, job([], {}, repair).repair);
  const actions = regions.map(({ action }) => action);
  return { ...NOTHING, fill: { label, actions, allowance }, film: 0.5 };
}

const places = ({ runs }: SectionProfile) => runs.flat();

describe('the worn line', () => {
  test('of a bowl crossed through its middle is d (1 - (x / R)^2)', () => {
    const [depth, radius] = [4, 15];
    const profile = under([pit(110, 30, 2 * radius, depth, 'bowl')], spoke(30));
    // Within a cell the depth is taken as straight: off by the sag of the bowl over a cell, d (cell / R)^2 = 4.4 um. About its edge
    // a cell is split, where a sample stands up to half a cell off: 2 d / R 0.25 = 0.13 mm at most.
    for (const { at, depth: found } of places(profile)) {
      const x = Math.abs(60 + at - 110) / radius;
      const expected = Math.max(0, depth * (1 - x * x));
      expect(Math.abs(found - expected)).toBeLessThan(Math.abs(x - 1) * radius < 1.5 * CELL ? 0.13 : 0.005);
    }
    expect(profile.deepest?.depth).toBeCloseTo(depth, 2);
    expect(profile.deepest?.at).toBeCloseTo(50, 0);
    expect(profile.deepest?.point[0]).toBeCloseTo(110, 0);
    expect(profile.deepest?.point[1]).toBeCloseTo(toRadians(30), 6);
  });

  test('of a patch that deepens along the radius is straight from 2 to 5 mm', () => {
    const profile = under([patch([80, 140], [0, 60], [2, 5])], spoke(20));
    for (const { at, depth } of places(profile)) {
      const radius = 60 + at;
      const share = (radius - 80) / 60;
      const isNearEdge = Math.min(Math.abs(radius - 80), Math.abs(radius - 140)) < 1.5 * CELL;
      // A whole cell's float32 depth; in a split one a sample stands half a cell off: 3 / 60 0.25 = 0.0125 mm.
      if (!isNearEdge)
        expect(Math.abs(depth - (share > 0 && share < 1 ? 2 + 3 * share : 0))).toBeLessThan(1e-5);
    }
    expect(profile.deepest?.depth).toBeGreaterThan(4.98);
    expect(profile.deepest?.depth).toBeLessThanOrEqual(5);
    expect(60 + (profile.deepest?.at ?? 0)).toBeGreaterThan(139.5);
  });

  test('comes closer as the cells shrink', () => {
    const off = (cell: number) => {
      const face = faceOf('face', BARE, cell);
      const profile = under([pit(110, 33.3, 80, 5, 'bowl')], spoke(33.3), { face });
      return Math.max(
        ...places(profile).map(({ at, depth }) => {
          const x = (at - 50) / 40;
          return Math.abs(x) > 0.8 ? 0 : Math.abs(depth - 5 * (1 - x * x));
        }),
      );
    };
    // d (cell / R)^2 = 0.0125, and a quarter of it.
    expect(off(2)).toBeLessThan(0.0125);
    expect(off(1)).toBeLessThan(0.4 * off(2));
  });

  test('of a ring over the 0/360 line ends as deep as it begins', () => {
    const ring: Section = { kind: 'along-second', face: 'face', at: 100 };
    const profile = under([patch([80, 120], [340, 380], 3)], ring);
    const all = places(profile);
    expect([all[0].depth, all[all.length - 1].depth]).toEqual([3, 3]);
    expect(all[all.length - 1].at).toBeCloseTo(200 * Math.PI, 9);
    // 40 of 360 deg are worn: to a sample of a split cell at either end.
    const worn = all.filter(({ depth }) => depth > 0).length / all.length;
    expect(worn).toBeCloseTo(40 / 360, 2);
  });

  test('of an even bottom names its middle as the deepest place', () => {
    const profile = under([patch([80, 140], [0, 60], 3)], spoke(30));
    expect(profile.deepest).toMatchObject({ depth: 3 });
    expect(profile.deepest?.at).toBeCloseTo(50, 0);
  });

  test('over a hole there is none', () => {
    const face = faceOf('face', {}, CELL);
    const profile = under([WHOLE], spoke(0), { face });
    expect(profile.runs).toHaveLength(2);
    expect(profile.runs[0].at(-1)?.at).toBeCloseTo(78, 6);
    expect(profile.runs[1][0].at).toBeCloseTo(92, 6);
    for (const { depth } of places(profile)) expect(depth).toBe(2);
  });

  test('off the metal altogether nothing is deepest', () => {
    const line: Section = { kind: 'line', face: 'face', from: polar(20, 0), to: polar(20, 180) };
    expect(under([WHOLE], line)).toMatchObject({ runs: [], deepest: null });
  });
});

describe('putty and coat', () => {
  const face = faceOf('face', BARE, CELL);

  test('putty stands from the worn line up to the sound one, less what is kept for the coat', () => {
    const map = replay(face, [patch([80, 140], [0, 60], 3)]);
    for (const coatAllowance of [0, 0.5]) {
      const profile = sectionProfile(face, map, spoke(30), filled(face, map, { coatAllowance }));
      expect(profile.isFillKnown).toBe(true);
      for (const { depth, putty, isLeft } of places(profile)) {
        expect(putty).toBeCloseTo(Math.max(0, depth - coatAllowance), 12);
        expect(isLeft).toBe(false);
      }
      expect(profile.deepest).toMatchObject({ action: 'fill', putty: 3 - coatAllowance });
    }
  });

  test('damage that is left has no putty on it', () => {
    const map = replay(face, [pit(90, 30, 20, 0.8, 'flat'), pit(130, 30, 20, 2, 'flat')]);
    const profile = sectionProfile(face, map, spoke(30), filled(face, map));
    const at = (radius: number) => places(profile).find((place) => place.at >= radius - 60);
    expect(at(90)).toMatchObject({ isLeft: true, putty: 0 });
    expect(at(110)).toMatchObject({ isLeft: false, putty: 0, depth: 0 });
    expect(at(130)).toMatchObject({ isLeft: false, putty: 2 });
  });

  test('while it is not known what is filled, none of it is said', () => {
    const profile = under([WHOLE], spoke(0));
    expect(profile.isFillKnown).toBe(false);
    expect(profile.deepest).toMatchObject({ depth: 2, putty: 0, isLeft: false, action: null });
  });
});

describe('the wall behind', () => {
  test('is where the plate ends, and no wear goes past it', () => {
    // The plate is 18 mm thick; a pit marked through it ends there.
    const profile = under([pit(110, 0, 30, 18, 'flat')], spoke(0));
    expect(profile.deepest).toMatchObject({ depth: 18, wall: 18 });
    const twice = under(
      [pit(110, 0, 30, 12, 'flat'), { ...pit(110, 0, 30, 12, 'flat'), blend: 'add' }],
      spoke(0),
    );
    expect(twice.deepest).toMatchObject({ depth: 18, wall: 18 });
  });

  test('is reached when a depth kept to seven digits reaches it: 18.9 mm is a little less as a float', () => {
    expect(Math.fround(18.9)).toBeLessThan(18.9);
    expect(isThrough({ depth: Math.fround(18.9), wall: 18.9 })).toBe(true);
    expect(isThrough({ depth: 18.89, wall: 18.9 })).toBe(false);
    expect(isThrough({ depth: 0, wall: 0 })).toBe(false);
    expect(isThrough({ depth: 5, wall: null })).toBe(false);
  });

  test('of a shroud worn from both sides is what the other side left of it: 10 - 3', () => {
    const shape = madeImpeller();
    const front = impellerFace('shroud/front', shape, 1);
    const back = impellerFace('shroud/back', shape, 1);
    const section: Section = { kind: 'along-second', face: 'shroud/front', at: 45 };
    const behind = replay(back, [evenly('shroud/back', 3)]);
    expect(deepestOf(behind)).toBe(3);
    const map = replay(front, [evenly('shroud/front', 2)]);
    const profile = sectionProfile(front, map, section, { ...NOTHING, behind });
    expect(profile.deepest).toMatchObject({ depth: 2, wall: 7 });
  });

  test('at a tip it is no measure', () => {
    const face = impellerFace('vane-1/tip', madeImpeller(), CELL);
    const section: Section = { kind: 'along-first', face: 'vane-1/tip', at: 0 };
    expect(under([evenly('vane-1/tip', 1)], section, { face }).deepest).toMatchObject({ wall: null });
  });
});

test('gauge readings within 5 mm of the line stand along it', () => {
  const error = 0.1;
  const readings = [
    { at: polar(100, 0), depth: 2.1, error },
    { at: [Math.hypot(120, 4.9), Math.atan2(4.9, 120)] as const, depth: 2.4, error },
    { at: [Math.hypot(120, 5.1), Math.atan2(5.1, 120)] as const, depth: 9, error },
  ];
  expect(under([], spoke(0), { readings }).readings).toEqual([
    { at: expect.closeTo(40, 9), depth: 2.1, error, off: expect.closeTo(0, 9) },
    { at: expect.closeTo(60, 9), depth: 2.4, error, off: expect.closeTo(4.9, 9) },
  ]);
  expect(under([], spoke(0), { readings, within: 4 }).readings).toHaveLength(1);
});
