import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { estimate } from '../../geometry/estimate.ts';
import type { Impeller, Mark, Rotor } from '../../geometry/job/job.ts';
import { TURN, toDegrees, toRadians, wrapTurn } from '../../geometry/units.ts';
import { evenly, job, madeImpeller } from './made.ts';

const ROTOR: Rotor = {
  part: 'impeller',
  mass: 14200,
  speed: 1450,
  grade: 6.3,
  planes: 1,
  planeSpacing: null,
  asFound: { amount: 0, angle: 0 },
  densityError: 0.02,
  corrections: [],
};

const estimated = (shape: Impeller, rotor: Partial<Rotor> = {}, cell: number | null = null) =>
  estimate({ ...job([]), parts: [shape], rotor: { ...ROTOR, ...rotor } }, { cell });

function balanceOf(shape: Impeller, rotor: Partial<Rotor> = {}, cell: number | null = null) {
  const { balance } = estimated(shape, rotor, cell);
  if (balance === null) throw new Error('no balance');
  return balance;
}

describe('2 mm off one pressure side of a vane, filled flush', () => {
  // 65 to 150 mm, 22 to 28 deg, 8 thick, 30 high, metal 7.2, filler 2.3: added 2730.13 g.mm at 293.111 deg, net 5816.35 opposite
  // (closed form of the volume, first moment by an exact polygon).
  const balance = balanceOf(madeImpeller({}, {}, [evenly('vane-1/pressure', 2)]));
  test('the filler makes a heavy spot of 2730.13 g.mm at 293.111 deg', () => {
    expect(balance.added.amount).toBeCloseTo(2730.13, 1);
    expect(toDegrees(balance.added.angle)).toBeCloseTo(293.111, 2);
  });
  test('and yet the vane stays light: net 5816.35 g.mm at 113.111 deg', () => {
    expect(balance.net.amount).toBeCloseTo(5816.35, 1);
    expect(toDegrees(balance.net.angle)).toBeCloseTo(113.111, 2);
  });
  test('permissible by grade 6.3 at 1450 r/min and 14.2 kg: 589.159 g.mm', () => {
    // ISO 21940-11:2016, 6.3.3: 1000 G m / w.
    expect(balance.permissible).toBeCloseTo(589.159, 2);
    expect(balance.verdict).toBe('over');
  });
});

test('1 mm off a tip, filled: net 740.036 g.mm', () => {
  const balance = balanceOf(madeImpeller({}, {}, [evenly('vane-1/tip', 1)]));
  expect(balance.net.amount).toBeCloseTo(740.036, 2);
});

test('vanes worn alike make no static unbalance, whatever their number', () => {
  for (const count of [2, 5, 7]) {
    const marks = ['leading-edge', 'tip', 'pressure'].map((face) => evenly(`vane-*/${face}`, 1.5));
    const balance = balanceOf(madeImpeller({ count, heightOutlet: 22, nose: 'round' }, {}, marks), {}, 1);
    // Against what a single vane would make; what is left is rounding of 32-bit depths and covers.
    expect(balance.net.amount).toBeLessThan(1e-3 * 5816);
    expect(balance.added.amount).toBeLessThan(1e-3 * 2730);
    expect(balance.verdict).toBe('within');
  }
});

test('turning the job turns the vectors by as much', () => {
  const marks: Mark[] = [
    {
      kind: 'edge',
      face: 'vane-2/leading-edge',
      blend: 'deepest',
      profile: [
        [0, 2],
        [15, 5],
        [30, 1],
      ],
    },
    evenly('vane-2/tip', 1.2),
  ];
  fc.assert(
    fc.property(fc.double({ min: 0, max: 359, noNaN: true }), (degrees) => {
      const by = toRadians(degrees);
      const before = balanceOf(madeImpeller({ nose: 'round' }, {}, marks), {}, 1);
      const after = balanceOf(madeImpeller({ nose: 'round', firstAngle: by }, {}, marks), {}, 1);
      for (const of of ['added', 'net', 'couple'] as const) {
        expect(after[of].amount / before[of].amount).toBeCloseTo(1, 6);
        const off = wrapTurn(after[of].angle - before[of].angle - by + TURN / 2) - TURN / 2;
        expect(Math.abs(off)).toBeLessThan(1e-6);
      }
    }),
    { numRuns: 4 },
  );
});

