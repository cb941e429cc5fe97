import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type DepthMap, SAMPLES } from '../../../geometry/depth/depth-map.ts';
import { replay } from '../../../geometry/depth/replay.ts';
import type { MarkFile } from '../../../geometry/job/job-file.ts';
import { measured } from '../../../geometry/job/measured.ts';
import { readJobValue } from '../../../geometry/job/read-job.ts';
import type { Face } from '../../../geometry/part/face.ts';
import { type FacePoint, toRadians } from '../../../geometry/units.ts';
import { type BrushSettings, putBrushDown } from '../../../web/tools/brush.ts';
import { even } from '../even.ts';
import { faceNamed, jobOf, PLATES, type PlateName, partOf } from './plates.ts';

const SURFACES: readonly (readonly [PlateName, string])[] = [
  ['round', 'face'],
  ['dished', 'face'],
  ['round', 'bore'],
  ['outline', 'face'],
];

/** Wear that is there before the brush comes, with cells that are split. */
function earlier(face: Face): MarkFile[] {
  const isRound = face.coordinates[1].isAngle;
  if (face.name === 'bore')
    return [{ kind: 'patch', face: 'bore', first: [350, 40], second: [2.3, 9.1], depth: 2 }];
  return [
    isRound
      ? { kind: 'patch', face: 'face', first: [52.3, 71.9], second: [340, 55], depth: [1, 3] }
      : { kind: 'patch', face: 'face', first: [31.3, 88.8], second: [11.7, 40.2], depth: [1, 3] },
    { kind: 'pit', face: 'face', at: isRound ? [66, 20] : [50, 30], diameter: 13, depth: 2.5, form: 'bowl' },
  ];
}

/** Points anywhere about the face, a little past its edges too. */
const share = even(-0.05, 1.05);
const pathOf = fc.array(fc.tuple(share, share), { minLength: 1, maxLength: 7 });

function pointOn(face: Face, [a, b]: readonly [number, number]): FacePoint {
  const [first, second] = face.coordinates;
  return [first.from + a * (first.to - first.from), second.from + b * (second.to - second.from)];
}

const brushes: fc.Arbitrary<BrushSettings> = fc.record({
  mode: fc.constantFrom('set', 'add', 'smooth', 'clear'),
  radius: even(0.6, 24),
  depth: even(0.1, 15.5),
  edge: fc.constantFrom('hard', 'soft'),
  strength: even(0, 1),
});

/** Everything a map holds, slot order aside, so that a difference is named by its cell. */
function firstDifference(a: DepthMap, b: DepthMap): string | null {
  for (let cell = 0; cell < a.depth.length; cell++) {
    if (a.depth[cell] !== b.depth[cell])
      return `depth of cell ${cell}: ${a.depth[cell]} and ${b.depth[cell]}`;
    if (a.slot[cell] !== b.slot[cell]) return `slot of cell ${cell}: ${a.slot[cell]} and ${b.slot[cell]}`;
  }
  if (a.slots !== b.slots) return `slots: ${a.slots} and ${b.slots}`;
  for (let i = 0; i < a.slots * SAMPLES; i++) {
    if (a.samples[i] !== b.samples[i]) return `sample ${i}: ${a.samples[i]} and ${b.samples[i]}`;
  }
  return null;
}

const parts = new Map(Object.entries(PLATES).map(([name, plate]) => [name, partOf(plate)]));

function prepared(name: PlateName, faceName: string) {
  const part = parts.get(name);
  if (part === undefined) throw new Error(`no plate ${name}`);
  const face = faceNamed(part, faceName);
  const before = earlier(face);
  const replayed = (marks: readonly MarkFile[]) =>
    replay(face, measured(jobOf(PLATES[name], marks)).parts[0].marks);
  return { face, before, replayed, map: replayed(before) };
}

