import type { Correction, Rotor } from '../job/job.ts';
import type { Warning } from '../job/warning.ts';
import type { Metal } from '../part/metal.ts';
import type { VaneShape } from '../part/vane-shape.ts';
import type { Density, Fraction, Gram, GramMm, Mm } from '../units.ts';
import { chanceOver } from './chance-over.ts';
import { type Corrected, corrected } from './corrected.ts';
import { type Ways, waysInside } from './correction.ts';
import { forceAt, shareOfWeight } from './force.ts';
import { permissible, sharedPermissible } from './permissible.ts';
import { atPlanes } from './planes.ts';
import { type Shroud, wallToLeave } from './shroud.ts';
import { shroudRoom } from './shroud-room.ts';
import { type Unbalance, unbalance } from './unbalance.ts';
import { type Vector, vectorOf } from './vector.ts';
import { type Verdict, verdictOf } from './verdict.ts';

export interface BalanceInput {
  readonly rotor: Rotor;
  /** Of the whole rotor, as weighed or estimated from the solid, g. */
  readonly mass: Gram;
  readonly isMassEstimated: boolean;
  /** z of the middle of the body, mm: where its mass centre is taken to lie. */
  readonly middle: Mm;
  readonly outerRadius: Mm;
  /** Of the part, corners counted once. */
  readonly lost: Metal;
  readonly filled: Metal;
  readonly left: Metal;
  readonly metalDensity: Density;
  /** Of the mixes. */
  readonly fillerDensity: Density;
  readonly coatDensity: Density;
  /** One standard deviation of the net vector from gauge error and sampling, in its worst direction, g.mm; 0 when nothing was read. */
  readonly readError: GramMm;
  /** In the order of their numbers; none on a part without vanes. */
  readonly vanes: readonly VaneShape[];
  /** null on a part without a shroud behind vanes: corrections then have no place to go, and are not taken. */
  readonly shroud: Omit<Shroud, 'vanes'> | null;
}

export interface Balance extends Unbalance {
  readonly asFound: Vector;
  readonly permissible: GramMm;
  /** mm. */
  readonly permissibleEccentricity: Mm;
  /** Of the net vector at speed, N. */
  readonly force: number;
  readonly weightShare: Fraction;
  /** Net over permissible. */
  readonly ratio: number;
  /** Of each component of the net vector, g.mm. */
  readonly standardError: GramMm;
  readonly chanceOver: Fraction;
  readonly verdict: Verdict;
  readonly mass: Gram;
  readonly isMassEstimated: boolean;
  /** What the net vector and its couple come to in the planes A and B; null with one plane. */
  readonly planes: readonly [PlaneShare, PlaneShare] | null;
  /** What the filler weighs against the metal it replaces. */
  readonly fillerShare: Fraction;
  readonly taken: readonly TakenCorrection[];
  readonly ways: Ways;
  readonly warnings: readonly Warning[];
}

export interface PlaneShare {
  readonly z: Mm;
  readonly unbalance: Vector;
  readonly permissible: GramMm;
}

export interface TakenCorrection {
  readonly correction: Correction;
  /** Put on, or negative taken off, g. */
  readonly mass: Gram;
  /** What it does to the net vector, integrated. */
  readonly effect: Vector;
  /** Least wall left under it, mm; null where it goes into no wall. */
  readonly leaves: Mm | null;
}

/**
 * Whether a repaired rotor will shake, and what to do about it.
 * Source: ISO 21940-11:2016; geometry definitions, "Mass and balance"; tests/geometry/balance/.
 */
export function balance(input: BalanceInput): Balance {
  const { rotor, mass, middle, vanes, metalDensity, fillerDensity } = input;
  const shroud: Shroud | null = input.shroud && { ...input.shroud, vanes };
  const done = shroud && corrected(rotor.corrections, shroud, { metal: metalDensity, filler: fillerDensity });
  const vectors = unbalance({
    ...input,
    corrections: done?.each.map(({ weighed }) => weighed) ?? [],
    asFound: rotor.asFound,
    couplePlane: rotor.planeSpacing === null ? middle : rotor.planeSpacing / 2,
  });
  const { net } = vectors;
  const limit = permissible(rotor.grade, rotor.speed, mass);
  const standardError = standardErrorOf(vectors.added, input);
  const chance = chanceOver(net.amount, limit.unbalance, standardError);
  const verdict = verdictOf(net.amount, limit.unbalance, chance);
  const force = forceAt(net.amount, rotor.speed);
  return {
    ...vectors,
    asFound: rotor.asFound,
    permissible: limit.unbalance,
    permissibleEccentricity: limit.eccentricity,
    force,
    weightShare: shareOfWeight(force, mass),
    ratio: net.amount / limit.unbalance,
    standardError,
    chanceOver: chance,
    verdict,
    mass,
    isMassEstimated: input.isMassEstimated,
    planes: planesOf(vectors, limit.unbalance, input),
    fillerShare: fillerDensity / metalDensity,
    taken: takenOf(done),
    ways:
      verdict === 'within'
        ? { proposals: [], impossible: [], atVanes: null }
        : waysInside({
            net,
            limit: limit.unbalance,
            metalDensity,
            vanes,
            room: shroud && done && shroudRoom(shroud, done.back, rotor.corrections),
            outerRadius: input.outerRadius,
          }),
    warnings: warningsOf(shroud, done, rotor.corrections),
  };
}

/** The mixed density's error pulls along what was added, and is taken alike in every direction: on the safe side. */
function standardErrorOf(added: Vector, { rotor, readError }: BalanceInput): GramMm {
  return Math.hypot(rotor.densityError * added.amount, readError);
}

function planesOf(
  { net, couple }: Unbalance,
  limit: GramMm,
  { rotor, middle }: BalanceInput,
): readonly [PlaneShare, PlaneShare] | null {
  const { planes, planeSpacing } = rotor;
  if (planes === 1 || planeSpacing === null) return null;
  const [a, b] = atPlanes(net, couple, planeSpacing);
  const [mostA, mostB] = sharedPermissible(limit, { planeA: 0, planeB: planeSpacing, massCentre: middle });
  return [
    { z: 0, unbalance: a, permissible: mostA },
    { z: planeSpacing, unbalance: b, permissible: mostB },
  ];
}

function takenOf(done: Corrected | null): TakenCorrection[] {
  return (done?.each ?? []).map(({ correction, weighed, leaves }) => ({
    correction,
    mass: weighed.mass,
    effect: vectorOf(weighed.x, weighed.y),
    leaves,
  }));
}

function warningsOf(
  shroud: Shroud | null,
  done: Corrected | null,
  corrections: readonly Correction[],
): Warning[] {
  if (shroud === null || done === null) {
    if (corrections.length === 0) return [];
    const text = 'The part has no shroud, so the corrections are not counted.';
    return [{ code: 'correction-nowhere', field: 'rotor.corrections', text }];
  }
  const leave = wallToLeave(shroud);
  return done.each.flatMap(({ leaves }, i): Warning[] => {
    if (leaves === null || leaves >= leave - WALL_DUST) return [];
    const asked = shroud.leastThickness === null ? 'half of the wall as new' : 'the least thickness';
    const text = `This leaves ${leaves.toFixed(2)} mm of the shroud, less than ${asked}, ${leave.toFixed(2)} mm. Filler does not count.`;
    return [{ code: 'correction-thin', field: `rotor.corrections[${i}]`, text }];
  });
}

/** Depth maps hold 32 bits: a wall of exactly the least thickness is not thin. mm */
const WALL_DUST: Mm = 1e-3;
