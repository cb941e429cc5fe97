import { describe, expect, test } from 'vitest';
import { createDepthMap, type DepthMap, SAMPLES } from '../../../geometry/depth/depth-map.ts';
import { replay } from '../../../geometry/depth/replay.ts';
import { beginStroke, endStroke, extendStroke } from '../../../geometry/depth/stroke.ts';
import type { Stroke } from '../../../geometry/job/job.ts';
import { lostMetal } from '../../../geometry/moments/integrate.ts';
import type { FacePoint } from '../../../geometry/units.ts';
import { faceOf, patch, polar } from '../made.ts';

const face = faceOf('face', { holes: [] });
const from = (x: number, y: number): FacePoint => [Math.hypot(x, y), Math.atan2(y, x)];

const STROKE: Stroke = {
  kind: 'stroke',
  face: 'face',
  blend: 'deepest',
  path: [from(70, 40), from(70 + 64, 40 + 48)],
  radius: 10,
  depth: 2,
  edge: 'hard',
  clear: false,
};

describe('a straight stroke of 80 mm, radius 10, depth 2', () => {
  // hard d (2 R L + pi R^2) = 3828.31853, soft (16/15) d R L + pi R^2 d / 3 = 1916.10618: closed forms.
  // The stroke's end reaches past the rim of a 320 plate, so the plate here is larger.
  const wide = faceOf('face', { holes: [], outerRadius: 200 });
  test('hard is 3828.31853 mm3', () => {
    expect(Math.abs(lostMetal(wide, replay(wide, [STROKE])).volume / 3828.31853 - 1)).toBeLessThan(1e-3);
  });
  test('soft is 1916.10618 mm3', () => {
    expect(
      Math.abs(lostMetal(wide, replay(wide, [{ ...STROKE, edge: 'soft' }])).volume / 1916.10618 - 1),
    ).toBeLessThan(1e-3);
  });
  test('the same path in many small pieces is the same stroke', () => {
    const pieces = Array.from({ length: 41 }, (_, k) => from(70 + (64 * k) / 40, 40 + (48 * k) / 40));
    const whole = lostMetal(wide, replay(wide, [STROKE])).volume;
    expect(lostMetal(wide, replay(wide, [{ ...STROKE, path: pieces }])).volume / whole).toBeCloseTo(1, 5);
  });
  test('a soft stroke is as deep as it says', () => {
    const map = replay(wide, [{ ...STROKE, edge: 'soft', path: [from(83.11, 40.07)] }]);
    expect(Math.max(...map.samples.subarray(0, map.slots * SAMPLES))).toBeCloseTo(2, 6);
  });
});

test('going over a place twice in one stroke changes nothing', () => {
  const back = { ...STROKE, blend: 'add' as const, path: [...STROKE.path, STROKE.path[0]] };
  const once = replay(face, [{ ...STROKE, blend: 'add' }]);
  expect(lostMetal(face, replay(face, [back])).volume).toBeCloseTo(lostMetal(face, once).volume, 3);
});

test('a stroke that clears leaves no wear where it passed', () => {
  const worn = patch([80, 150], [0, 90], 3);
  const map = replay(face, [worn, { ...STROKE, path: [polar(110, 45)], clear: true }]);
  const before = lostMetal(face, replay(face, [worn])).volume;
  // pi R^2 x 3 mm is wiped: closed form.
  expect((before - lostMetal(face, map).volume) / (Math.PI * 100 * 3)).toBeCloseTo(1, 3);
});

test('drawing over a bolt hole leaves the hole without wear', () => {
  const holed = faceOf('face');
  const stroke: Stroke = { ...STROKE, path: [polar(145, -8), polar(145, 8)], radius: 14 };
  const without = lostMetal(face, replay(face, [stroke])).volume;
  // The whole 14 mm hole lies under the brush: pi 7^2 x 2 mm less.
  expect((without - lostMetal(holed, replay(holed, [stroke])).volume) / (Math.PI * 49 * 2)).toBeCloseTo(1, 2);
});

test('two strokes in hand one after the other leave what two replayed strokes leave', () => {
  const second: Stroke = {
    ...STROKE,
    edge: 'soft',
    blend: 'add',
    path: [polar(100, 10), polar(120, 60)],
    depth: 1,
  };
  const live = createDepthMap(face.grid);
  for (const stroke of [STROKE, second]) {
    const inHand = beginStroke(live, face, stroke);
    for (const point of stroke.path) extendStroke(inHand, point);
    endStroke(inHand);
  }
  expectSame(live, replay(face, [STROKE, second]));
});

function expectSame(a: DepthMap, b: DepthMap): void {
  expect(Buffer.compare(Buffer.from(a.depth.buffer), Buffer.from(b.depth.buffer))).toBe(0);
  expect(a.slots).toBe(b.slots);
}
