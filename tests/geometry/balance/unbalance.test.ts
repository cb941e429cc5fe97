import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { unbalance } from '../../../geometry/balance/unbalance.ts';
import { weighed } from '../../../geometry/balance/weighed.ts';
import type { Metal } from '../../../geometry/part/metal.ts';
import { TURN, toDegrees, toRadians } from '../../../geometry/units.ts';

const NONE: Metal = { volume: 0, x: 0, y: 0, z: 0, xz: 0, yz: 0 };
/** So much metal in a spot. */
function spot(volume: number, radius: number, degrees: number, z = 0): Metal {
  const [x, y] = [radius * Math.cos(toRadians(degrees)), radius * Math.sin(toRadians(degrees))];
  return { volume, x: volume * x, y: volume * y, z: volume * z, xz: volume * x * z, yz: volume * y * z };
}
const carried = {
  filled: NONE,
  lost: NONE,
  left: NONE,
  fillerDensity: 2.3e-3,
  metalDensity: 7.2e-3,
  coatDensity: 1.7e-3,
  corrections: [],
  asFound: { amount: 0, angle: 0 },
  couplePlane: 0,
};

describe('added, missing and net', () => {
  // 2 mm off the pressure side of one vane and filled flush: volume and first moment by a brute-force polygon, to the digits given.
  const side = spot(12436.173, 1_187_010.9 / 12436.173, 293.11116);
  const found = unbalance({ ...carried, filled: side, lost: side });
  test('the filler makes 2730.13 g.mm at 293.111 deg', () => {
    expect(found.added.amount).toBeCloseTo(2730.13, 2);
    expect(toDegrees(found.added.angle)).toBeCloseTo(293.111, 3);
  });
  test('8546.48 g.mm are missing there, which the shaft feels as heavy on the far side', () => {
    expect(found.missing.amount).toBeCloseTo(7.2e-3 * 1_187_010.9, 6);
    expect(toDegrees(found.missing.angle)).toBeCloseTo(113.111, 3);
  });
  test('net 5816.35 g.mm at 113.111 deg: filled flush it is still light', () => {
    expect(found.net.amount).toBeCloseTo(5816.35, 2);
    expect(toDegrees(found.net.angle)).toBeCloseTo(113.111, 3);
    expect(found.uncorrected).toEqual(found.net);
  });
  test('1 mm off the tip and filled: net 740.036 g.mm', () => {
    const tip = spot(1616.58, 151_027.8 / 1616.58, 292.0906);
    expect(unbalance({ ...carried, filled: tip, lost: tip }).net.amount).toBeCloseTo(740.036, 3);
  });
});

test('coat in wear that is left, corrections and the residual as found each add their part', () => {
  const { net, uncorrected, corrections } = unbalance({
    ...carried,
    left: spot(1000, 100, 0),
    corrections: [weighed(spot(100, 50, 90), -7.2e-3)],
    asFound: { amount: 30, angle: Math.PI },
  });
  expect(uncorrected.amount).toBeCloseTo(1.7e-3 * 1000 * 100 - 30, 9);
  expect(corrections).toEqual({ amount: expect.closeTo(36, 9), angle: expect.closeTo(1.5 * Math.PI, 9) });
  expect(net.amount).toBeCloseTo(Math.hypot(140, 36), 9);
});

test('the couple is taken about its plane: 589.159 g.mm at z = 20, plane at 30 mm: 5891.59 g.mm2 the other way', () => {
  const { couple } = unbalance({ ...carried, filled: spot(1000, 256.156, 0, 20), couplePlane: 30 });
  expect(couple.amount).toBeCloseTo(5891.59, 2);
  expect(toDegrees(couple.angle)).toBeCloseTo(180, 9);
});

test('turning everything turns every vector by as much and leaves the amounts', () => {
  const piece = fc.tuple(
    fc.double({ min: 1, max: 1e4, noNaN: true }),
    fc.double({ min: 1, max: 200, noNaN: true }),
    fc.double({ min: 0, max: 360, noNaN: true }),
    fc.double({ min: -20, max: 40, noNaN: true }),
  );
  fc.assert(
    fc.property(piece, piece, piece, fc.double({ min: 0, max: 360, noNaN: true }), (a, b, c, turn) => {
      const at = (by: number) => {
        const turned = ([volume, radius, degrees, z]: typeof a) => spot(volume, radius, degrees + by, z);
        return unbalance({
          ...carried,
          filled: turned(a),
          lost: turned(b),
          left: turned(c),
          asFound: { amount: 50, angle: toRadians(10 + by) },
          couplePlane: 15,
        });
      };
      const [before, after] = [at(0), at(turn)];
      for (const name of ['added', 'missing', 'net', 'couple'] as const) {
        const size = before[name].amount;
        expect(after[name].amount).toBeCloseTo(size, 6);
        // Where next to nothing is left its direction means nothing.
        if (size < 1) continue;
        const turned = (after[name].angle - before[name].angle - toRadians(turn)) / TURN;
        expect(turned - Math.round(turned)).toBeCloseTo(0, 7);
      }
    }),
  );
});
