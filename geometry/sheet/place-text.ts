import type { Estimate } from '../estimate.ts';
import type { Cover } from '../material/share-out.ts';
import type { Coordinate } from '../part/face.ts';
import type { FacePoint } from '../units.ts';

/** Stretches named before the rest is counted: a mix that goes into thirty pits stays readable. */
const MOST_STRETCHES = 4;

/** A point of a face in words, from the file's units: `radius 118 mm, angle 40 deg`. */
export function placeText({ parts }: Estimate, part: string, face: string, at: FacePoint): string {
  return coordinatesOf(parts, part, face)
    .map(({ label, isAngle }, i) => `${label} ${amount(at[i], isAngle)}`)
    .join(', ');
}

/** Where a mix goes, in words: `plate face: radius 90 to 130 mm, angle 20 to 95 deg`. */
export function stretchesText({ parts, filler }: Estimate, covers: readonly Cover[]): string {
  const named = covers.slice(0, MOST_STRETCHES).map((cover) => {
    const ranges = coordinatesOf(parts, cover.part, cover.face).map(({ label, isAngle }, i) => {
      const [from, to] = i === 0 ? cover.first : cover.second;
      if (isAngle && to - from >= 360) return 'the whole turn';
      return `${label} ${Math.round(from)} to ${amount(to, isAngle)}`;
    });
    const layer = filler.passes > 1 ? `, layer ${cover.pass}` : '';
    return `${cover.part} ${cover.face}: ${ranges.join(', ')}${layer}`;
  });
  const rest = covers.length - named.length;
  return named.join('; ') + (rest > 0 ? `; and ${rest} more` : '');
}

function coordinatesOf(parts: Estimate['parts'], part: string, face: string): readonly Coordinate[] {
  const known = parts.find(({ id }) => id === part)?.faces.find((each) => each.face.name === face);
  if (!known) throw new Error(`coordinatesOf: needs a face of the estimate, got ${part}:${face}`);
  return known.face.coordinates;
}

const amount = (value: number, isAngle: boolean): string => `${Math.round(value)} ${isAngle ? 'deg' : 'mm'}`;
