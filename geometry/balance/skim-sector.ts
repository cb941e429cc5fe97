import type { Skim } from '../job/job.ts';
import { type Mm, type Rad, toRadians } from '../units.ts';
import {
  ANGLE_STEP,
  type Attempt,
  downToStep,
  GRAMS_A_MINUTE,
  inGramMm,
  inMm,
  type Plan,
  SKIM_MINUTES,
  SKIM_STEP,
  type Task,
  toStep,
} from './attempt.ts';
import { depthOfSector, type Sector, sector, sectorMass } from './metal-off.ts';
import { leastOver, type Spot } from './spots.ts';
import { heading, opposite, sumOf } from './vector.ts';

/** Thinner than this nobody takes off a casting evenly, mm. */
const LEAST_DEPTH: Mm = 0.2;
/** Deeper than this share of the shroud it is no skim but a pocket, and its edge drags. From memory: common practice. */
const DEEPEST = 0.25;
/** Width of the ring as a share of the outer radius, and half the angle it spans: what lies further off pulls little. */
const WIDTHS = [0.1, 0.15, 0.2, 0.3, 0.4];
const HALF_ANGLES: readonly Rad[] = [10, 15, 20, 25, 30, 40, 50, 60].map(toRadians);

/** A sector of the back of the shroud skimmed evenly on the heavy side, out to the rim, with the least metal. */
export function skimSector(task: Task): Attempt {
  const { target, aim, room, density } = task;
  let best: Plan | null = null;
  let nearest: Plan | null = null;
  for (const width of WIDTHS) {
    const inner = Math.round(room.outer * (1 - width));
    if (inner <= room.inner) continue;
    for (const halfAngle of HALF_ANGLES) {
      const shape: Sector = { inner, outer: room.outer, halfAngle };
      const middle = toStep(target.angle, ANGLE_STEP);
      const spot: Spot = {
        kind: 'sector',
        inner,
        outer: room.outer,
        from: middle - halfAngle,
        to: middle + halfAngle,
      };
      const wanted = toStep(depthOfSector(target.amount, density, shape), SKIM_STEP);
      if (wanted < LEAST_DEPTH) continue;
      const allowed = leastOver(spot, room.depthOnBack);
      const depth = Math.min(wanted, downToStep(Math.min(allowed, DEEPEST * room.thickness), SKIM_STEP));
      if (depth < LEAST_DEPTH) continue;
      const plan = planOf(shape, spot, middle, depth, allowed, task);
      if (sumOf([target, opposite(plan.taken)]).amount > aim) {
        if (nearest === null || plan.taken.amount > nearest.taken.amount) nearest = plan;
      } else if (best === null || plan.minutes < best.minutes) best = plan;
    }
  }
  return best !== null ? { plan: best } : { nearest, reason: reasonOf(task, nearest) };
}

function planOf(
  shape: Sector,
  spot: Extract<Spot, { kind: 'sector' }>,
  middle: Rad,
  depth: Mm,
  allowed: Mm,
  { room, density }: Task,
): Plan {
  const { inner, outer } = spot;
  const from = heading(spot.from);
  const second = [from, from + spot.to - spot.from] as const;
  const skim: Skim = { kind: 'skim', face: 'shroud/back', first: [inner, outer], second, depth };
  const removed = sectorMass(density, shape, depth);
  return {
    corrections: [skim],
    taken: sumOf([{ amount: sector(density, shape, depth), angle: middle }]),
    removed,
    added: 0,
    minutes: SKIM_MINUTES + removed / GRAMS_A_MINUTE,
    leaves: room.leave + allowed - depth,
    spots: [spot],
  };
}

function reasonOf({ target, room }: Task, nearest: Plan | null): string {
  const spare = room.thickness - room.leave;
  if (spare < LEAST_DEPTH)
    return `the shroud, ${inMm(room.thickness)} thick as new, has no metal to spare over the ${inMm(room.leave)} that must stay`;
  if (nearest === null)
    return `the back or the vane side is worn on the heavy side, or less than ${inMm(LEAST_DEPTH)} would do`;
  return `the most a skim can take there is ${inGramMm(nearest.taken.amount)}, of ${inGramMm(target.amount)}`;
}
