import type { Putty } from '../job/job.ts';
import type { VaneShape } from '../part/vane-shape.ts';
import { type Density, type Mm, type Rad, TURN, toRadians } from '../units.ts';
import {
  ANGLE_STEP,
  type Attempt,
  DRILL_STEP,
  downToStep,
  inGramMm,
  inMm,
  type Plan,
  POCKET_MINUTES,
  type Task,
  toStep,
} from './attempt.ts';
import { depthOfSector, type Sector, sector, sectorMass } from './metal-off.ts';
import type { ShroudRoom } from './shroud-room.ts';
import { splitOnto } from './split.ts';
import { leastOver, type Spot } from './spots.ts';
import { plansTogether } from './vane-split.ts';
import { heading, opposite, sumOf, type Vector } from './vector.ts';

/** Of epoxy putty filled with steel, g/mm3. From memory: data sheets of its kind show 2.3 to 2.8 g/cm3. To be replaced with the person's own. */
const METAL_PUTTY: Density = 2.5e-3;

/** A pad takes no more of the passage than this share of the vane's height. From memory: nobody wants it in the flow. */
const HIGHEST = 0.25;
const LOWEST: Mm = 1;
/** Kept off the rim and off the vanes, mm, so that the pad has an edge to feather. */
const OFF_EDGE: Mm = 5;
const OFF_VANE: Mm = 3;
const WIDTHS = [0.1, 0.15, 0.2, 0.3];
const HALF_ANGLES: readonly Rad[] = [5, 7.5, 10, 12.5, 15, 20, 25, 30].map(toRadians);
/** How far to either side of the light line a pad is looked for when a vane stands on it. */
const FURTHEST: Rad = toRadians(60);

/**
 * A pad of metal-filled putty on the vane side of the shroud, on the light side between two vanes; where a vane stands in the way, two
 * pads on either side of it.
 */
export function lightSidePutty(task: Task, vanes: readonly VaneShape[]): Attempt {
  const { target, aim, room } = task;
  const light = toStep(heading(target.angle + Math.PI), ANGLE_STEP);
  let best: Plan | null = null;
  let nearest: Plan | null = null;
  for (const width of WIDTHS) {
    const outer = Math.floor(room.outer - OFF_EDGE);
    const inner = Math.round(outer - width * room.outer);
    if (inner <= room.inner) continue;
    const most = HIGHEST * lowestVane(vanes, inner);
    const lines = clearLines(inner, outer, room);
    for (const halfAngle of HALF_ANGLES) {
      const shape: Sector = { inner, outer, halfAngle };
      const plan = isRoomFor(shape, light, lines)
        ? padOf(shape, light, target.amount, most)
        : padsBeside(shape, light, most, target, lines);
      if (plan === null) continue;
      if (sumOf([target, opposite(plan.taken)]).amount > aim) {
        if (nearest === null || plan.taken.amount > nearest.taken.amount) nearest = plan;
      } else if (best === null || isLess(plan, best)) best = plan;
    }
  }
  return best !== null ? { plan: best } : { nearest, reason: reasonOf(task, nearest) };
}

function isLess(a: Plan, b: Plan): boolean {
  return a.minutes < b.minutes || (a.minutes === b.minutes && a.added < b.added);
}

/** Height of the lowest vane outside a circle, mm. */
function lowestVane(vanes: readonly VaneShape[], inner: Mm): Mm {
  const heights = vanes.flatMap((vane) =>
    [0, 0.25, 0.5, 0.75, 1].flatMap((share) => {
      const { x, y } = vane.camber(share * vane.length);
      return Math.hypot(x, y) >= inner || share === 1 ? [vane.height(share * vane.length)] : [];
    }),
  );
  return heights.length === 0 ? 0 : Math.min(...heights);
}

function spotOf({ inner, outer, halfAngle }: Sector, angle: Rad): Extract<Spot, { kind: 'sector' }> {
  return { kind: 'sector', inner, outer, from: angle - halfAngle, to: angle + halfAngle };
}

/** Whether the way from `inner` to `outer` is clear of vanes and pads, for every angle step of the turn. */
function clearLines(inner: Mm, outer: Mm, room: ShroudRoom): readonly boolean[] {
  const angles = Array.from({ length: Math.round(TURN / ANGLE_STEP) }, (_, i) => i * ANGLE_STEP);
  return angles.map((angle) => {
    const line: Spot = {
      kind: 'sector',
      inner: inner - OFF_VANE,
      outer: outer + OFF_VANE,
      from: angle,
      to: angle,
    };
    return leastOver(line, (radius, at) => (room.isClear(radius, at) ? 1 : 0)) > 0;
  });
}

function isRoomFor({ inner, halfAngle }: Sector, angle: Rad, lines: readonly boolean[]): boolean {
  const reach = Math.ceil((halfAngle + OFF_VANE / inner) / ANGLE_STEP);
  const middle = Math.round(angle / ANGLE_STEP);
  for (let off = -reach; off <= reach; off++) {
    if (!lines[(((middle + off) % lines.length) + lines.length) % lines.length]) return false;
  }
  return true;
}

/** A pad in one direction that pulls as much as wanted, or as much as its height allows; null when it would be too thin. */
function padOf(shape: Sector, angle: Rad, wanted: number, most: Mm): Plan | null {
  const height = Math.min(
    toStep(depthOfSector(wanted, METAL_PUTTY, shape), DRILL_STEP),
    downToStep(most, DRILL_STEP),
  );
  if (height < LOWEST) return null;
  const spot = spotOf(shape, angle);
  const from = heading(spot.from);
  const putty: Putty = {
    kind: 'putty',
    face: 'shroud/front',
    first: [shape.inner, shape.outer],
    second: [from, from + 2 * shape.halfAngle],
    height,
    density: METAL_PUTTY,
  };
  return {
    corrections: [putty],
    // Put on the light side it takes out the heavy one.
    taken: opposite({ amount: sector(METAL_PUTTY, shape, height), angle }),
    removed: 0,
    added: sectorMass(METAL_PUTTY, shape, height),
    minutes: POCKET_MINUTES,
    leaves: null,
    spots: [spot],
  };
}

/** Two pads, the nearest room on either side of the light line. */
function padsBeside(
  shape: Sector,
  light: Rad,
  most: Mm,
  target: Vector,
  lines: readonly boolean[],
): Plan | null {
  const before = nearestRoom(shape, light, -ANGLE_STEP, lines);
  const after = nearestRoom(shape, light, ANGLE_STEP, lines);
  if (before === null || after === null) return null;
  const wanted: Vector = { amount: target.amount, angle: light };
  const shares = splitOnto(wanted, before, after);
  if (shares === null) return null;
  const a = padOf(shape, before, shares[0], most);
  const b = padOf(shape, after, shares[1], most);
  return a === null || b === null ? null : plansTogether([a, b]);
}

function nearestRoom(shape: Sector, light: Rad, step: Rad, lines: readonly boolean[]): Rad | null {
  for (let off = step; Math.abs(off) <= FURTHEST; off += step) {
    if (isRoomFor(shape, light + off, lines)) return heading(light + off);
  }
  return null;
}

function reasonOf({ target }: Task, nearest: Plan | null): string {
  if (nearest === null)
    return `no pad of ${inMm(LOWEST)} or more finds room between two vanes on the light side`;
  return `the most that pads of a quarter of the vane's height can put there is ${inGramMm(nearest.taken.amount)}, of ${inGramMm(target.amount)}`;
}
