import type { Coat, Filler } from '../job/job.ts';
import type { Portion } from '../material/mix.ts';
import type { WeighedOut } from '../material/weigh-out.ts';
import { figure, plain } from './figure.ts';

export const MIX_HEADS = ['>mix mL', '>A mL', '>B mL', '>A g', '>B g'];

/** One mix: what to measure out, and what the scale is to show where it can. */
export function mixCells(mix: {
  readonly volume: number;
  readonly partA: Portion;
  readonly partB: Portion;
  readonly weigh: WeighedOut | null;
}): string[] {
  const { volume, partA, partB, weigh } = mix;
  return [
    figure(volume),
    figure(partA.volume),
    figure(partB.volume),
    weigh === null ? '-' : plain(weigh.partA),
    weigh === null ? '-' : plain(weigh.partB),
  ];
}

/**
 * What the grams of a list of mixes are, or why there are none.
 */
export function scaleText(
  mixes: readonly { readonly weigh: WeighedOut | null }[],
  selfMixing: boolean,
  { scaleStep, densityA, densityB }: Filler | Coat,
): string {
  if (mixes.length === 0) return '';
  if (selfMixing) return 'The cartridge mixes A and B: nothing to weigh.';
  if (densityA === null || densityB === null)
    return 'Grams are not known without the densities of A and B: measure by volume.';
  const errors = mixes.flatMap(({ weigh }) => (weigh === null ? [] : [Math.abs(weigh.ratioError)]));
  if (errors.length === 0)
    return `No weights on a scale of ${plain(scaleStep)} g keep the ratio: measure by volume.`;
  const most = Math.max(...errors) * 100;
  return `Grams as a scale of ${plain(scaleStep)} g shows them; rounding puts the ratio off by ${most < 0.05 ? 'less than 0.1' : most.toFixed(1)} % at most.`;
}
