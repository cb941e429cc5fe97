import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { splitOnto } from '../../../geometry/balance/split.ts';
import { sumOf } from '../../../geometry/balance/vector.ts';
import { TURN, toRadians } from '../../../geometry/units.ts';

const split = (amount: number, t: number, a: number, b: number) =>
  splitOnto({ amount, angle: toRadians(t) }, toRadians(a), toRadians(b));

// M_a = M sin(b - t) / sin(b - a), M_b = M sin(t - a) / sin(b - a): derived; the first row also stands on a trade page.
describe('one vector on two directions', () => {
  test.each([
    [15, 40, 0, 60, 5.92396, 11.1334],
    [600, 100, 72, 144, 438.244, 296.179],
    [600, 72, 72, 144, 600, 0],
    [600, 108, 72, 144, 370.82, 370.82],
    [500, 350, 288, 360, 91.2922, 464.193],
  ])('%f at %f deg onto %f and %f deg: %f and %f', (amount, t, a, b, wantedA, wantedB) => {
    const shares = split(amount, t, a, b);
    expect(shares?.[0]).toBeCloseTo(wantedA, 3);
    expect(shares?.[1]).toBeCloseTo(wantedB, 3);
  });

  test('half a turn apart or more, or not on either side, there is no answer', () => {
    expect(split(100, 90, 0, 180)).toBeNull();
    expect(split(100, 90, 0, 200)).toBeNull();
    expect(split(100, 90, 100, 160)).toBeNull();
  });

  test('the two add up to the one, whichever way round', () => {
    const angle = fc.double({ min: 0, max: TURN, noNaN: true });
    const gap = fc.double({ min: 0.05, max: 3, noNaN: true });
    fc.assert(
      fc.property(
        angle,
        gap,
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.boolean(),
        (a, wide, share, swap) => {
          const b = a + wide;
          const vector = { amount: 1000, angle: a + share * wide };
          const shares = swap ? splitOnto(vector, b, a) : splitOnto(vector, a, b);
          const [first, second] = swap ? [b, a] : [a, b];
          const sum = sumOf([
            { amount: shares?.[0] ?? 0, angle: first },
            { amount: shares?.[1] ?? 0, angle: second },
          ]);
          expect(sumOf([sum, { amount: -1000, angle: vector.angle }]).amount).toBeLessThan(1e-8);
        },
      ),
    );
  });
});