describe('the brush', () => {
  test.each(SURFACES)(
    'drawn live on %s %s gives what the saved mark replays to, cell for cell',
    (name, faceName) => {
      const { face, before, replayed } = prepared(name, faceName);
      fc.assert(
        fc.property(brushes, pathOf, (brush, path) => {
          const map = replayed(before);
          const inHand = putBrushDown(face, map, brush);
          for (const at of path) inHand.drawTo(pointOn(face, at));
          const mark = inHand.lift();
          const saved: MarkFile[] = mark === null ? [] : [JSON.parse(JSON.stringify(mark))];
          const read = readJobValue(jobOf(PLATES[name], [...before, ...saved]));
          expect('faults' in read ? read.faults : []).toEqual([]);
          expect(firstDifference(map, replayed([...before, ...saved]))).toBeNull();
        }),
        { numRuns: 40 },
      );
    },
    30_000,
  );

  test.each(SURFACES)(
    'abandoned on %s %s leaves the map as it was',
    (name, faceName) => {
      const { face, before, replayed } = prepared(name, faceName);
      const untouched = replayed(before);
      fc.assert(
        fc.property(brushes, pathOf, (brush, path) => {
          const map = replayed(before);
          const inHand = putBrushDown(face, map, brush);
          for (const at of path) inHand.drawTo(pointOn(face, at));
          inHand.abandon();
          expect(firstDifference(map, untouched)).toBeNull();
        }),
        { numRuns: 25 },
      );
    },
    30_000,
  );

  test('after an abandoned stroke the next one is as if there had been none', () => {
    const { face, before, replayed, map } = prepared('round', 'face');
    const brush: BrushSettings = { mode: 'add', radius: 8, depth: 1, edge: 'hard', strength: 0.5 };
    const abandoned = putBrushDown(face, map, brush);
    abandoned.drawTo([70, 0.2]);
    abandoned.drawTo([70, 0.6]);
    abandoned.abandon();
    const next = putBrushDown(face, map, brush);
    next.drawTo([72, 0.4]);
    const mark = next.lift();
    if (mark === null) throw new Error('no mark');
    expect(firstDifference(map, replayed([...before, mark]))).toBeNull();
  });

  const soft: BrushSettings = { mode: 'set', radius: 8, depth: 2, edge: 'soft', strength: 0.5 };
  const held = (brush: BrushSettings, points: readonly FacePoint[]) => {
    const { face, map } = prepared('round', 'face');
    const inHand = putBrushDown(face, map, brush);
    for (const point of points) inHand.drawTo(point);
    return { mark: inHand.lift(), map };
  };

  test('leaves one mark of the kind its mode says', () => {
    const at: FacePoint[] = [[70, toRadians(90)]];
    const common = { face: 'face', path: [[70, 90]], radius: 8 };
    expect(held(soft, at).mark).toEqual({
      ...common,
      kind: 'stroke',
      blend: 'deepest',
      depth: 2,
      edge: 'soft',
    });
    expect(held({ ...soft, mode: 'add' }, at).mark).toEqual({
      ...common,
      kind: 'stroke',
      blend: 'add',
      depth: 2,
      edge: 'soft',
    });
    expect(held({ ...soft, mode: 'clear', edge: 'hard' }, at).mark).toEqual({
      ...common,
      kind: 'stroke',
      edge: 'hard',
      clear: true,
    });
    expect(held({ ...soft, mode: 'smooth' }, at).mark).toEqual({ ...common, kind: 'smooth', strength: 0.5 });
  });

  test('keeps points an eighth of its radius apart, and the last one', () => {
    const line = Array.from({ length: 101 }, (_, i): FacePoint => [60 + i * 0.2, 0]);
    const { mark } = held(soft, line);
    if (mark?.kind !== 'stroke') throw new Error('no stroke');
    expect(mark.path[0]).toEqual([60, 0]);
    expect(mark.path.at(-1)).toEqual([80, 0]);
    const steps = mark.path.slice(1).map(([radius], i) => radius - mark.path[i][0]);
    expect(Math.min(...steps.slice(0, -1))).toBeGreaterThanOrEqual(1 - 1e-9);
    expect(mark.path.length).toBeLessThanOrEqual(22);
  });

  test('writes points to 0.01 mm and 0.001 deg, in [0, 360)', () => {
    const { mark } = held(soft, [
      [70.123456, -0.0000001],
      [75.987654, toRadians(359.9996)],
    ]);
    expect(mark).toMatchObject({
      path: [
        [70.12, 0],
        [75.99, 0],
      ],
    });
  });

  test('leaves no mark where it never met the face', () => {
    expect(held(soft, [[180, 0]]).mark).toBeNull();
  });

  test('tells what it touched, and all of it when abandoned', () => {
    const { face, map } = prepared('round', 'face');
    const blocks: number[] = [];
    const inHand = putBrushDown(face, map, soft, (block) =>
      blocks.push((block.row1 - block.row0 + 1) * block.columns),
    );
    inHand.drawTo([70, 1]);
    const cells = map.depth.length;
    expect(blocks.length).toBe(1);
    expect(blocks[0]).toBeLessThan(cells / 20);
    inHand.abandon();
    expect(blocks.at(-1)).toBe(cells);
  });
});
