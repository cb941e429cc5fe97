import type { JobFile } from '../../../geometry/job/job-file.ts';
import { counted } from '../../../geometry/sheet/figure.ts';
import type { BatchResult, FillerResult } from '../../../geometry/sheet/result.ts';
import type { ScreenUnits } from '../../fields/quantity-units.ts';
import { faceLabel } from '../../view/face-label.ts';
import { sentenceCase } from '../sentence-case.ts';
import { type FaceNumber, faceNumbers, valueText } from '../wear/face-words.ts';

type Cover = BatchResult['covers'][number];

/** Lines at most: a mix that goes into thirty pits stays readable. */
const MOST_LINES = 4;

/** Where a mix goes, in lines: `Face, radius 83 to 158 mm, 0 to 155°`; where they are many, counted face by face. */
export function coverLines(
  { parts }: JobFile,
  covers: readonly Cover[],
  units: ScreenUnits,
): readonly string[] {
  const lineOf = (alike: readonly Cover[]): string => {
    const { part: id, face, first, second } = alike[0];
    const part = parts.find((known) => known.id === id);
    const name = sentenceCase(parts.length > 1 ? `${id}, ${faceLabel(face)}` : faceLabel(face));
    if (part === undefined || alike.length > 1) return `${name}, ${alike.length} places`;
    const [a, b] = faceNumbers(part, face);
    return `${name}, ${rangeText(a, first, units)}, ${rangeText(b, second, units)}`;
  };
  const groups = covers.length > MOST_LINES ? byFace(covers) : covers.map((cover) => [cover]);
  const lines = groups.slice(0, MOST_LINES - (groups.length > MOST_LINES ? 1 : 0)).map(lineOf);
  const rest = groups.slice(lines.length).flat().length;
  return rest > 0 ? [...lines, `and ${counted(rest, 'place', 'places')} more`] : lines;
}

/** In the order the faces come. */
function byFace(covers: readonly Cover[]): readonly (readonly Cover[])[] {
  const groups = new Map<string, Cover[]>();
  for (const cover of covers) {
    const at = `${cover.part}:${cover.face}`;
    groups.set(at, [...(groups.get(at) ?? []), cover]);
  }
  return [...groups.values()];
}

/** To the whole mm (or 0.05 in) and degree. */
function rangeText(
  { label, quantity }: FaceNumber,
  [from, to]: readonly [number, number],
  units: ScreenUnits,
): string {
  if (quantity === 'angle' && to - from >= 360) return 'all round';
  const step = quantity === 'length' && units === 'in' ? 25.4 / 20 : 1;
  const text = (value: number) => valueText(Math.round(value / step) * step, quantity, units);
  const name = quantity === 'angle' ? '' : `${label} `;
  return `${name}${text(from).replace(/ ?[^\d.]+$/, '')} to ${text(to)}`;
}

/** Which layers a mix goes into, where the putty is built up in several: `layer 1 of 2`; '' where it is not. */
export function layersText({ covers }: BatchResult, { batches, passes }: FillerResult): string {
  if (!batches.some((batch) => batch.covers.some(({ pass }) => pass > 1))) return '';
  const own = [...new Set(covers.map(({ pass }) => pass))].sort((a, b) => a - b);
  if (own.length === 0) return '';
  if (own.length === 1) return `layer ${own[0]} of ${passes}`;
  return `layers ${own.slice(0, -1).join(', ')} and ${own.at(-1)} of ${passes}`;
}
