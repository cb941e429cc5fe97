import { beforeAll, describe, expect, test } from 'vitest';
import { type Balance, type BalanceInput, balance } from '../../../geometry/balance/balance.ts';
import { measuredRotor } from '../../../geometry/job/measured-rotor.ts';
import { type BalanceResult, balanceResult } from '../../../geometry/sheet/balance-result.ts';
import { rotorInput } from '../balance/made-rotor.ts';
import { sentences } from '../job/sentences.ts';
import { wholeJob } from '../job/whole-job.ts';
import { evenly } from '../made.ts';

let input: BalanceInput;
let found: Balance;
let result: BalanceResult;
beforeAll(() => {
  input = rotorInput({ marks: [evenly('vane-1/pressure', 0.4)], rotor: { planes: 2, planeSpacing: 60 } });
  found = balance(input);
  result = balanceResult(found);
});

describe('the balance in the units of the file', () => {
  test('vectors in g.mm and degrees, micrometres, newtons, kilograms', () => {
    // 0.4 mm of a side of 30 mm: 2.3 g/cm3 at 293 deg added, net on the far side; the limit of 14.2 kg at 1450 r/min, G 6.3.
    expect(result.added.angle).toBeCloseTo(293.4, 0);
    expect(result.net.angle).toBeCloseTo(113.4, 0);
    expect(result.net.amount).toBe(found.net.amount);
    expect(result.permissible).toBeCloseTo(589.159, 3);
    expect(result.permissibleEccentricity).toBeCloseTo(41.49, 3);
    expect(result.mass).toBe(14.2);
    expect(result.massEstimated).toBe(false);
    expect(result.fillerShare).toBeCloseTo(2.3 / 7.2, 12);
    expect(result.ratio).toBeCloseTo(result.net.amount / result.permissible, 12);
    expect(result.verdict).toBe('over');
  });

  test('both planes with what each is permitted', () => {
    const [a, b] = result.planes ?? [];
    expect([a?.plane, b?.plane]).toEqual(['A', 'B']);
    expect(a.amount + b.amount).toBeCloseTo(result.net.amount, 6);
    expect(a.permissible + b.permissible).toBeCloseTo(result.permissible, 3);
    expect(a.ratio).toBeCloseTo(a.amount / a.permissible, 12);
  });

  test('an angle a hair short of the mark reads 0', () => {
    const { net } = balanceResult({ ...found, net: { amount: 1, angle: 2 * Math.PI - 1e-12 } });
    expect(net.angle).toBe(0);
  });
});

describe('what is proposed', () => {
  test('can be put into the job file as it stands, and comes back the same', () => {
    for (const { corrections, way } of result.correction.proposals) {
      const job = wholeJob();
      // The impeller of these tests: vanes 30 mm high all along.
      Object.assign(job.parts[2].vanes as object, { heightInlet: 30, heightOutlet: 30 });
      job.parts[2].wear = [];
      job.rotor.corrections = corrections;
      expect(sentences(job), way).toEqual([]);
      const taken = measuredRotor({ part: 'impeller', speed: 1450, grade: 6.3, corrections }).corrections;
      const after = balance({ ...input, rotor: { ...input.rotor, corrections: taken } });
      expect(after.verdict, way).toBe('within');
      const residual = result.correction.proposals.find((other) => other.way === way)?.residual.amount ?? 0;
      expect(Math.abs(after.net.amount - residual)).toBeLessThan(0.02 * result.net.amount);
    }
  });

  test('holds no float dust', () => {
    const text = JSON.stringify(result.correction.proposals.map(({ corrections }) => corrections));
    expect(text).not.toMatch(/\d\.\d{7,}/);
    expect(text).toContain('"face":"shroud/back"');
  });

  test('says what is left, how sure, and how', () => {
    for (const proposal of result.correction.proposals) {
      expect(proposal.ratio).toBeLessThanOrEqual(result.correction.aim);
      expect(proposal.verdict).toBe('within');
      expect(proposal.words).toHaveLength(proposal.corrections.length);
      for (const words of proposal.words) expect(words).toMatch(/^(Drill|Skim|Build up) .*deg/);
    }
  });
});

test('what is taken stands with what it does', () => {
  const corrections = [
    { kind: 'holes' as const, face: 'shroud/back' as const, at: [[130, 2] as const], radius: 5, depth: 5 },
  ];
  const { correction } = balanceResult(balance({ ...input, rotor: { ...input.rotor, corrections } }));
  const [hole] = correction.taken;
  // rho pi r^2 h = 2.827 g, and that at 130 mm on the far side of 114.59 deg.
  expect(hole.mass).toBeCloseTo(-2.827, 1);
  expect(hole.effect.amount / (2.827 * 130)).toBeCloseTo(1, 1.5);
  expect(hole.effect.angle).toBeCloseTo(294.59, 0);
  expect(hole.leaves).toBeCloseTo(5, 5);
  expect(hole.correction).toEqual({
    kind: 'holes',
    face: 'shroud/back',
    at: [[130, 114.591559]],
    diameter: 10,
    depth: 5,
  });
});
