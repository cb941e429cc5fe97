import type { PartFile } from '../../../../geometry/job/job-file.ts';
import type { Lay } from '../../../tools/straightedge.ts';
import { faceNumbers } from '../face-words.ts';

/** The ways to lay a straightedge on a face, as they are called there. */
export function layChoices(
  part: PartFile,
  face: string,
): readonly { readonly value: Lay; readonly label: string }[] {
  return (['line', 'along-first', 'along-second'] as const).map((value) => ({
    value,
    label: layWord(part, face, value),
  }));
}

/** One of them in a word. */
export function layWord(part: PartFile, face: string, lay: Lay): string {
  if (lay === 'line') return 'Line';
  const [along, fixed] = lay === 'along-first' ? [0, 1] : [1, 0];
  const numbers = faceNumbers(part, face);
  if (numbers[along].quantity === 'angle') return 'Ring';
  if (numbers[fixed].quantity === 'angle')
    return numbers[along].label === 'radius' ? 'Spoke' : 'Straight down';
  return ALONG[numbers[along].label] ?? 'Along';
}

const ALONG: Readonly<Record<string, string>> = {
  x: 'Along x',
  y: 'Along y',
  along: 'Along',
  height: 'Up',
  across: 'Across',
};
