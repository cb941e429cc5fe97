import type { Clearance } from '../job/job.ts';
import type { Warning } from '../job/warning.ts';
import type { Mm } from '../units.ts';
import type { ClearanceEstimate } from './clearance.ts';
import { judgeGap } from './judge-gap.ts';

/** What should worry someone about the running gap, the worst first. */
export function clearanceWarnings(ask: Clearance, estimate: ClearanceEstimate | null): Warning[] {
  if (estimate === null) {
    const text = `The face of ${ask.plate} and the vane tips of ${ask.impeller} share no radius, so there is no gap to work out. Check their diameters.`;
    return [{ code: 'clearance-apart', field: 'clearance', text }];
  }
  return [...rub(estimate), ...tight(estimate), ...wide(estimate), ...shape(estimate)];
}

/** Less reads 0.00 mm. */
const TOUCH: Mm = 0.005;

function rub({ gap: { coated }, tolerance: { worstCase } }: ClearanceEstimate): Warning[] {
  if (coated.least - worstCase > 0) return [];
  const found =
    coated.least < -TOUCH
      ? `At the closest the parts overlap by ${mm(-coated.least)}`
      : coated.least <= TOUCH
        ? 'At the closest nothing is left'
        : `At the closest ${mm(coated.least)} is left, and ${mm(worstCase)} of tolerance can take it all`;
  const text = `${found}: tips and plate can touch. Turn the rotor by hand through whole turns before start; do not start a pump that rubs or sticks.`;
  return [{ code: 'clearance-rub', field: 'clearance', text }];
}

function tight(estimate: ClearanceEstimate): Warning[] {
  const { ask, gap, verdict, tolerance } = estimate;
  if (verdict !== 'tight' && verdict !== 'both') return [];
  const text = `Too tight: ${mm(gap.coated.least)} at the closest${less(tolerance.worstCase)}, where ${mm(ask.least)} runs free. ${closedByCoats(estimate)}`;
  return [{ code: 'clearance-tight', field: 'clearance.least', text: text.trim() }];
}

/** The trap: filled it would run free, and then the coats go on. */
function closedByCoats({ ask, gap: { filled, films } }: ClearanceEstimate): string {
  const { verdict } = judgeGap(filled, ask);
  if (verdict === 'tight' || verdict === 'both' || films.plate + films.tips === 0) return '';
  const coats =
    films.plate === 0
      ? `the coats on the vane tips take ${mm(films.tips)}`
      : films.tips === 0
        ? `the coats on the plate take ${mm(films.plate)}`
        : films.plate === films.tips
          ? `the coats on both faces take 2 x ${mm(films.plate)}`
          : `the coats take ${mm(films.plate)} on the plate and ${mm(films.tips)} on the vane tips`;
  return `Filled it would run free; ${coats}.`;
}

function wide({ ask, gap, verdict, tolerance }: ClearanceEstimate): Warning[] {
  if (verdict !== 'wide' && verdict !== 'both') return [];
  const more = tolerance.worstCase > 0 ? ` and ${mm(tolerance.worstCase)} of tolerance more` : '';
  const text = `Too wide: ${mm(gap.coated.most)} at the widest${more}, where no more than ${mm(ask.most)} is worth running.`;
  return [{ code: 'clearance-wide', field: 'clearance.most', text }];
}

/** A difference by the drawings that no tolerance covers, mm (from memory, no source). */
const UNEVEN: Mm = 0.5;

function shape({ ask, gap: { mismatch }, tolerance }: ClearanceEstimate): Warning[] {
  if (ask.asNewHolds !== 'everywhere' || mismatch <= Math.max(UNEVEN, tolerance.worstCase)) return [];
  const text =
    `By their drawings plate and tips are not parallel: they stand up to ${mm(mismatch)} further apart elsewhere than at the closest; ` +
    'the figures take the gap as new everywhere.';
  return [{ code: 'clearance-shape', field: 'clearance.asNewHolds', text }];
}

const less = (tolerance: Mm): string => (tolerance > 0 ? ` less ${mm(tolerance)} of tolerance` : '');
const mm = (size: Mm): string => `${size.toFixed(2)} mm`;
