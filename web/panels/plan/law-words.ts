import { USUAL_ACTIVATION_ENERGY } from '../../../geometry/job/defaults.ts';
import { plain } from '../../../geometry/sheet/figure.ts';

/**
 * By which law times are brought to the part's temperature.
 * @param energy  as the job has it, kJ/mol: null asks for the workshop rule, and where it says nothing the usual energy holds
 */
export function lawWords(energy: number | null | undefined): string {
  return energy === null
    ? 'workshop rule, fallback: half the time for every 10 °C more'
    : `Arrhenius, ${plain(energy ?? USUAL_ACTIVATION_ENERGY)} kJ/mol`;
}
