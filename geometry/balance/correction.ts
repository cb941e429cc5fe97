import type { Correction } from '../job/job.ts';
import type { VaneShape } from '../part/vane-shape.ts';
import type { Density, Fraction, Gram, GramMm, Minute, Mm, Rad } from '../units.ts';
import type { Attempt, Plan, Task } from './attempt.ts';
import { backHoles } from './back-holes.ts';
import { lightSidePutty } from './light-side-putty.ts';
import { tipDepth } from './metal-off.ts';
import { rimHoles } from './rim-holes.ts';
import { type ShroudRoom, withSpots } from './shroud-room.ts';
import { skimSector } from './skim-sector.ts';
import { splitOnto } from './split.ts';
import { isUnder, vanesBeside } from './vane-angle.ts';
import { plansTogether, vaneSplit } from './vane-split.ts';
import { opposite, sumOf, type Vector } from './vector.ts';

/** The ways of bringing a rotor inside, see the files of these names; `together` is two of them one after the other. */
export type Way = 'back-holes' | 'rim-holes' | 'skim' | 'vane-split' | 'putty' | 'together';

export interface Proposal {
  readonly way: Way;
  /** To be taken into the job as they stand. */
  readonly corrections: readonly Correction[];
  /** Where each correction is, in the same order. */
  readonly places: readonly CorrectionPlace[];
  readonly removed: Gram;
  readonly added: Gram;
  /** What is left by the closed formulas; once taken it is integrated. */
  readonly residual: Vector;
  /** Least wall left under it, mm; null where it goes into no wall. */
  readonly leaves: Mm | null;
  /** Hands-on time, order of size only: the list is in this order. */
  readonly minutes: Minute;
}

export interface CorrectionPlace {
  /** Middle of it about the shaft. */
  readonly angle: Rad;
  readonly radius: Mm;
  /** The vanes it lies between there, by number, counter-clockwise; null with fewer than 2 vanes. */
  readonly between: readonly [number, number] | null;
  /** The vane whose root stands over it, by number; null when it is clear of them all. */
  readonly behind: number | null;
  /** How far a usual twist drill's tip goes for the same metal, mm; null where none of it is drilled or the wall does not allow it. */
  readonly tip: Mm | null;
}

export interface Ways {
  /** Least work first; empty when nothing needs doing or nothing does it. */
  readonly proposals: readonly Proposal[];
  /** Why the other ways don't do. */
  readonly impossible: readonly { readonly way: Way; readonly reason: string }[];
  /** Without a shroud: what to take off two vanes at the rim by hand; null when there is one, or no two vanes to do it on. */
  readonly atVanes: readonly VaneWeight[] | null;
}

/** Metal to take off a vane at its outer end. */
export interface VaneWeight {
  readonly vane: number;
  readonly mass: Gram;
  readonly radius: Mm;
}

/**
 * Corrections are to leave no more than this share of the limit: a hole a millimetre off its mark, or a mix a few per cent heavier than
 * its data sheet says, must not put the rotor out again.
 */
export const AIM: Fraction = 0.5;

export interface Heavy {
  /** What is to be taken out, g.mm, its angle the heavy side. */
  readonly net: Vector;
  readonly limit: GramMm;
  readonly metalDensity: Density;
  readonly vanes: readonly VaneShape[];
  /** null without a shroud. */
  readonly room: ShroudRoom | null;
  readonly outerRadius: Mm;
}

/** Ways to bring the net vector well inside the limit, least work first, and why the others don't do. Plans one plane: the couple is not aimed at. */
export function waysInside(heavy: Heavy): Ways {
  const { net, limit, metalDensity, vanes, room } = heavy;
  if (room === null) return withoutShroud(heavy);
  const task: Task = { target: net, aim: AIM * limit, room, density: metalDensity };
  const attempts: readonly (readonly [Way, Attempt])[] = [
    ['back-holes', backHoles(task)],
    ['rim-holes', rimHoles(task)],
    ['skim', skimSector(task)],
    ['vane-split', vaneSplit(task, vanes)],
    ['putty', lightSidePutty(task, vanes)],
  ];
  const done = attempts.flatMap(([way, attempt]) =>
    'plan' in attempt ? [proposalOf(way, attempt.plan, task, vanes)] : [],
  );
  const impossible = attempts.flatMap(([way, attempt]) =>
    'plan' in attempt ? [] : [{ way, reason: attempt.reason }],
  );
  const two = done.length > 0 ? null : twoTogether(attempts, task, vanes);
  const proposals = two === null ? done : [proposalOf('together', two, task, vanes)];
  return { proposals: proposals.toSorted((a, b) => a.minutes - b.minutes), impossible, atVanes: null };
}