test('what was found before the repair counts in the net vector', () => {
  const marks = [evenly('vane-1/tip', 1)];
  const found = balanceOf(madeImpeller({}, {}, marks), {
    asFound: { amount: 740.036, angle: toRadians(292.0906) },
  });
  // The tip filled is light by 740.036 opposite: the two cancel.
  expect(found.net.amount).toBeLessThan(0.05);
});

describe('a vane worn on several faces', () => {
  test('loses the union, never more than the sum and never less than the most of one', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.2, max: 5, noNaN: true }), { minLength: 5, maxLength: 5 }),
        (depths) => {
          const faces = ['pressure', 'suction', 'tip', 'leading-edge', 'trailing-edge'];
          const marks = faces.map((face, i) => evenly(`vane-1/${face}`, depths[i]));
          const [part] = estimated(madeImpeller({ nose: 'round' }, {}, marks), {}, 1).parts;
          const each = part.faces.map(({ lost }) => lost.volume);
          const sum = each.reduce((total, volume) => total + volume, 0);
          expect(part.lost.volume).toBeLessThan(sum);
          expect(part.lost.volume).toBeGreaterThanOrEqual(Math.max(...each) * (1 - 1e-6));
        },
      ),
      { numRuns: 12 },
    );
  });
  test('2 mm off both sides and a tip down 1 mm: a level vane loses what is left of the box', () => {
    // Sides and tip of a box t x b: 1 - (4/8)(29/30) of b t L, to what the bend of the camber shifts between the sides.
    const marks = [evenly('vane-1/pressure', 2), evenly('vane-1/suction', 2), evenly('vane-1/tip', 1)];
    const [part] = estimated(madeImpeller({}, {}, marks)).parts;
    expect(part.lost.volume / (48497.395 * (1 - (4 / 8) * (29 / 30)))).toBeCloseTo(1, 3);
  });
  test('both sides worn to meet is worn through, and named', () => {
    const marks = [evenly('vane-1/pressure', 4.5), evenly('vane-1/suction', 3.6)];
    const { parts, warnings } = estimated(madeImpeller({}, {}, marks), {}, 1);
    expect(parts[0].thinnest.remaining).toBe(0);
    expect(parts[0].lost.volume / 48497.395).toBeCloseTo(1, 3);
    expect(warnings.map(({ code }) => code)).toContain('worn-through');
    expect(warnings.find(({ code }) => code === 'worn-through')?.text).toContain('vane-1/');
  });
  test('the thinnest wall counts both sides', () => {
    const marks = [evenly('vane-1/pressure', 2.5), evenly('vane-1/suction', 1.5)];
    const { thinnest } = estimated(madeImpeller({}, {}, marks), {}, 1).parts[0];
    expect(thinnest.remaining).toBeCloseTo(4, 5);
    expect(thinnest.face).toMatch(/^vane-1\/(?:pressure|suction)$/);
  });
  test('where an edge is eaten away there is no wall to be thin', () => {
    const marks: Mark[] = [
      {
        kind: 'patch',
        face: 'vane-1/pressure',
        blend: 'deepest',
        first: [0, 10],
        second: [0, 30],
        depth: [7, 7],
      },
      evenly('vane-1/leading-edge', 12),
    ];
    const { thinnest } = estimated(madeImpeller({}, {}, marks), {}, 1).parts[0];
    expect(thinnest.remaining).toBeCloseTo(8, 5);
  });
});
