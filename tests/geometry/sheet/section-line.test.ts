import { describe, expect, test } from 'vitest';
import type { Section } from '../../../geometry/job/job.ts';
import type { Face } from '../../../geometry/part/face.ts';
import { wearPlate } from '../../../geometry/part/wear-plate.ts';
import { type SectionLine, sectionLine } from '../../../geometry/sheet/section-line.ts';
import { toRadians } from '../../../geometry/units.ts';
import { faceOf, impellerFace, madeImpeller, plate, polar } from '../made.ts';

/** Expected lengths are closed forms: chords, circles and slopes, no source needed. */
const BARE = { holes: [] };

const straight = (face: Face, from: readonly [number, number], to: readonly [number, number]) =>
  sectionLine(face, { kind: 'line', face: face.name, from, to });
const fixed = (face: Face, kind: 'along-first' | 'along-second', at: number) =>
  sectionLine(face, { kind, face: face.name, at } satisfies Section);

/** Where the metal begins and ends along a line. */
function stretches({ on, at }: SectionLine): (readonly [number, number])[] {
  const found: [number, number][] = [];
  for (let i = 0; i < on.length; i++) {
    if (on[i] === 0) continue;
    if (i === 0 || on[i - 1] === 0) found.push([at[i], at[i]]);
    found[found.length - 1][1] = at[i];
  }
  return found;
}

describe('on a round face', () => {
  test.each([0, 17, 43.5, 59])(
    'a line %d mm off the axis has a gap of 2 sqrt(Rb^2 - h^2) over the bore',
    (h) => {
      // In x, y from (-150, h) to (150, h); bore of 60 mm radius, rim of 160.
      const end = (x: number) => [Math.hypot(x, h), Math.atan2(h, x)] as const;
      const line = straight(faceOf('face', BARE, 1), end(-150), end(150));
      const half = Math.sqrt(60 ** 2 - h ** 2);
      expect(line.length).toBeCloseTo(300, 6);
      const [first, second] = stretches(line);
      expect(first[1]).toBeCloseTo(150 - half, 6);
      expect(second[0] - first[1]).toBeCloseTo(2 * half, 6);
      expect(stretches(line)).toHaveLength(2);
    },
  );

  test('drawn past the rim it ends there, and a bolt hole crossed through its middle is 14 mm wide', () => {
    const line = straight(faceOf('face', {}, 1), polar(100, 0), polar(200, 0));
    const ends = stretches(line).flat();
    // The hole of 14 mm stands at radius 145, the rim at 160.
    for (const [i, at] of [0, 38, 52, 60].entries()) expect(ends[i]).toBeCloseTo(at, 6);
    expect(ends).toHaveLength(4);
  });

  test('a spoke runs from bore to rim, a ring closes after 2 pi r', () => {
    const face = faceOf('face', BARE, 1);
    const spoke = fixed(face, 'along-first', toRadians(350));
    expect(spoke.isClosed).toBe(false);
    expect(spoke.length).toBeCloseTo(100, 9);
    expect(stretches(spoke)).toEqual([[0, spoke.length]]);
    const ring = fixed(face, 'along-second', 108);
    expect(ring.isClosed).toBe(true);
    expect(ring.length).toBeCloseTo(2 * Math.PI * 108, 9);
    expect(stretches(ring)).toEqual([[0, ring.length]]);
  });

  test('on a cone lengths are along the slope, over its bore they are level', () => {
    // A spoke of 100 mm seen along the shaft is 100 / cos 20 long.
    const coneAngle = toRadians(20);
    const face = faceOf('face', { ...BARE, coneAngle }, 1);
    expect(fixed(face, 'along-first', 0).length).toBeCloseTo(100 / Math.cos(coneAngle), 6);
    const across = straight(face, polar(160, 30), polar(160, 210));
    const [first, second] = stretches(across);
    expect(second[0] - first[1]).toBeCloseTo(120, 6);
    expect(across.length).toBeCloseTo(120 + 200 / Math.cos(coneAngle), 6);
  });

  test('a chord of a cone is as long as the curve over it, by quadrature', () => {
    const coneAngle = toRadians(20);
    const face = faceOf('face', { ...BARE, coneAngle }, 0.5);
    const end = (x: number) => [Math.hypot(x, 80), Math.atan2(80, x)] as const;
    // z = r tan a over y = 80: ds = sqrt(1 + (tan a x / r)^2) dx. Midpoints, 20000 of them.
    const steps = 20_000;
    let length = 0;
    for (let i = 0; i < steps; i++) {
      const x = -120 + (240 * (i + 0.5)) / steps;
      length += (240 / steps) * Math.hypot(1, (Math.tan(coneAngle) * x) / Math.hypot(x, 80));
    }
    // The line is a polygon of places a quarter of a mm apart.
    expect(straight(face, end(-120), end(120)).length).toBeCloseTo(length, 4);
  });
});

