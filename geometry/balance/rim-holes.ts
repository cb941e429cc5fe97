import type { BlindHoles } from '../job/job.ts';
import type { Mm, Rad } from '../units.ts';
import {
  type Attempt,
  DRILL_STEP,
  DRILLS,
  downToStep,
  GRAMS_A_MINUTE,
  inGramMm,
  inMm,
  MOST_HOLES,
  type Plan,
  RIM_HOLE_MINUTES,
  type Task,
  toStep,
  webOf,
} from './attempt.ts';
import { type HoleRow, holeRows } from './hole-row.ts';
import { depthOfRadialHole, radialHole } from './metal-off.ts';
import type { ShroudRoom } from './shroud-room.ts';
import { leastOver, type Spot } from './spots.ts';
import { opposite, sumOf } from './vector.ts';

/** Metal on either side of a hole from the rim: a quarter of the drill and no less than this, mm. Common practice. */
const LEAST_SIDE: Mm = 2;
const sideOf = (drill: Mm): Mm => Math.max(LEAST_SIDE, drill / 4);
/** A blind hole is drilled in one go to three diameters. Common practice. */
const DIAMETERS_DEEP = 3;
const LEAST_DEPTH: Mm = 1;

/**
 * Blind holes from the rim of the shroud inward on the heavy side, in the middle of the wall as worn: metal stays on both sides of each,
 * and the two together are no less than the wall that must stay.
 */
export function rimHoles(task: Task): Attempt {
  const { target, aim, room, density } = task;
  let best: Plan | null = null;
  let nearest: Plan | null = null;
  for (const drill of DRILLS) {
    if (drill > widestDrill(room, drill)) continue;
    const deepest = Math.min(DIAMETERS_DEEP * drill, (room.outer - room.inner) / 2);
    for (const row of holeRows(target.angle, drill, room.outer, MOST_HOLES, room.outer - deepest)) {
      const needed = depthOfRadialHole(target.amount / row.together, density, drill / 2, room.outer);
      const wanted = toStep(needed ?? Infinity, DRILL_STEP);
      if (wanted < LEAST_DEPTH || (best !== null && wanted > deepest)) continue;
      const depth = Math.min(wanted, downToStep(deepest, DRILL_STEP));
      const wall = wallAround(row, depth, room);
      if (wall === null || drill > wall.thickness - Math.max(2 * sideOf(drill), room.leave)) continue;
      const plan = planOf(row, depth, wall, task);
      if (sumOf([target, opposite(plan.taken)]).amount > aim) {
        if (nearest === null || plan.taken.amount > nearest.taken.amount) nearest = plan;
      } else if (best === null || plan.minutes < best.minutes) best = plan;
    }
  }
  return best !== null ? { plan: best } : { nearest, reason: reasonOf(task, nearest) };
}

/** Of the shroud as new. */
function widestDrill({ thickness, leave }: ShroudRoom, drill: Mm): Mm {
  return thickness - Math.max(2 * sideOf(drill), leave);
}

interface RimWall {
  /** What is left of the shroud at its thinnest about the holes, mm. */
  readonly thickness: Mm;
  /** Its middle, mm below the vane side. */
  readonly middle: Mm;
}

/** The wall all holes of a row go into; null where one meets another hole. */
function wallAround({ drill, angles }: HoleRow, depth: Mm, room: ShroudRoom): RimWall | null {
  const half = (drill / 2 + webOf(drill)) / room.outer;
  let front = 0;
  let back = 0;
  for (const angle of angles) {
    const spot: Spot = {
      kind: 'sector',
      inner: room.outer - depth - webOf(drill),
      outer: room.outer,
      from: angle - half,
      to: angle + half,
    };
    const clear = leastOver(spot, (radius, at) => {
      front = Math.max(front, room.wornFront(radius, at));
      back = Math.max(back, room.goneFromBack(radius, at));
      return room.isDrilled(radius, at) ? 0 : 1;
    });
    if (clear === 0) return null;
  }
  return { thickness: room.thickness - front - back, middle: (front + room.thickness - back) / 2 };
}

function planOf(row: HoleRow, depth: Mm, wall: RimWall, { room, density }: Task): Plan {
  const { drill, angles } = row;
  const below = toStep(wall.middle, DRILL_STEP);
  const at = angles.map((angle): readonly [Rad, Mm] => [angle, below]);
  const holes: BlindHoles = { kind: 'holes', face: 'shroud/rim', at, radius: drill / 2, depth };
  const each = radialHole(density, drill / 2, depth, room.outer);
  const removed = angles.length * density * Math.PI * (drill / 2) ** 2 * depth;
  const half = (drill / 2 + webOf(drill)) / room.outer;
  return {
    corrections: [holes],
    taken: sumOf(angles.map((angle) => ({ amount: each, angle }))),
    removed,
    added: 0,
    minutes: angles.length * RIM_HOLE_MINUTES + removed / GRAMS_A_MINUTE,
    leaves: null,
    spots: angles.map((angle) => ({
      kind: 'sector',
      inner: room.outer - depth - webOf(drill),
      outer: room.outer,
      from: angle - half,
      to: angle + half,
    })),
  };
}

function reasonOf({ target, room }: Task, nearest: Plan | null): string {
  const [smallest] = DRILLS;
  if (smallest > widestDrill(room, smallest)) {
    const needs = smallest + Math.max(2 * sideOf(smallest), room.leave);
    return `the rim is ${inMm(room.thickness)} thick, and the smallest drill of ${inMm(smallest)} needs ${inMm(needs)}`;
  }
  if (nearest === null) return 'the rim is worn too thin on the heavy side, or drilled there already';
  return `the most that holes in the rim can take there is ${inGramMm(nearest.taken.amount)}, of ${inGramMm(target.amount)}`;
}
