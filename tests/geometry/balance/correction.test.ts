import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Balance, type BalanceInput, balance } from '../../../geometry/balance/balance.ts';
import type { Proposal } from '../../../geometry/balance/correction.ts';
import { shroudRoom } from '../../../geometry/balance/shroud-room.ts';
import { vaneAngle } from '../../../geometry/balance/vane-angle.ts';
import { sumOf, turnBetween } from '../../../geometry/balance/vector.ts';
import type { Mark } from '../../../geometry/job/job.ts';
import { toDegrees, toRadians } from '../../../geometry/units.ts';
import { evenly, madeImpeller } from '../made.ts';
import { heavyAt, type Made, rotorInput, shroudOf } from './made-rotor.ts';

const taken = (input: BalanceInput, proposal: Proposal): Balance =>
  balance({
    ...input,
    rotor: { ...input.rotor, corrections: [...input.rotor.corrections, ...proposal.corrections] },
  });
const ways = ({ ways: { proposals } }: Balance) => proposals.map(({ way }) => way);
const reason = ({ ways: { impossible } }: Balance, wanted: string) =>
  impossible.find(({ way }) => way === wanted)?.reason ?? '';
const side = (depth: number): Made => ({ marks: [evenly('vane-1/pressure', depth)] });
const thin = (shroudThickness: number, leastThickness: number | null, marks: readonly Mark[]): Made => ({
  shape: madeImpeller({}, { shroudThickness, leastThickness }),
  marks,
});
/** On the heavy side of vane 1's worn pressure face, 113 deg. */
const heavyPatch = (face: string, depth: number): Mark => ({
  kind: 'patch',
  face,
  blend: 'deepest',
  first: [60, 150],
  second: [toRadians(50), toRadians(176)],
  depth: [depth, depth],
});

describe('a proposal taken and integrated', () => {
  const input = rotorInput(side(0.4));
  const found = balance(input);

  test('five ways are found for 1.2 kg.mm on a sound shroud', () => {
    expect(found.verdict).toBe('over');
    expect(ways(found).toSorted()).toEqual(['back-holes', 'putty', 'rim-holes', 'skim', 'vane-split']);
  });

  test('each comes within 2 % of what it predicts, and well inside the limit', () => {
    for (const proposal of found.ways.proposals) {
      const after = taken(input, proposal);
      const miss = sumOf([after.net, { ...proposal.residual, amount: -proposal.residual.amount }]).amount;
      expect(miss, proposal.way).toBeLessThan(0.02 * found.net.amount);
      expect(after.net.amount, proposal.way).toBeLessThanOrEqual(0.52 * found.permissible);
      expect(after.verdict, proposal.way).toBe('within');
      const [off, on] = [after.taken, after.taken].map((list, i) =>
        list.reduce((sum, { mass }) => sum + Math.max(0, i === 0 ? -mass : mass), 0),
      );
      expect(off / (proposal.removed || 1), proposal.way).toBeCloseTo(proposal.removed > 0 ? 1 : 0, 1.5);
      expect(on / (proposal.added || 1), proposal.way).toBeCloseTo(proposal.added > 0 ? 1 : 0, 1.5);
      for (const { leaves } of after.taken)
        if (leaves !== null) expect(leaves).toBeGreaterThanOrEqual(4 - 1e-4);
      expect(after.warnings).toEqual([]);
      expect(after.ways.proposals).toEqual([]);
    }
  });

  test('least work stands first', () => {
    const minutes = found.ways.proposals.map((proposal) => proposal.minutes);
    expect(minutes).toEqual(minutes.toSorted((a, b) => a - b));
  });

  test('metal comes off the heavy side, putty goes onto the light one', () => {
    for (const { way, places } of found.ways.proposals) {
      if (way === 'vane-split') continue;
      const off = Math.abs(
        turnBetween(found.net.angle, sumOf(places.map(({ angle }) => ({ amount: 1, angle }))).angle),
      );
      expect(off, way).toBeCloseTo(way === 'putty' ? Math.PI : 0, 1);
    }
  });
});

