import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { depthAt } from '../../../geometry/depth/depth-at.ts';
import { replay } from '../../../geometry/depth/replay.ts';
import type { MarkFile } from '../../../geometry/job/job-file.ts';
import { measured } from '../../../geometry/job/measured.ts';
import { readJobValue } from '../../../geometry/job/read-job.ts';
import { toGridPoint } from '../../../geometry/part/face.ts';
import { type FacePoint, toRadians } from '../../../geometry/units.ts';
import { startArea } from '../../../web/tools/area.ts';
import type { BrushSettings } from '../../../web/tools/brush.ts';
import { filePoint, ownPoint } from '../../../web/tools/file-point.ts';
import { startPatch } from '../../../web/tools/patch.ts';
import { pitMark } from '../../../web/tools/pit.ts';
import { even } from '../even.ts';
import { faceNamed, jobOf, PLATES, type PlateName, partOf } from './plates.ts';

const brush: BrushSettings = { mode: 'set', radius: 6, depth: 2, edge: 'soft', strength: 0.5 };
const faceOf = (name: PlateName, face: string) => faceNamed(partOf(PLATES[name]), face);
const faultsOf = (name: PlateName, mark: MarkFile) => {
  const read = readJobValue(jobOf(PLATES[name], [mark]));
  return 'faults' in read ? read.faults : [];
};

describe('a point in the file', () => {
  test.each([
    ['round', 'face'],
    ['round', 'bore'],
    ['outline', 'face'],
  ] as const)(
    'of %s %s comes back within half a step, and rounding it again changes nothing',
    (name, faceName) => {
      const face = faceOf(name, faceName);
      fc.assert(
        fc.property(even(-40, 150), even(-7, 150), (a, b) => {
          const rounded = filePoint(face, [a, b]);
          expect(filePoint(face, ownPoint(face, rounded))).toEqual(rounded);
          for (const which of [0, 1] as const) {
            const off = ownPoint(face, rounded)[which] - [a, b][which];
            const isAngle = face.coordinates[which].isAngle;
            const turns = isAngle ? Math.round(off / (2 * Math.PI)) : 0;
            expect(Math.abs(off - turns * 2 * Math.PI)).toBeLessThanOrEqual(
              isAngle ? toRadians(0.0005001) : 0.0050001,
            );
            if (isAngle) expect(rounded[which]).toBeGreaterThanOrEqual(0);
            if (isAngle) expect(rounded[which]).toBeLessThan(360);
          }
        }),
      );
    },
  );
});

