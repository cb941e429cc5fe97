import type { WeighedOut } from '../../../geometry/material/weigh-out.ts';
import { figure, plain } from '../../../geometry/sheet/figure.ts';
import type { BatchResult } from '../../../geometry/sheet/result.ts';

/** What a mix is measured out by. */
type Measured = Pick<BatchResult, 'weigh' | 'partA' | 'partB'>;

/** A and B as they go into the bowl: what the scale is to show, or the volumes where nothing is weighed. */
export function portionWords({ weigh, partA, partB }: Measured): { readonly a: string; readonly b: string } {
  return weigh === null
    ? { a: `${figure(partA.volume)} mL`, b: `${figure(partB.volume)} mL` }
    : { a: `${plain(weigh.partA)} g`, b: `${plain(weigh.partB)} g` };
}

/** What the scale shows with both in the bowl, set to zero under the empty one. */
export function bowlTotal({ partA, partB }: WeighedOut): string {
  // 0.3 and not 0.30000000000000004.
  return `${plain(Number((partA + partB).toFixed(6)))} g`;
}

/** Less than this is not worth a word: 0.1 %. */
const WORTH_SAYING = 0.001;

/** What rounding to the steps of the scale does to the ratio; '' where it does next to nothing. */
export function roundingText(mixes: readonly Pick<Measured, 'weigh'>[]): string {
  const errors = mixes.flatMap(({ weigh }) => (weigh === null ? [] : [weigh.ratioError]));
  const worst = errors.reduce((most, error) => (Math.abs(error) > Math.abs(most) ? error : most), 0);
  if (Math.abs(worst) <= WORTH_SAYING) return '';
  const isEven = errors.every((error) => Math.abs(error - worst) < 1e-9);
  const much = worst > 0 ? 'much' : 'little';
  return `Rounded to the steps of the scale: ${isEven ? '' : 'up to '}${Math.abs(worst * 100).toFixed(1)} % too ${much} B.`;
}

/** Why mixes are given by volume; '' where they are weighed. */
export function noWeighingText(
  selfMixing: boolean,
  hasDensities: boolean,
  mixes: readonly Pick<Measured, 'weigh'>[],
): string {
  if (selfMixing) return 'The cartridge mixes A and B itself: nothing to weigh.';
  if (!hasDensities) return 'Grams are not known without the densities of A and B: measure by volume.';
  return mixes.some(({ weigh }) => weigh === null)
    ? 'The scale is too coarse for so small a mix: measure by volume, or weigh on a finer scale.'
    : '';
}