test('wherever the heavy spot lies and however heavy it is, what is proposed brings it inside', () => {
  // The residual as found stands for any repair: it needs no worn map.
  const input = rotorInput();
  fc.assert(
    fc.property(
      fc.double({ min: 600, max: 9000, noNaN: true }),
      fc.double({ min: 0, max: 6.28, noNaN: true }),
      (amount, angle) => {
        const heavy = { ...input, rotor: { ...input.rotor, asFound: { amount, angle } } };
        const found = balance(heavy);
        expect(found.verdict).toBe('over');
        expect(found.ways.proposals.length).toBeGreaterThan(0);
        const [first] = found.ways.proposals;
        const after = taken(heavy, first);
        expect(after.verdict).toBe('within');
        expect(after.net.amount).toBeLessThan(0.55 * found.permissible);
        const miss = sumOf([after.net, { ...first.residual, amount: -first.residual.amount }]).amount;
        expect(miss).toBeLessThan(0.02 * amount);
      },
    ),
    { numRuns: 25 },
  );
});

describe('limits', () => {
  test('no metal to spare over the least thickness: only putty is left', () => {
    const found = balance(rotorInput(thin(4, 3.9, [evenly('vane-1/pressure', 0.3)])));
    expect(ways(found)).toEqual(['putty']);
    expect(reason(found, 'back-holes')).toBe(
      'the shroud, 4 mm thick as new, has no metal to spare over the 3.9 mm that must stay',
    );
    expect(reason(found, 'rim-holes')).toBe(
      'the rim is 4 mm thick, and the smallest drill of 4 mm needs 8 mm',
    );
    expect(reason(found, 'skim')).toContain('no metal to spare');
  });

  test('half the shroud stays where the job names no least thickness', () => {
    const found = balance(rotorInput(thin(10, null, [evenly('vane-1/pressure', 1)])));
    const walls = found.ways.proposals.flatMap(({ leaves }) => (leaves === null ? [] : [leaves]));
    expect(walls.length).toBeGreaterThan(0);
    for (const wall of walls) expect(wall).toBeGreaterThanOrEqual(5 - 1e-5);
  });

  test('wear of the vane side counts off the depth, filled or not', () => {
    for (const leaveBelow of [0.1, 5]) {
      const input = rotorInput({ marks: [heavyPatch('shroud/front', 3)], leaveBelow });
      const { proposals } = balance(heavyAt(input, 800, 113)).ways;
      const onBack = proposals.flatMap(({ leaves }) => (leaves === null ? [] : [leaves]));
      expect(onBack.length).toBeGreaterThan(0);
      for (const leaves of onBack) expect(leaves).toBeGreaterThanOrEqual(4 - 1e-5);
      for (const { corrections } of proposals)
        for (const correction of corrections)
          if (correction.kind !== 'putty' && correction.face === 'shroud/back')
            expect(correction.depth).toBeLessThanOrEqual(3 + 1e-5);
    }
  });

  test('where the vane side is worn deep at the root of a vane, the back is not cut under it', () => {
    const depths = (worn: number) => {
      const input = rotorInput({ marks: [heavyPatch('shroud/front', worn)] });
      const room = shroudRoom(shroudOf(input), shroudOf(input).back.map, []);
      const angle = vaneAngle(input.vanes[3], 130);
      expect(toDegrees(angle)).toBeCloseTo(126.6, 0);
      // The vane is 8 mm thick at 27 deg: 9 mm of the circle to either side of its camber, and 3 mm of root another 7.
      return [-0.16, -0.08, -0.03, 0.03, 0.08, 0.16].map((off) => room.depthOnBack(130, angle + off));
    };
    const near = (wanted: number[]) => wanted.map((depth) => expect.closeTo(depth, 5));
    expect(depths(1.2)).toEqual(near([4.8, 0, 6, 6, 0, 4.8]));
    // A tenth of the shroud and less is no thin root.
    expect(depths(0.9)).toEqual(near([5.1, 5.1, 6, 6, 5.1, 5.1]));
  });

  test('a worn back is left alone', () => {
    const input = rotorInput({ marks: [heavyPatch('shroud/back', 0.5)] });
    const there = balance(heavyAt(input, 2500, 113));
    expect(reason(there, 'skim')).toContain('worn on the heavy side');
    expect(reason(there, 'back-holes')).toContain('worn on the heavy side');
    expect(ways(balance(heavyAt(input, 2500, 293)))).toContain('back-holes');
  });

  test('holes stand clear of those drilled before', () => {
    const input = rotorInput({ rotor: { asFound: { amount: 2000, angle: 1 } } });
    const [first] = balance(input).ways.proposals.filter(({ way }) => way === 'back-holes');
    const more = {
      ...input,
      rotor: { ...input.rotor, asFound: { amount: 4000, angle: 1 }, corrections: first.corrections },
    };
    const again = balance(more).ways.proposals.filter(({ way }) => way === 'back-holes');
    expect(again).toHaveLength(1);
    const holes = [...first.corrections, ...again[0].corrections].flatMap((correction) =>
      correction.kind === 'holes'
        ? correction.at.map(([radius, angle]) => ({
            x: radius * Math.cos(angle),
            y: radius * Math.sin(angle),
            r: correction.radius,
          }))
        : [],
    );
    for (const [i, a] of holes.entries())
      for (const b of holes.slice(i + 1))
        expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeGreaterThan(a.r + b.r + 2.5);
    expect(taken(more, again[0]).verdict).toBe('within');
  });

  test('a thin rim takes no drill, a thick one does', () => {
    const marks = [evenly('vane-1/pressure', 0.3)];
    expect(ways(balance(rotorInput(thin(7, 3, marks))))).not.toContain('rim-holes');
    expect(ways(balance(rotorInput(thin(16, 3, marks))))).toContain('rim-holes');
  });

  test('too much for any one way is shared by two', () => {
    const input = rotorInput({ ...thin(6, 4, []), rotor: { asFound: { amount: 19_000, angle: 2 } } });
    const found = balance(input);
    expect(ways(found)).toEqual(['together']);
    const [both] = found.ways.proposals;
    expect(new Set(both.corrections.map(({ kind }) => kind)).size).toBe(2);
    expect(taken(input, both).net.amount).toBeLessThan(0.55 * found.permissible);
    expect(found.ways.impossible.map(({ way }) => way).toSorted()).toEqual([
      'back-holes',
      'putty',
      'rim-holes',
      'skim',
      'vane-split',
    ]);
  });

  test('too much for all of them: every way says why', () => {
    const found = balance(rotorInput({ rotor: { asFound: { amount: 200_000, angle: 2 } } }));
    expect(found.ways.proposals).toEqual([]);
    expect(found.ways.impossible).toHaveLength(5);
    expect(reason(found, 'back-holes')).toMatch(
      /^the most that holes can take there is \d+ g\.mm, of 200000 g\.mm$/,
    );
  });
});