describe('the patch', () => {
  const drawn = (from: FacePoint, ...to: FacePoint[]) => {
    const inHand = startPatch(faceOf('round', 'face'), brush, from);
    for (const point of to) inHand.drawTo(point);
    return inHand;
  };
  const deg = (radius: number, degrees: number): FacePoint => [radius, toRadians(degrees)];

  test('is the box between two corners, whichever is drawn first', () => {
    const patch = {
      kind: 'patch',
      face: 'face',
      first: [60, 75],
      second: [20, 95],
      depth: 2,
      blend: 'deepest',
    };
    expect(drawn(deg(60, 20), deg(75, 95)).finish()).toEqual(patch);
    expect(drawn(deg(75, 95), deg(60, 20)).finish()).toEqual(patch);
    expect(drawn(deg(60, 95), deg(75, 20)).finish()).toEqual(patch);
  });

  test('runs across the 0/360 line where it was drawn across it', () => {
    expect(drawn(deg(60, 350), deg(75, 15)).finish()).toMatchObject({ second: [350, 15] });
    expect(drawn(deg(60, 15), deg(75, 350)).finish()).toMatchObject({ second: [350, 15] });
  });

  test('counts on past half a turn, and past a whole one is the ring', () => {
    const round = [90, 180, 270].map((degrees) => deg(75, degrees));
    expect(drawn(deg(60, 10), ...round).finish()).toMatchObject({ second: [10, 270] });
    expect(drawn(deg(60, 10), ...round, deg(75, 350), deg(75, 15)).finish()).toMatchObject({
      second: [0, 360],
    });
  });

  test('snaps to the edges of the face when drawn past them', () => {
    expect(drawn(deg(20, 0), deg(130, 30)).finish()).toMatchObject({ first: [40, 100] });
  });

  test('leaves nothing after a tap', () => {
    expect(drawn(deg(60, 20)).finish()).toBeNull();
    expect(drawn(deg(60, 20), deg(60.2, 40)).finish()).toBeNull();
    expect(drawn(deg(60, 20), deg(60.2, 40)).outline()).toEqual([]);
  });

  test('goes by the depth alone, whatever the brush is set to', () => {
    for (const mode of ['add', 'smooth', 'clear'] as const) {
      const inHand = startPatch(faceOf('round', 'face'), { ...brush, mode }, deg(60, 20));
      inHand.drawTo(deg(75, 95));
      expect(inHand.finish()).toMatchObject({ depth: 2, blend: 'deepest' });
    }
  });

  test.each([
    ['round', 'face'],
    ['dished', 'face'],
    ['round', 'bore'],
    ['outline', 'face'],
  ] as const)(
    'drawn anywhere about %s %s is a sound mark, its outline round what it presses',
    (name, faceName) => {
      const face = faceOf(name, faceName);
      const share = even(-0.1, 1.1);
      const at = ([a, b]: readonly [number, number]): FacePoint => [
        face.coordinates[0].from + a * (face.coordinates[0].to - face.coordinates[0].from),
        face.coordinates[1].from + b * (face.coordinates[1].to - face.coordinates[1].from),
      ];
      fc.assert(
        fc.property(fc.tuple(share, share), fc.tuple(share, share), (from, to) => {
          const inHand = startPatch(face, brush, at(from));
          inHand.drawTo(at(to));
          const mark = inHand.finish();
          if (mark === null) return;
          expect(faultsOf(name, mark)).toEqual([]);
          const [outline] = inHand.outline();
          expect(outline.length).toBeGreaterThan(100);
          // The middle of the box lies between opposite points of its outline.
          const [a, b] = [outline[0], outline[outline.length / 2]];
          const middle: FacePoint = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
          const [u, v] = toGridPoint(face, middle);
          const map = replay(face, measured(jobOf(PLATES[name], [mark])).parts[0].marks);
          if (face.holds(u, v)) expect(depthAt(map, face, u, v)).toBeCloseTo(2, 6);
        }),
        { numRuns: 40 },
      );
    },
    30_000,
  );
});

describe('the area', () => {
  const square: FacePoint[] = [
    [20, 60],
    [50, 60],
    [50, 80],
    [20, 80],
  ];
  const started = () => startArea(faceOf('outline', 'face'), brush);
  const area = { kind: 'area', face: 'face', outline: square, depth: 2, blend: 'deepest' };

  test('sets corners until it is back at the first', () => {
    const inHand = started();
    for (const corner of square) expect(inHand.tap(corner, 2)).toBeNull();
    expect(inHand.corners()).toEqual(square);
    expect(inHand.tap([21, 61], 2)).toEqual(area);
  });

  test('closes when it is finished by hand, from three corners on', () => {
    const inHand = started();
    inHand.tap(square[0], 2);
    inHand.tap(square[1], 2);
    expect(inHand.finish()).toBeNull();
    inHand.tap(square[2], 2);
    inHand.tap(square[3], 2);
    expect(inHand.finish()).toEqual(area);
  });

  test('takes the second half of a double tap for the same corner', () => {
    const inHand = started();
    for (const corner of square) inHand.tap(corner, 2);
    inHand.tap([20.1, 80.1], 2);
    expect(inHand.finish()).toEqual(area);
  });

  test('takes a corner back', () => {
    const inHand = started();
    inHand.tap(square[0], 2);
    inHand.tap([70, 20], 2);
    inHand.takeBack();
    expect(inHand.corners()).toEqual([square[0]]);
  });

  test('with crossing sides is refused by the job, in words', () => {
    const inHand = started();
    for (const corner of [square[0], square[2], square[1], square[3]]) inHand.tap(corner, 2);
    const mark = inHand.finish();
    if (mark === null) throw new Error('no mark');
    expect(faultsOf('outline', mark).length).toBe(1);
  });
});

describe('the pit', () => {
  test('is as wide as the brush, a bowl when soft and flat when hard', () => {
    const face = faceOf('round', 'face');
    const pit = { kind: 'pit', face: 'face', at: [66.67, 270], diameter: 12, depth: 2, blend: 'deepest' };
    expect(pitMark(face, brush, [66.6667, toRadians(-90)])).toEqual({ ...pit, form: 'bowl' });
    expect(pitMark(face, { ...brush, edge: 'hard' }, [66.6667, toRadians(-90)])).toEqual({
      ...pit,
      form: 'flat',
    });
  });
});
