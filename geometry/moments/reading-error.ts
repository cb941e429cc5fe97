/** How far off the volumes may be that rest on gauge readings, and the reading that would tell most. */
import { krige, varianceAt } from '../depth/kriging/kriging.ts';
import { bearing, type SumsKnown, spread, sumsOver } from '../depth/kriging/weighed-sum.ts';
import { heldBy } from '../depth/outline-picture.ts';
import { placesOf } from '../depth/reading-places.ts';
import type { Survey } from '../depth/survey.ts';
import type { Readings } from '../job/job.ts';
import { type Face, toFacePoint } from '../part/face.ts';
import type { FacePoint, Mm, Mm3 } from '../units.ts';
import { cutOff } from './cut-off.ts';
import { type Densities, type ReadFace, type ReadWeights, readWeights } from './read-weights.ts';

/** One standard deviation of what is made of a mark's readings, from gauge error and from what lies between them. */
export interface ReadingError {
  readonly mark: Readings;
  readonly lost: Mm3;
  readonly filled: Mm3;
  /** Covariance of the net unbalance, (g.mm)2. */
  readonly net: NetCovariance;
  /** null where no place is left to read, or nothing rests on the readings. */
  readonly next: NextReading | null;
}

export interface NetCovariance {
  readonly xx: number;
  readonly xy: number;
  readonly yy: number;
}

/** The place whose reading would take most off the error of the volume. */
export interface NextReading {
  readonly face: string;
  readonly at: FacePoint;
  /** One standard deviation of the depth there as it is known now. */
  readonly error: Mm;
  /** The error of the volume filled (of the volume lost, where nothing is filled) before and after. */
  readonly from: Mm3;
  readonly to: Mm3;
  /** How much the volume is to be expected to move by it, one standard deviation. */
  readonly moves: Mm3;
}

/** Places a surface stands for in the sums: many for a few readings cost more than they tell. */
const MOST_PLACES = 800;

/**
 * @param faces  all faces the mark is on
 * Accuracy: exact for sums over the places of `readWeights`. Which regions are filled is taken as it is, and corners count on each face.
 * Source: geometry definitions, "Mass and balance"; tests/geometry/moments/reading-error.test.ts.
 */
export function readingError(
  mark: Readings,
  survey: Survey,
  faces: readonly ReadFace[],
  densities: Densities,
): ReadingError {
  const weights = readWeights(faces, densities, MOST_PLACES);
  if (weights.places.length === 0) {
    return { mark, lost: 0, filled: 0, net: { xx: 0, xy: 0, yy: 0 }, next: null };
  }
  const asked = weights.filled.some((weight) => weight > 0) ? weights.filled : weights.lost;
  const sums = { places: weights.places, weights: [asked, weights.lost, weights.netX, weights.netY] };
  const best = sumsOver(survey.kriging, sums);
  const known = overCovariances(survey, sums, best);
  // What is cut off at 0 is an error as well, to one side, and no reading nearby takes it away.
  const cut = cutOff(faces, mark, survey.surface);
  const error = (of: number) => Math.hypot(spread(known[of][of]), cut.volume);
  const lighter = densities.filler - densities.metal;
  const [pullX, pullY] = [cut.x * lighter, cut.y * lighter];
  return {
    mark,
    lost: error(1),
    filled: asked === weights.filled ? error(0) : 0,
    net: {
      xx: Math.max(0, known[2][2]) + pullX * pullX,
      xy: known[2][3] + pullX * pullY,
      yy: Math.max(0, known[3][3]) + pullY * pullY,
    },
    next: nextReading(mark, survey, faces[0].face, { ...sums, best, error: error(0) }),
  };
}

/** Covariances of the sums with that of the covariance itself: the mean of each candidate's, and how its means stray from the best's. */
function overCovariances(
  { kriging, others }: Survey,
  sums: Parameters<typeof sumsOver>[1],
  best: SumsKnown,
): readonly (readonly number[])[] {
  if (others.length === 1) return best.covariances;
  const total = others.reduce((sum, { belief }) => sum + belief, 0);
  const known = best.covariances.map((row) => row.map(() => 0));
  for (const { covariance, belief } of others) {
    const one = sumsOver(krige(kriging.observed, covariance), sums);
    const strays = one.means.map((mean, s) => mean - best.means[s]);
    for (const [s, row] of known.entries()) {
      for (let t = 0; t < row.length; t++) {
        row[t] += (belief / total) * (one.covariances[s][t] + strays[s] * strays[t]);
      }
    }
  }
  return known;
}

interface Asked {
  readonly places: ReadWeights['places'];
  readonly weights: readonly Float64Array[];
  readonly best: SumsKnown;
  readonly error: Mm3;
}

/** Places weighed against each other: each costs the square of the readings. */
const MOST_CANDIDATES = 400;
const MANY_READINGS = 500;
const FEW_CANDIDATES = 100;

function nextReading(mark: Readings, { kriging }: Survey, face: Face, asked: Asked): NextReading | null {
  const most = kriging.count > MANY_READINGS ? FEW_CANDIDATES : MOST_CANDIDATES;
  const isWithin = mark.within === null ? () => true : heldBy(face, mark.within);
  const at = candidatePlaces(face, most).filter((place) => isWithin(...place));
  const places = placesOf(face, at);
  const gauge = mark.gaugeError * mark.gaugeError;
  const variance = asked.best.covariances[0][0];
  let greatest = 0;
  let next: NextReading | null = null;
  for (const [i, [u, v]] of at.entries()) {
    const there = varianceAt(kriging, places, i);
    const bears = bearing(kriging, asked, asked.best.solved[0], places, i);
    const share = there + gauge > 0 ? (bears * bears) / (there + gauge) / variance : 0;
    if (!(share > greatest)) continue;
    greatest = share;
    next = {
      face: face.name,
      at: toFacePoint(face, u, v),
      error: Math.sqrt(there),
      from: asked.error,
      to: asked.error * spread(1 - share),
      moves: asked.error * Math.sqrt(Math.min(1, share)),
    };
  }
  return next;
}

/** Evenly spread places on the metal of a face. */
function candidatePlaces(face: Face, most: number): readonly (readonly [u: number, v: number])[] {
  const { grid, picture } = face;
  const height = grid.rows * grid.du;
  const width =
    grid.columns * grid.dv * (picture.kind === 'polar' ? grid.u0 + height / 2 : picture.columnScale);
  const step = Math.sqrt((height * width) / most);
  const [down, along] = [Math.max(1, Math.round(height / step)), Math.max(1, Math.round(width / step))];
  const places: [number, number][] = [];
  for (let i = 0; i < down; i++) {
    for (let j = 0; j < along; j++) {
      const u = grid.u0 + ((i + 0.5) / down) * height;
      const v = grid.v0 + ((j + 0.5) / along) * grid.columns * grid.dv;
      if (face.holds(u, v)) places.push([u, v]);
    }
  }
  return places;
}
