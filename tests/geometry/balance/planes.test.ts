import fc from 'fast-check';
import { expect, test } from 'vitest';
import { atPlanes } from '../../../geometry/balance/planes.ts';
import { sumOf, vectorOf } from '../../../geometry/balance/vector.ts';
import { toDegrees, toRadians } from '../../../geometry/units.ts';

const SPACING = 60;
/** Point unbalances as net vector and couple about the middle plane. */
function summed(points: readonly { amount: number; angle: number; z: number }[]) {
  const sum = (value: (point: (typeof points)[number]) => number) =>
    points.reduce((total, point) => total + value(point), 0);
  const x = ({ amount, angle }: { amount: number; angle: number }) => amount * Math.cos(toRadians(angle));
  const y = ({ amount, angle }: { amount: number; angle: number }) => amount * Math.sin(toRadians(angle));
  return {
    net: vectorOf(sum(x), sum(y)),
    couple: vectorOf(
      sum((point) => x(point) * (point.z - SPACING / 2)),
      sum((point) => y(point) * (point.z - SPACING / 2)),
    ),
  };
}

// Statics: U_A = U (S - z)/S, U_B = U z/S; worked out by other code to the digits given.
test('589.159 g.mm at z = 20 of 60 mm: 392.773 and 196.386 g.mm, couple -5891.59 g.mm2', () => {
  const { net, couple } = summed([{ amount: 589.159, angle: 0, z: 20 }]);
  expect(couple.amount).toBeCloseTo(5891.59, 2);
  expect(toDegrees(couple.angle)).toBeCloseTo(180, 9);
  const [a, b] = atPlanes(net, couple, SPACING);
  expect(a.amount).toBeCloseTo(392.773, 3);
  expect(b.amount).toBeCloseTo(196.386, 3);
});

test('400 at 30 deg, z = 10 and 250 at 190 deg, z = 50: 294.524 at 32.7734 and 147.461 at 181.105 deg', () => {
  const { net, couple } = summed([
    { amount: 400, angle: 30, z: 10 },
    { amount: 250, angle: 190, z: 50 },
  ]);
  expect(net.amount).toBeCloseTo(185.907, 3);
  expect(toDegrees(net.angle)).toBeCloseTo(57.3829, 4);
  const [a, b] = atPlanes(net, couple, SPACING);
  expect(a.amount).toBeCloseTo(294.524, 3);
  expect(toDegrees(a.angle)).toBeCloseTo(32.7734, 4);
  expect(b.amount).toBeCloseTo(147.461, 3);
  expect(toDegrees(b.angle)).toBeCloseTo(181.105, 3);
});

test('the two planes add up to the whole', () => {
  const vector = fc.record({
    amount: fc.double({ min: 0, max: 1e4, noNaN: true }),
    angle: fc.double({ min: 0, max: 6.28, noNaN: true }),
  });
  fc.assert(
    fc.property(vector, vector, fc.double({ min: 1, max: 500, noNaN: true }), (net, couple, spacing) => {
      const both = sumOf(atPlanes(net, couple, spacing));
      expect(both.amount).toBeCloseTo(net.amount, 6);
    }),
  );
});
