import type { Fraction, GramMm } from '../units.ts';

/** `over`: more than is permitted. `within`: not over, and sure of it. `check`: between the two. */
export type Verdict = 'within' | 'check' | 'over';

/** From this chance of being over on, "within" is no longer said. Chosen: one in twenty, as is usual for uncertainty statements. */
const SURE: Fraction = 0.05;

/** Source: job format, "Balance". */
export function verdictOf(net: GramMm, limit: GramMm, chance: Fraction): Verdict {
  if (net > limit) return 'over';
  return chance < SURE ? 'within' : 'check';
}