/** When no way does it alone: as much as one takes off the back, and the rest from the rim or with putty; the two with the least work. */
function twoTogether(
  attempts: readonly (readonly [Way, Attempt])[],
  task: Task,
  vanes: readonly VaneShape[],
): Plan | null {
  const firsts = attempts.flatMap(([way, attempt]) =>
    (way === 'back-holes' || way === 'skim') && 'nearest' in attempt && attempt.nearest !== null
      ? [attempt.nearest]
      : [],
  );
  const pairs = firsts.flatMap((first) => {
    const rest: Task = {
      ...task,
      target: sumOf([task.target, opposite(first.taken)]),
      room: withSpots(task.room, first.spots),
    };
    return [rimHoles(rest), lightSidePutty(rest, vanes)].flatMap((attempt) =>
      'plan' in attempt ? [plansTogether([first, attempt.plan])] : [],
    );
  });
  return pairs.toSorted((a, b) => a.minutes - b.minutes)[0] ?? null;
}

function proposalOf(way: Way, plan: Plan, { target, room }: Task, vanes: readonly VaneShape[]): Proposal {
  const { corrections, removed, added, leaves, minutes } = plan;
  return {
    way,
    corrections,
    places: corrections.map((correction) => placeOf(correction, room, leaves, vanes)),
    removed,
    added,
    residual: sumOf([target, opposite(plan.taken)]),
    leaves,
    minutes,
  };
}

function placeOf(
  correction: Correction,
  room: ShroudRoom,
  leaves: Mm | null,
  vanes: readonly VaneShape[],
): CorrectionPlace {
  const { angle, radius } = middleOf(correction, room.outer);
  const beside = vanesBeside(vanes, radius, angle);
  return {
    angle,
    radius,
    between: beside === null ? null : [beside[0].vane, beside[1].vane],
    behind: vanes.find((vane) => isUnder(vane, radius, angle))?.number ?? null,
    tip: tipOf(correction, room, leaves),
  };
}

function middleOf(correction: Correction, rim: Mm): { readonly angle: Rad; readonly radius: Mm } {
  if (correction.kind === 'holes') {
    const { face, at } = correction;
    const onRim = face === 'shroud/rim';
    const { angle } = sumOf(at.map((point) => ({ amount: 1, angle: point[onRim ? 0 : 1] })));
    return { angle, radius: onRim ? rim : at[0][0] };
  }
  const { first, second } = correction;
  return {
    angle: sumOf(second.map((angle) => ({ amount: 1, angle }))).angle,
    radius: (first[0] + first[1]) / 2,
  };
}

/** The tip leaves less wall than the flat bottom, so it is only named where that is enough too; from the rim there is room ahead. */
function tipOf(correction: Correction, room: ShroudRoom, leaves: Mm | null): Mm | null {
  if (correction.kind !== 'holes') return null;
  const { face, radius, depth } = correction;
  const tip = tipDepth(2 * radius, depth);
  if (tip === null || face === 'shroud/rim') return tip;
  return leaves !== null && leaves - (tip - depth) >= room.leave ? tip : null;
}

/** Hub and vanes only: no place for a hole or a pad; the vector goes onto the two vanes beside it. */
function withoutShroud({ net, vanes, outerRadius }: Heavy): Ways {
  const reason = 'there is no shroud to take metal off or to build on';
  const beside = vanesBeside(vanes, outerRadius, net.angle);
  const shares = beside && splitOnto(net, beside[0].angle, beside[1].angle);
  return {
    proposals: [],
    impossible: (['back-holes', 'rim-holes', 'skim', 'vane-split', 'putty'] as const).map((way) => ({
      way,
      reason,
    })),
    atVanes:
      beside &&
      shares &&
      beside.map(({ vane }, i) => ({ vane, mass: shares[i] / outerRadius, radius: outerRadius })),
  };
}
