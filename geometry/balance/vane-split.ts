import type { VaneShape } from '../part/vane-shape.ts';
import type { Attempt, Plan, Task } from './attempt.ts';
import { inGramMm } from './attempt.ts';
import { backHoles } from './back-holes.ts';
import { withSpots } from './shroud-room.ts';
import { splitOnto } from './split.ts';
import { vanesBeside } from './vane-angle.ts';
import { opposite, sumOf } from './vector.ts';

/** Holes behind one vane: more spread out so far that they are no longer behind it. */
const MOST_BEHIND = 4;
/** The circle on which the vanes' directions are taken, as a share of the outer radius: about where the holes stand. */
const CIRCLE = 0.9;

/**
 * The same by holes at two places, behind the vanes on either side of the heavy line: for when a hole cannot stand on the line itself.
 * Takes more metal than one place does.
 */
export function vaneSplit(task: Task, vanes: readonly VaneShape[]): Attempt {
  const { target, aim, room } = task;
  const beside = vanesBeside(vanes, CIRCLE * room.outer, target.angle);
  const shares = beside && splitOnto(target, beside[0].angle, beside[1].angle);
  if (beside === null || shares === null)
    return { nearest: null, reason: 'it takes 3 vanes or more to have one on either side of the heavy line' };
  const plans: Plan[] = [];
  let free = room;
  for (const [i, { vane, angle }] of beside.entries()) {
    // A share this small against the miss allowed needs no hole.
    if (shares[i] < aim / 10) continue;
    const share = { amount: shares[i], angle };
    const attempt = backHoles({ ...task, target: share, aim: aim / 2, room: free }, MOST_BEHIND);
    if (!('plan' in attempt)) {
      const taken = attempt.nearest === null ? 0 : attempt.nearest.taken.amount;
      return {
        nearest: null,
        reason: `behind vane ${vane} holes can take ${inGramMm(taken)}, of ${inGramMm(share.amount)}`,
      };
    }
    plans.push(attempt.plan);
    free = withSpots(free, attempt.plan.spots);
  }
  const plan = plansTogether(plans);
  const left = sumOf([target, opposite(plan.taken)]).amount;
  if (left <= aim) return { plan };
  return { nearest: plan, reason: `two places leave ${inGramMm(left)} over` };
}

/** Several plans done one after the other. */
export function plansTogether(plans: readonly Plan[]): Plan {
  const sum = (amount: (plan: Plan) => number): number =>
    plans.reduce((total, plan) => total + amount(plan), 0);
  const walls = plans.flatMap(({ leaves }) => (leaves === null ? [] : [leaves]));
  return {
    corrections: plans.flatMap(({ corrections }) => corrections),
    taken: sumOf(plans.map(({ taken }) => taken)),
    removed: sum(({ removed }) => removed),
    added: sum(({ added }) => added),
    minutes: sum(({ minutes }) => minutes),
    leaves: walls.length === 0 ? null : Math.min(...walls),
    spots: plans.flatMap(({ spots }) => spots),
  };
}
