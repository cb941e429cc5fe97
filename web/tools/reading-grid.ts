/** A grid of places to read, in the order they are walked. */
import type { Coordinate, Face } from '../../geometry/part/face.ts';
import { toGridPoint } from '../../geometry/part/face.ts';
import type { FacePoint, Mm } from '../../geometry/units.ts';
import { ownPoint, roundAngle, roundLength } from './file-point.ts';

/** Steps along one of a face's two coordinates, in the file's units. Of an angle only `from` counts: the steps share out the whole turn. */
export interface GridSteps {
  readonly from: number;
  readonly to: number;
  readonly count: number;
}

export interface ReadingGrid {
  readonly first: GridSteps;
  readonly second: GridSteps;
  /** Which coordinate stays while the other is walked to and fro: `first` goes ring by ring, `second` spoke by spoke. */
  readonly keep: 'first' | 'second';
}

/** More places than this nobody walks. */
export const MOST_PLACES = 2000;

/**
 * The places of a grid as a snake, each line back the other way, without those in a hole or off the face.
 * @returns points as the job file spells them
 */
export function gridPlaces(face: Face, grid: ReadingGrid): readonly FacePoint[] {
  const [first, second] = face.coordinates.map((coordinate, i) =>
    stepsOf(coordinate, i === 0 ? grid.first : grid.second),
  );
  const keepsFirst = grid.keep === 'first';
  const [lines, along] = keepsFirst ? [first, second] : [second, first];
  const places = lines.flatMap((kept, line) => {
    const walked = line % 2 === 0 ? along : [...along].reverse();
    return walked.map((step): FacePoint => (keepsFirst ? [kept, step] : [step, kept]));
  });
  return places.filter((place) => face.holds(...toGridPoint(face, ownPoint(face, place))));
}

/**
 * A grid to begin with: clear of the edges by a tenth of the face, as close as a patient hand reads.
 * @param step  what its ends are rounded to, mm
 */
export function usualGrid(face: Face, step: Mm): ReadingGrid {
  const [first, second] = face.coordinates.map((coordinate) => usualSteps(coordinate, step));
  return { first, second, keep: face.coordinates[0].isAngle ? 'second' : 'first' };
}

const USUAL_ROUND = 12;
const USUAL_ACROSS = 5;

function usualSteps({ isAngle, from, to }: Coordinate, step: Mm): GridSteps {
  if (isAngle) return { from: 0, to: 360, count: USUAL_ROUND };
  const clear = (to - from) / 10;
  const rounded = (size: Mm) => roundLength(Math.round(size / step) * step);
  return { from: rounded(from + clear), to: rounded(to - clear), count: USUAL_ACROSS };
}

function stepsOf({ isAngle }: Coordinate, { from, to, count }: GridSteps): readonly number[] {
  const numbers = Array.from({ length: count }, (_, i) => i);
  if (isAngle) return numbers.map((i) => turned(from + (360 * i) / count));
  return numbers.map((i) => roundLength(count === 1 ? from : from + ((to - from) * i) / (count - 1)));
}

/** Degrees in [0, 360). */
const turned = (degrees: number): number => roundAngle(((degrees % 360) + 360) % 360) % 360;
