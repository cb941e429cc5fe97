/** A section in words and figures as the screen shows them. */
import type { PartFile, SectionFile } from '../../../../geometry/job/job-file.ts';
import { isThrough, type SectionProfile } from '../../../../geometry/sheet/section.ts';
import { type FacePoint, type Mm, toDegrees } from '../../../../geometry/units.ts';
import { formatQuantity } from '../../../fields/format-quantity.ts';
import { type Quantity, type ScreenUnits, shownUnit } from '../../../fields/quantity-units.ts';
import { faceLabel } from '../../../view/face-label.ts';
import type { LiveFace } from '../../../wear/live-faces.ts';
import { faceNumbers, numberText, valueText } from '../face-words.ts';
import { layWord } from './lay-words.ts';

/** What it is and where it lies. */
export function sectionSummary(
  section: SectionFile,
  part: PartFile,
  units: ScreenUnits,
): { readonly what: string; readonly where: string } {
  const on = section.face === 'face' ? '' : `, ${faceLabel(section.face)}`;
  const what = `${layWord(part, section.face, section.kind)}${on}`;
  const numbers = faceNumbers(part, section.face);
  if (section.kind === 'line') {
    const ends = [section.from, section.to].map((at) => placeWords(part, section.face, at, units));
    return { what, where: `from ${ends[0]} to ${ends[1]}` };
  }
  const fixed = numbers[section.kind === 'along-first' ? 1 : 0];
  return { what, where: `at ${numberText(fixed, rounded(section.at, fixed.quantity, units), units)}` };
}

/** A place of a face in the file's units, as near as a rule can be laid: `radius 120.4 mm, 58°`. */
function placeWords(part: PartFile, face: string, at: FacePoint, units: ScreenUnits): string {
  return faceNumbers(part, face)
    .map((number, i) => numberText(number, rounded(at[i], number.quantity, units), units))
    .join(', ');
}

/** The same for a place in our units. */
export function ownPlaceWords(
  part: PartFile,
  { face }: LiveFace,
  [first, second]: FacePoint,
  units: ScreenUnits,
): string {
  const [a, b] = face.coordinates;
  const at = [a.isAngle ? toDegrees(first) : first, b.isAngle ? toDegrees(second) : second] as const;
  return placeWords(part, face.name, at, units);
}

/** A depth as a gauge shows it, with its unit. */
export function depthWords(depth: Mm, units: ScreenUnits): string {
  return `${formatQuantity(depth, 'length', units)} ${shownUnit('length', units).symbol}`;
}

/** A distance along the line, to 0.1 mm or 0.01 in. */
export function lengthWords(length: Mm, units: ScreenUnits): string {
  return valueText(rounded(length, 'length', units), 'length', units);
}

/** What will be done under the line, in a sentence or two. */
export function repairWords(profile: SectionProfile, units: ScreenUnits): string {
  const { runs, deepest, film, isFillKnown } = profile;
  if (deepest === null) return 'The line meets no metal of this face.';
  if (deepest.depth <= 0) return 'No wear lies under the line.';
  if (isThrough(deepest)) return 'The wall is worn through here. Filler alone does not replace a wall.';
  if (!isFillKnown) return 'Putty and coat follow as soon as the figures are worked out.';
  const places = runs.flat();
  const most = places.reduce((thickest, { putty }) => Math.max(thickest, putty), 0);
  const filled = stretch(profile, ({ putty }) => putty > 0);
  const left = stretch(profile, ({ isLeft }) => isLeft);
  const words = [
    filled > 0
      ? `Putty on ${lengthWords(filled, units)} of it, up to ${depthWords(most, units)} thick.`
      : 'No putty on it.',
  ];
  if (left > 0) {
    words.push(
      film > 0
        ? `Wear on ${lengthWords(left, units)} of it is left for the coat to fill.`
        : `Wear on ${lengthWords(left, units)} of it is left bare: this face is not coated.`,
    );
  }
  if (film > 0) words.push(`Coat ${depthWords(film, units)} thick over all of it.`);
  return words.join(' ');
}

type Place = SectionProfile['runs'][number][number];

/** How much of the line something holds on. */
function stretch({ runs }: SectionProfile, test: (place: Place) => boolean): Mm {
  let length = 0;
  for (const run of runs) {
    for (let i = 1; i < run.length; i++) {
      if (test(run[i - 1]) && test(run[i])) length += run[i].at - run[i - 1].at;
    }
  }
  return length;
}

/** A tenth of a mm or of a degree, a hundredth of an inch. */
function rounded(value: number, quantity: Quantity, units: ScreenUnits): number {
  const step = quantity === 'length' && units === 'in' ? 0.254 : 0.1;
  return Math.round(value / step) * step;
}
