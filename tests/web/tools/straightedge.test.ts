import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { JobFile, SectionFile } from '../../../geometry/job/job-file.ts';
import { measured } from '../../../geometry/job/measured.ts';
import { readJobValue } from '../../../geometry/job/read-job.ts';
import { type FacePoint, toRadians } from '../../../geometry/units.ts';
import { type Lay, layStraightedge, ownSection } from '../../../web/tools/straightedge.ts';
import { even } from '../even.ts';
import { faceNamed, jobOf, PLATES, type PlateName, partOf } from './plates.ts';

const faceOf = (name: PlateName, face: string) => faceNamed(partOf(PLATES[name]), face);
const deg = (radius: number, degrees: number): FacePoint => [radius, toRadians(degrees)];

function laid(lay: Lay, ...points: readonly FacePoint[]) {
  const inHand = layStraightedge(faceOf('round', 'face'), lay, points[0]);
  for (const point of points.slice(1)) inHand.drawTo(point);
  return inHand;
}

/** A job that keeps it, as the file is read; the faults where it cannot. */
function kept(name: PlateName, section: SectionFile) {
  const [plate] = jobOf(PLATES[name]).parts;
  return readJobValue({ format: 1, parts: [{ ...plate, sections: [section] }] } as JobFile);
}

describe('a line', () => {
  test('runs from where it was laid down to where it was lifted', () => {
    expect(laid('line', deg(60, 20), deg(70, 50), deg(95, 200.1234)).finish()).toEqual({
      kind: 'line',
      face: 'face',
      from: [60, 20],
      to: [95, 200.1],
    });
  });

  test('a tap leaves nothing', () => {
    expect(laid('line', deg(60, 20)).finish()).toBeNull();
    expect(laid('line', deg(60, 20), deg(60.5, 20)).section()).toBeNull();
  });

  test('may end off the plate', () => {
    expect(laid('line', deg(60, 20), deg(140, 20)).finish()).toMatchObject({ to: [140, 20] });
    expect(laid('line', deg(0, 20), deg(140, 20)).finish()).toMatchObject({ from: [0, 20] });
  });
});

describe('a spoke and a ring', () => {
  test('follow the finger with one number', () => {
    const spoke = laid('along-first', deg(60, 20), deg(95, 140));
    expect(spoke.finish()).toEqual({ kind: 'along-first', face: 'face', at: 140 });
    expect(spoke.section()).toEqual({ kind: 'along-first', face: 'face', at: toRadians(140) });
    expect(laid('along-second', deg(60, 20), deg(95, 140)).finish()).toEqual({
      kind: 'along-second',
      face: 'face',
      at: 95,
    });
  });

  test('a tap is enough, and past the rim a ring stays on the face', () => {
    expect(laid('along-first', deg(60, 20)).finish()).toMatchObject({ at: 20 });
    expect(laid('along-second', deg(60, 20), deg(140, 20)).finish()).toMatchObject({ at: 100 });
    expect(laid('along-second', deg(60, 20), deg(5, 20)).finish()).toMatchObject({ at: 40 });
  });
});

test.each([
  ['round', 'face'],
  ['dished', 'face'],
  ['round', 'bore'],
  ['outline', 'face'],
] as const)(
  'laid anywhere about %s %s it is a sound section, and the file gives back what was seen',
  (name, faceName) => {
    const face = faceOf(name, faceName);
    const share = even(-0.3, 1.3);
    const at = ([a, b]: readonly [number, number]): FacePoint => [
      face.coordinates[0].from + a * (face.coordinates[0].to - face.coordinates[0].from),
      face.coordinates[1].from + b * (face.coordinates[1].to - face.coordinates[1].from),
    ];
    const lay = fc.constantFrom('line', 'along-first', 'along-second');
    fc.assert(
      fc.property(lay, fc.tuple(share, share), fc.tuple(share, share), (how, from, to) => {
        const inHand = layStraightedge(face, how, at(from));
        inHand.drawTo(at(to));
        const section = inHand.finish();
        if (section === null) return;
        const read = kept(name, section);
        if ('faults' in read) throw new Error(JSON.stringify(read.faults));
        expect(measured(read.job).parts[0].sections).toEqual([inHand.section()]);
        expect(ownSection(face, section)).toEqual(inHand.section());
      }),
    );
  },
);
