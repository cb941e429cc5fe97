import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { balance } from '../../../geometry/balance/balance.ts';
import { turnBetween } from '../../../geometry/balance/vector.ts';
import type { Mark } from '../../../geometry/job/job.ts';
import { toDegrees } from '../../../geometry/units.ts';
import { evenly, madeImpeller } from '../made.ts';
import { rotorInput } from './made-rotor.ts';

describe('one vane worn 2 mm on its pressure side and filled flush', () => {
  // Brute-force polygon, to the digits given; permissible by ISO 21940-11, 6.3.3.
  const found = balance(rotorInput({ marks: [evenly('vane-1/pressure', 2)] }));
  test('added 2730.13 g.mm at 293.111, net 5816.35 at 113.111 deg, limit 589.159: over', () => {
    expect(found.added.amount / 2730.13).toBeCloseTo(1, 5);
    expect(toDegrees(found.added.angle)).toBeCloseTo(293.111, 3);
    expect(found.net.amount / 5816.35).toBeCloseTo(1, 5);
    expect(toDegrees(found.net.angle)).toBeCloseTo(113.111, 3);
    expect(found.permissible).toBeCloseTo(589.159, 3);
    expect(found.permissibleEccentricity).toBeCloseTo(0.04149, 6);
    expect(found.ratio).toBeCloseTo(5816.35 / 589.159, 3);
    expect(found.verdict).toBe('over');
  });
  test('the force at speed, and against the weight', () => {
    // F = U w^2: 23.0565 N for each 1000 g.mm at 1450 r/min.
    expect(found.force).toBeCloseTo(5.81635 * 23.0565, 2);
    expect(found.weightShare).toBeCloseTo((5.81635 * 23.0565) / (14.2 * 9.80665), 4);
  });
  test('two per cent of what was added is uncertain', () => {
    expect(found.standardError).toBeCloseTo(0.02 * found.added.amount, 6);
  });
});

// 1 mm off the tip of one vane: 0.8 mm on one tip already uses up the limit.
test('0.19 mm replaced on one pressure side, or 0.8 mm on one tip, is about the limit', () => {
  expect(balance(rotorInput({ marks: [evenly('vane-1/pressure', 0.19)] })).ratio).toBeCloseTo(0.96, 1);
  expect(balance(rotorInput({ marks: [evenly('vane-1/tip', 0.8)] })).ratio).toBeCloseTo(1, 1);
});

test('worn alike on all vanes nothing is out, whatever the count and however filled', () => {
  for (const count of [2, 3, 5, 7]) {
    const shape = madeImpeller({ count, thicknessInlet: 5, thicknessOutlet: 5 });
    const marks = Array.from({ length: count }, (_, i) => evenly(`vane-${i + 1}/pressure`, 1.5));
    const found = balance(rotorInput({ shape, marks, cell: 2 }));
    const one = balance(rotorInput({ shape, marks: marks.slice(0, 1), cell: 2 }));
    expect(found.net.amount, `${count}`).toBeLessThan(1e-6 * one.net.amount);
    expect(found.couple.amount).toBeLessThan(1e-6 * one.couple.amount);
    expect(found.verdict).toBe('within');
  }
});

test('turning the job by an angle turns its vectors by as much', () => {
  const at = (firstAngle: number) =>
    balance(
      rotorInput({
        shape: madeImpeller({ firstAngle }, { leastThickness: 4 }),
        marks: [evenly('vane-2/suction', 0.15), evenly('vane-2/leading-edge', 2)],
        cell: 2,
      }),
    );
  const still = at(0);
  fc.assert(
    fc.property(fc.double({ min: -7, max: 7, noNaN: true }), (turn) => {
      const turned = at(turn);
      for (const name of ['added', 'missing', 'net', 'couple'] as const) {
        expect(turned[name].amount / still[name].amount).toBeCloseTo(1, 9);
        expect(Math.abs(turnBetween(still[name].angle + turn, turned[name].angle))).toBeLessThan(1e-9);
      }
      expect(turned.verdict).toBe(still.verdict);
    }),
    { numRuns: 8 },
  );
});

