/** Gauge readings of a face, judged: what covariance they speak for, the surface between them, and how well each fits the others. */
import type { Readings } from '../job/job.ts';
import type { Face } from '../part/face.ts';
import type { Fraction, Mm } from '../units.ts';
import { type Candidate, candidates } from './kriging/choose-covariance.ts';
import { type Kriging, krige, type Progress } from './kriging/kriging.ts';
import { type LeftOut, leaveEachOut } from './kriging/leave-one-out.ts';
import { type ReadSurface, readSurface } from './read-surface.ts';
import { type PlacedReadings, placedReadings } from './reading-places.ts';

export interface Survey {
  readonly placed: PlacedReadings;
  /** From the covariance the readings speak for most, or the person's own. */
  readonly kriging: Kriging;
  /** Covariances that may hold as well, each with its share; the first is that of `kriging`. For what is not known of the covariance itself. */
  readonly others: readonly Candidate[];
  readonly surface: ReadSurface;
  /** null for so many readings that leaving each out takes too long, and for a single one. */
  readonly leftOut: readonly LeftOut[] | null;
}

/** Beyond these the covariance is known well enough, and solving anew for each other one takes too long. */
const MOST_JUDGED = 300;
/** Leaving each out costs the cube of their number. */
const MOST_LEFT_OUT = 500;
/** Covariances with less than this share of the belief change nothing that is shown. */
const LEAST_BELIEF: Fraction = 0.02;
const MOST_OTHERS = 12;

/** What the readings of a mark say of a face; null when none of them lies on it. */
export function survey(face: Face, mark: Readings, onProgress: Progress = () => {}): Survey | null {
  const placed = placedReadings(face, mark);
  const count = placed.at.length;
  if (count === 0) return null;
  onProgress(0);
  const all = candidates(placed.observed, reachOf(face), mark.covariance);
  onProgress(0.3);
  const kriging = krige(placed.observed, all[0].covariance);
  onProgress(0.6);
  return {
    placed,
    kriging,
    others: count > MOST_JUDGED ? [all[0]] : byLength(all),
    surface: readSurface(face, kriging, placed.at, (share) => onProgress(0.6 + 0.4 * share)),
    leftOut: count < 2 || count > MOST_LEFT_OUT ? null : leaveEachOut(kriging),
  };
}

/** One for each shape and length, with the mean of its sills: the variance of a volume goes with the sill. */
function byLength(all: readonly [Candidate, ...Candidate[]]): readonly Candidate[] {
  const groups = new Map<string, { belief: number; sill: number; of: Candidate }>();
  for (const of of all) {
    const key = `${of.covariance.shape} ${of.covariance.length}`;
    const { belief, sill } = groups.get(key) ?? { belief: 0, sill: 0 };
    groups.set(key, { belief: belief + of.belief, sill: sill + of.belief * of.covariance.sill, of });
  }
  return [...groups.values()]
    .sort((a, b) => b.belief - a.belief)
    .slice(0, MOST_OTHERS)
    .filter(({ belief }, i) => i === 0 || belief > LEAST_BELIEF)
    .map(({ belief, sill, of }) => ({ covariance: { ...of.covariance, sill: sill / belief }, belief }));
}

/** How far the face reaches in its flat picture, mm. */
function reachOf({ grid, picture }: Face): Mm {
  const height = grid.rows * grid.du;
  if (picture.kind === 'polar') return (2 * (grid.u0 + height)) / picture.slant;
  const width = grid.columns * grid.dv * picture.columnScale;
  // Round a bore nothing is further away than across.
  return grid.wraps ? Math.hypot(width / Math.PI, height) : Math.hypot(width, height);
}