describe('an open impeller', () => {
  const shape = madeImpeller({}, { shroudThickness: 0 });
  test('has no place for a hole or a pad; the vector goes onto the two vanes beside it', () => {
    const found = balance(rotorInput({ shape, rotor: { asFound: { amount: 3000, angle: toRadians(100) } } }));
    expect(found.ways.proposals).toEqual([]);
    expect(reason(found, 'putty')).toBe('there is no shroud to take metal off or to build on');
    const vanes = found.ways.atVanes ?? [];
    expect(vanes).toHaveLength(2);
    // Outer ends stand 105.2568 deg behind the leading edges at 0, 72, .. deg: at 38.74 and 110.74 deg about 100 deg.
    const ends = vanes.map(({ vane }) => toRadians((vane - 1) * 72 - 105.256763));
    const sum = sumOf(vanes.map(({ mass, radius }, i) => ({ amount: mass * radius, angle: ends[i] })));
    expect(sum.amount).toBeCloseTo(3000, 3);
    expect(Math.abs(turnBetween(sum.angle, toRadians(100)))).toBeLessThan(1e-6);
  });

  test('with two vanes half a turn apart there is no such share', () => {
    const two = madeImpeller({ count: 2 }, { shroudThickness: 0 });
    const found = balance(rotorInput({ shape: two, rotor: { asFound: { amount: 3000, angle: 1 } } }));
    expect(found.ways.atVanes).toBeNull();
  });
});

test('within the limit nothing is proposed', () => {
  const found = balance(rotorInput({ rotor: { asFound: { amount: 100, angle: 1 } } }));
  expect(found.verdict).toBe('within');
  expect(found.ways).toEqual({ proposals: [], impossible: [], atVanes: null });
});
