import type { BlindHoles } from '../job/job.ts';
import type { GramMm, Mm } from '../units.ts';
import {
  type Attempt,
  DRILL_STEP,
  DRILLS,
  downToStep,
  GRAMS_A_MINUTE,
  HOLE_MINUTES,
  inGramMm,
  inMm,
  MOST_HOLES,
  type Plan,
  type Task,
  toStep,
  webOf,
} from './attempt.ts';
import { type HoleRow, holeRows } from './hole-row.ts';
import { axialHole, depthOfAxialHole } from './metal-off.ts';
import type { ShroudRoom } from './shroud-room.ts';
import { leastOver, type Spot } from './spots.ts';
import { opposite, sumOf, turnBetween } from './vector.ts';

/** Shallower than this a drill has not bitten to its full diameter, mm. */
const LEAST_DEPTH: Mm = 0.5;
/** Circles tried from the rim inward, each a drill and its web further in. */
const CIRCLES = 3;

/**
 * Blind holes in the back of the shroud on the heavy side: the fewest and smallest that do it, spread evenly over an arc, clear of the
 * rim, of worn places and of each other, and no deeper than the wall that must stay.
 * @param mostHoles  in one row
 */
export function backHoles(task: Task, mostHoles = MOST_HOLES): Attempt {
  const { target, aim, room, density } = task;
  let best: Plan | null = null;
  let nearest: Plan | null = null;
  for (const row of rowsOf(task, mostHoles)) {
    const pull = row.together * axialHole(density, row.drill / 2, 1, row.circle);
    const wanted = toStep(
      depthOfAxialHole(target.amount / row.together, density, row.drill / 2, row.circle),
      DRILL_STEP,
    );
    if (wanted < LEAST_DEPTH) continue;
    const quick = minutesOf(row, wanted, task);
    // What can't beat the best is not looked at, nor what can't come nearer.
    if (best !== null && quick >= best.minutes) continue;
    const most = room.thickness - room.leave;
    if (best !== null && wanted > most) continue;
    if (nearest !== null && pull * Math.min(wanted, most) <= nearest.taken.amount) continue;
    const allowed = depthOf(row, room);
    const depth = Math.min(wanted, downToStep(allowed, DRILL_STEP));
    if (depth < LEAST_DEPTH) continue;
    const plan = planOf(row, depth, allowed, task);
    const left = sumOf([target, opposite(plan.taken)]).amount;
    if (left <= aim) best = plan;
    else if (best === null && (nearest === null || plan.taken.amount > nearest.taken.amount)) nearest = plan;
  }
  return best !== null ? { plan: best } : { nearest, reason: reasonOf(task, nearest) };
}

function rowsOf({ target, room }: Task, mostHoles: number): HoleRow[] {
  return DRILLS.flatMap((drill) =>
    Array.from({ length: CIRCLES }, (_, i) =>
      Math.floor(room.outer - drill / 2 - webOf(drill) - i * (drill + webOf(drill))),
    )
      .filter((circle) => circle - drill / 2 - webOf(drill) >= room.inner)
      .flatMap((circle) => holeRows(target.angle, drill, circle, mostHoles)),
  );
}

/** How deep all holes of a row may go, mm: sound metal over the web about each, and wall enough under where the drill may wander. */
function depthOf({ drill, circle, angles }: HoleRow, room: ShroudRoom): Mm {
  let allowed = Infinity;
  for (const angle of angles) {
    const disc = (reach: Mm): Spot => ({ kind: 'disc', radius: circle, angle, reach });
    const isSound = leastOver(disc(drill / 2 + webOf(drill)), (r, at) => (room.isSound(r, at) ? 1 : 0)) > 0;
    if (!isSound) return 0;
    allowed = Math.min(allowed, leastOver(disc(drill / 2 + WANDER), room.depthOnBack));
    if (allowed <= 0) return 0;
  }
  return allowed;
}

/** How far off its mark a hole drilled by hand may come, mm. From memory. */
const WANDER: Mm = 1;

function minutesOf(row: HoleRow, depth: Mm, { density }: Task): number {
  return row.angles.length * HOLE_MINUTES + massOf(row, depth, density) / GRAMS_A_MINUTE;
}

function massOf({ drill, angles }: HoleRow, depth: Mm, density: number): number {
  return angles.length * density * Math.PI * (drill / 2) ** 2 * depth;
}

function planOf(row: HoleRow, depth: Mm, allowed: Mm, task: Task): Plan {
  const { room, density } = task;
  const { drill, circle, angles } = row;
  const each: GramMm = axialHole(density, drill / 2, depth, circle);
  const holes: BlindHoles = {
    kind: 'holes',
    face: 'shroud/back',
    at: angles.map((angle) => [circle, angle]),
    radius: drill / 2,
    depth,
  };
  return {
    corrections: [holes],
    taken: sumOf(angles.map((angle) => ({ amount: each, angle }))),
    removed: massOf(row, depth, density),
    added: 0,
    minutes: minutesOf(row, depth, task),
    leaves: room.leave + allowed - depth,
    spots: angles.map((angle) => ({
      kind: 'disc',
      radius: circle,
      angle,
      reach: drill / 2 + webOf(drill),
    })),
  };
}

function reasonOf({ target, room, aim }: Task, nearest: Plan | null): string {
  const spare = room.thickness - room.leave;
  if (spare < LEAST_DEPTH)
    return `the shroud, ${inMm(room.thickness)} thick as new, has no metal to spare over the ${inMm(room.leave)} that must stay`;
  if (nearest === null)
    return 'the back is worn on the heavy side, or the vane side under it, so that no hole finds sound metal there';
  const aside = Math.abs(turnBetween(target.angle, nearest.taken.angle));
  if (nearest.taken.amount > target.amount - aim && aside > 0)
    return `no row of holes comes within ${inGramMm(aim)} of the ${inGramMm(target.amount)} to take out`;
  return `the most that holes can take there is ${inGramMm(nearest.taken.amount)}, of ${inGramMm(target.amount)}`;
}
