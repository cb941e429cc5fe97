import type { Way } from '../balance/correction.ts';
import type { CorrectionFile } from '../job/measured-rotor.ts';
import type { Deg, Mm } from '../units.ts';
import { figure, plain } from './figure.ts';

/** Where a correction is, in the file's units: beside which vanes, and how deep a usual drill's tip goes for the same metal. */
export interface WordedPlace {
  readonly between: readonly [number, number] | null;
  readonly behind: number | null;
  readonly tip: Mm | null;
}

export const WAY_WORDS: Readonly<Record<Way, string>> = {
  'back-holes': 'Holes in the back',
  'rim-holes': 'Holes in the rim',
  skim: 'Skim of the back',
  'vane-split': 'Holes behind two vanes',
  putty: 'Putty on the light side',
  together: 'Two ways together',
};

/**
 * What to do, as an order: `Drill 2 flat-bottomed holes of 10 mm, 5.1 mm deep, ...`.
 * @param grams  put on, for putty: its mass is what counts
 */
export function correctionWords(
  correction: CorrectionFile,
  grams: number,
  { between, behind, tip }: WordedPlace,
): string {
  const beside =
    behind !== null
      ? `, behind vane ${behind}`
      : between === null
        ? ''
        : `, between vanes ${between[0]} and ${between[1]}`;
  if (correction.kind === 'holes') {
    const { face, at, diameter, depth } = correction;
    const onRim = face === 'shroud/rim';
    const angles = degreeList(at.map((point) => point[onRim ? 0 : 1]));
    const where = onRim
      ? `into the rim ${plain(at[0][1])} mm below the vane side, at ${angles}`
      : `into the back of the shroud at radius ${plain(at[0][0])} mm, at ${angles}`;
    const holes = at.length === 1 ? 'a flat-bottomed hole' : `${at.length} flat-bottomed holes`;
    const drill = tip === null ? '' : `; a usual drill takes as much with its tip ${tip.toFixed(1)} mm deep`;
    return `Drill ${holes} of ${plain(diameter)} mm, ${plain(depth)} mm deep, ${where}${beside}${drill}`;
  }
  const [from, to] = correction.second;
  const sector = `radius ${plain(correction.first[0])} to ${plain(correction.first[1])} mm, angle ${plain(from)} to ${plain(to)} deg${beside}`;
  if (correction.kind === 'skim')
    return `Skim ${plain(correction.depth)} mm off the back of the shroud, ${sector}`;
  return (
    `Build up ${figure(grams)} g of metal-filled putty of ${plain(correction.density)} g/cm3 on the vane side of the shroud, ` +
    `${sector}, ${plain(correction.height)} mm high; weigh it, the mass is what counts`
  );
}

/** `92.5, 106 and 120 deg`. */
function degreeList(angles: readonly Deg[]): string {
  const words = angles.map(plain);
  const last = words[words.length - 1];
  return words.length === 1 ? `${last} deg` : `${words.slice(0, -1).join(', ')} and ${last} deg`;
}

/** A chance as a percentage that never says more than is known: `under 0.1 %`. */
export function chanceWords(chance: number): string {
  if (chance === 0) return 'none';
  if (chance === 1) return 'certain';
  if (chance < 0.001) return 'under 0.1 %';
  if (chance > 0.999) return 'over 99.9 %';
  return `${(chance * 100).toFixed(1)} %`;
}