test('two planes: each with its share of the vector and of the limit', () => {
  const one = rotorInput({ marks: [evenly('vane-1/tip', 0.3)] });
  const found = balance({ ...one, middle: 20, rotor: { ...one.rotor, planes: 2, planeSpacing: 60 } });
  const [a, b] = found.planes ?? [];
  expect([a?.z, b?.z]).toEqual([0, 60]);
  // The tip of a vane 30 mm high lies at z = 29.85 mm: U (S - z)/S and U z/S.
  expect((a?.unbalance.amount ?? 0) / found.net.amount).toBeCloseTo(30.15 / 60, 4);
  expect((b?.unbalance.amount ?? 0) / found.net.amount).toBeCloseTo(29.85 / 60, 4);
  expect(found.couple.amount / found.net.amount).toBeCloseTo(0.15, 3);
  // Lever rule: 40/60 and 20/60 of the limit.
  expect(a?.permissible).toBeCloseTo((2 / 3) * 589.159, 2);
  expect(b?.permissible).toBeCloseTo((1 / 3) * 589.159, 2);
  expect(balance(one).planes).toBeNull();
});

test('without a plane spacing the couple is about the middle of the body', () => {
  const input = rotorInput({ marks: [evenly('vane-1/tip', 0.3)] });
  const { couple, net } = balance({ ...input, middle: 29.85 });
  expect(couple.amount).toBeLessThan(1e-3 * net.amount);
});

test('the error of what was read adds to that of the density as independent errors do', () => {
  const input = rotorInput({ marks: [evenly('vane-1/tip', 0.3)] });
  const { standardError, added } = balance({ ...input, readError: 47 });
  expect(standardError).toBeCloseTo(Math.hypot(0.02 * added.amount, 47), 9);
});

test('just under the limit but not sure of it: check', () => {
  const input = rotorInput({ marks: [evenly('vane-1/pressure', 0.19)] });
  const unsure = balance({ ...input, rotor: { ...input.rotor, densityError: 0.2 } });
  expect(unsure.net.amount).toBeLessThan(unsure.permissible);
  expect(unsure.chanceOver).toBeGreaterThan(0.05);
  expect(unsure.verdict).toBe('check');
  expect(unsure.ways.proposals.length).toBeGreaterThan(0);
  expect(balance({ ...input, rotor: { ...input.rotor, densityError: 0 } })).toMatchObject({
    chanceOver: 0,
    verdict: 'within',
  });
});

describe('corrections that worry', () => {
  const hole = (depth: number) => ({
    kind: 'holes' as const,
    face: 'shroud/back' as const,
    at: [[130, 1] as const],
    radius: 5,
    depth,
  });
  test('a wall left thinner than the least is told, with the field', () => {
    const { warnings } = balance(rotorInput({ rotor: { corrections: [hole(5), hole(7)] } }));
    expect(warnings).toEqual([
      {
        code: 'correction-thin',
        field: 'rotor.corrections[1]',
        text: 'This leaves 3.00 mm of the shroud, less than the least thickness, 4.00 mm. Filler does not count.',
      },
    ]);
  });
  test('on a part without a shroud they are not counted, and that is told', () => {
    const open = madeImpeller({}, { shroudThickness: 0 });
    const found = balance(rotorInput({ shape: open, rotor: { corrections: [hole(3)] } }));
    expect(found.taken).toEqual([]);
    expect(found.corrections.amount).toBe(0);
    expect(found.warnings.map(({ code }) => code)).toEqual(['correction-nowhere']);
  });
});

test('a clockwise impeller mirrors a counter-clockwise one', () => {
  const marks: readonly Mark[] = [evenly('vane-1/pressure', 0.3)];
  const [left, right] = (['counter-clockwise', 'clockwise'] as const).map((rotation) =>
    balance(rotorInput({ shape: madeImpeller({}, { rotation }), marks, cell: 2 })),
  );
  expect(right.net.amount).toBeCloseTo(left.net.amount, 6);
  expect(Math.abs(turnBetween(right.net.angle, -left.net.angle))).toBeLessThan(1e-9);
});
