import { figure, plain } from '../../geometry/sheet/figure.ts';
import type { BatchResult } from '../../geometry/sheet/result.ts';

/** What may be said of a mix beside its stretch, the most first: what goes onto the scale, or how much it is where nothing is weighed. */
export function batchWords({
  number,
  weigh,
  volume,
}: Pick<BatchResult, 'number' | 'weigh' | 'volume'>): readonly string[] {
  const much =
    weigh === null ? `${figure(volume)} mL` : `A ${plain(weigh.partA)} g, B ${plain(weigh.partB)} g`;
  return [`Mix ${number}: ${much}`, `Mix ${number}`, String(number)];
}
