import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { estimate } from '../../geometry/estimate.ts';
import type { Mark } from '../../geometry/job/job.ts';
import { TURN, toRadians } from '../../geometry/units.ts';
import { job, patch, pit, polar } from './made.ts';

const NO_HOLES = { holes: [] };

describe('a patch through bolt holes', () => {
  test('wear and filler leave the holes out', () => {
    const { parts } = estimate(job([patch([120, 160], [0, 360], 2)]));
    // pi (160^2 - 120^2) - 6 pi 7^2, all holes whole inside the ring: closed form.
    const exact = (Math.PI * (160 ** 2 - 120 ** 2) - 6 * Math.PI * 49) * 2;
    expect(Math.abs(parts[0].filled.volume / exact - 1)).toBeLessThan(1e-3);
  });
});

describe('the thinnest wall', () => {
  test('is the wall less the deepest wear, and warns under the least', () => {
    const { parts, warnings } = estimate(job([pit(100, 50, 10, 9, 'cone')]));
    expect(parts[0].thinnest.face).toBe('face');
    expect(parts[0].thinnest.remaining).toBeCloseTo(9, 4);
    expect(warnings.map((warning) => warning.code)).toContain('wall-thin');
  });
  test('worn through says so and where', () => {
    const { parts, warnings } = estimate(job([pit(100, 50, 10, 18, 'flat')]));
    expect(parts[0].thinnest.remaining).toBe(0);
    expect(Math.abs(parts[0].thinnest.at[0] - 100)).toBeLessThan(5);
    expect(warnings.map((warning) => warning.code)).toContain('worn-through');
  });
});

test('what this version does not work out is a warning, never a guess', () => {
  const { warnings } = estimate({ ...job([]), unsupported: [{ field: 'parts[1]', what: 'the impeller' }] });
  expect(warnings).toContainEqual(expect.objectContaining({ code: 'not-worked-out', field: 'parts[1]' }));
});

test('a sound plate needs no filler, and coat for its faces only', () => {
  const { filler, coat, parts } = estimate(job([]));
  expect(filler.volume).toBe(0);
  expect(filler.batches).toEqual([]);
  // Face less holes plus bore wall: 68 191.4101 + 2 pi 60 x 18.
  expect(coat.area).toBeCloseTo(68191.4101 + TURN * 60 * 18, 3);
  expect(parts[0].regions).toEqual([]);
});

test('the batches cover just the filled stretches', () => {
  const { filler } = estimate(job([patch([90, 130], [20, 95], 3.5), patch([90, 130], [200, 300], 3.5)]));
  const spans = filler.batches.flatMap((batch) => batch.covers.map((cover) => cover.second));
  const covered = spans.reduce((sum, [from, to]) => sum + to - from, 0);
  expect(covered).toBeCloseTo(toRadians(75 + 100), 1);
  for (const batch of filler.batches) {
    for (const cover of batch.covers) {
      expect(cover.first[0]).toBeCloseTo(90, 0);
      expect(cover.first[1]).toBeCloseTo(130, 0);
    }
  }
});

const anyMark: fc.Arbitrary<Mark> = fc.oneof(
  fc
    .record({
      r: fc.double({ min: 65, max: 120, noNaN: true }),
      w: fc.double({ min: 5, max: 30, noNaN: true }),
      a: fc.integer({ min: 0, max: 359 }),
      s: fc.integer({ min: 5, max: 90 }),
      d: fc.double({ min: 0.2, max: 6, noNaN: true }),
    })
    .map(({ r, w, a, s, d }) => patch([r, r + w], [a, a + s], d)),
  fc
    .record({
      r: fc.double({ min: 65, max: 155, noNaN: true }),
      a: fc.integer({ min: 0, max: 359 }),
      d: fc.double({ min: 10, max: 25, noNaN: true }),
      deep: fc.double({ min: 0.2, max: 6, noNaN: true }),
      form: fc.constantFrom('cone' as const, 'bowl' as const, 'flat' as const),
    })
    .map(({ r, a, d, deep, form }) => pit(r, a, d, deep, form)),
  fc
    .record({
      r: fc.double({ min: 70, max: 150, noNaN: true }),
      a: fc.integer({ min: 0, max: 359 }),
      radius: fc.double({ min: 3, max: 20, noNaN: true }),
      deep: fc.double({ min: 0.2, max: 5, noNaN: true }),
      edge: fc.constantFrom('hard' as const, 'soft' as const),
    })
    .map(({ r, a, radius, deep, edge }) => ({
      kind: 'stroke' as const,
      face: 'face',
      blend: 'deepest' as const,
      path: [polar(r, a), polar(r, a + 9)],
      radius,
      depth: deep,
      edge,
      clear: false,
    })),
);

/** Turns a mark about the shaft. */
function turned(mark: Mark, by: number): Mark {
  if (mark.kind === 'patch') return { ...mark, second: [mark.second[0] + by, mark.second[1] + by] };
  if (mark.kind === 'pit') return { ...mark, at: [mark.at[0], mark.at[1] + by] };
  if (mark.kind === 'stroke' || mark.kind === 'smooth')
    return { ...mark, path: mark.path.map(([r, a]) => [r, a + by] as const) };
  if (mark.kind === 'edge') throw new Error('turned: an edge has no angle');
  if (mark.kind === 'readings')
    return { ...mark, points: mark.points.map(({ at: [r, a], depth }) => ({ at: [r, a + by], depth })) };
  return { ...mark, outline: mark.outline.map(([r, a]) => [r, a + by] as const) };
}

describe('properties', () => {
  const marks = fc.array(anyMark, { minLength: 1, maxLength: 5 });
  const lost = (list: readonly Mark[]) => estimate(job(list, NO_HOLES), { cell: 2 }).parts[0].lost;

  test('turning all marks turns the centroid and keeps the volume', () => {
    fc.assert(
      fc.property(marks, fc.double({ min: 0, max: 6.28, noNaN: true }), (list, by) => {
        const a = lost(list);
        const b = lost(list.map((mark) => turned(mark, by)));
        // Edges fall elsewhere between samples after the turn. Measured at 150 places with 2 mm cells: a flat pit 10 mm across is off by
        // 0.7 % at most, one of 3 mm by 5 %; before and after the turn the two can differ by twice that.
        expect(Math.abs(b.volume / a.volume - 1)).toBeLessThan(0.015);
        const [c, s] = [Math.cos(by), Math.sin(by)];
        expect(Math.abs(b.x / b.volume - (c * a.x - s * a.y) / a.volume)).toBeLessThan(0.5);
        expect(Math.abs(b.y / b.volume - (s * a.x + c * a.y) / a.volume)).toBeLessThan(0.5);
      }),
      { numRuns: 25 },
    );
  });
  test('the union of marks is never more than their sum, and never less than the largest', () => {
    fc.assert(
      fc.property(marks, (list) => {
        const each = list.map((mark) => lost([mark]).volume);
        const union = lost(list).volume;
        expect(union).toBeLessThanOrEqual(each.reduce((sum, volume) => sum + volume, 0) * (1 + 1e-6));
        expect(union).toBeGreaterThanOrEqual(Math.max(...each) * (1 - 1e-3));
      }),
      { numRuns: 25 },
    );
  });
  test('deepest marks in any order leave the same metal', () => {
    fc.assert(
      fc.property(marks, (list) => {
        const a = lost(list).volume;
        const b = lost([...list].reverse()).volume;
        // A cell split late starts from its centre's depth: only shapes with a slope differ, by less than a sample.
        expect(Math.abs(b / a - 1)).toBeLessThan(2e-3);
      }),
      { numRuns: 25 },
    );
  });
});