test('in the bore it goes round, straight down, and between two places the short way over the 0/360 line', () => {
  const face = faceOf('bore', BARE, 0.5);
  const round = fixed(face, 'along-first', 5);
  expect([round.isClosed, round.length]).toEqual([true, expect.closeTo(2 * Math.PI * 60, 9)]);
  expect(fixed(face, 'along-second', toRadians(40)).length).toBeCloseTo(18, 9);
  // 20 deg of 60 mm radius one way, 6 mm the other.
  const short = straight(face, [toRadians(350), 3], [toRadians(10), 9]);
  expect(short.length).toBeCloseTo(Math.hypot((60 * Math.PI) / 9, 6), 9);
  expect(stretches(short)).toEqual([[0, short.length]]);
});

test('on an outline plate it runs over cut-outs and past edges', () => {
  const edge = [
    [0, 0],
    [120, 0],
    [120, 60],
    [0, 60],
  ] as const;
  const hole = [
    [20, 20],
    [50, 20],
    [50, 40],
    [20, 40],
  ] as const;
  const shape = { kind: 'outline', edge, holes: [hole] } as const;
  const [face] = wearPlate({ ...plate(), shape }, 1).faces;
  const line = straight(face, [-10, 30], [130, 30]);
  const ends = stretches(line).flat();
  for (const [i, at] of [10, 30, 60, 130].entries()) expect(ends[i]).toBeCloseTo(at, 6);
  expect(fixed(face, 'along-second', 10).length).toBeCloseTo(60, 9);
});

test('on a vane it runs along and up; a sloping top ends it', () => {
  const shape = madeImpeller({ heightInlet: 40, heightOutlet: 20 });
  const face = impellerFace('vane-1/pressure', shape, 0.5);
  const along = fixed(face, 'along-first', 30);
  // Height falls evenly with the radius, from 40 at 65 mm to 20 at 150: 30 mm are reached half way, at 107.5.
  const [[from, to]] = stretches(along);
  expect(from).toBe(0);
  const [x, y] = face.position(to, 30, face.wall(to) / 2);
  expect(Math.hypot(x, y)).toBeCloseTo(107.5, 6);
  expect(fixed(face, 'along-second', 0).length).toBeCloseTo(40, 9);
});

test('a point beside the line is found beside it', () => {
  const face = faceOf('face', BARE, 1);
  const chord = straight(face, [80, Math.PI], [80, 0]);
  // 12 mm along from x = -80, 3 mm above it.
  const point = [Math.hypot(-68, 3), Math.atan2(3, -68)] as const;
  expect(chord.near(point)).toEqual({ at: expect.closeTo(12, 9), off: expect.closeTo(3, 9) });
  const ring = fixed(face, 'along-second', 100);
  expect(ring.near(polar(104, 270))).toEqual({
    at: expect.closeTo(150 * Math.PI, 6),
    off: expect.closeTo(4, 9),
  });
});
