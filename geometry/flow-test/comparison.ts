import type { FlowTest } from '../job/job.ts';
import type { Fraction } from '../units.ts';
import type { RunEstimate } from './run-estimate.ts';

/** Runs that are compared; the last of each kind counts. Places in the list of runs. */
export interface ComparedRuns {
  readonly new: number | null;
  readonly before: number | null;
  readonly after: number | null;
  /** Kinds of which an earlier run is not used. */
  readonly repeated: readonly ComparedKind[];
}

export type ComparedKind = 'new' | 'before' | 'after';

/** What two efficiencies at duty say of each other. */
export interface Comparison {
  /** Of the pump, or of pump and motor together. */
  readonly of: RunEstimate['of'];
  readonly before: Fraction;
  readonly after: Fraction;
  readonly gain: Fraction;
  /** Of the gain, to either side, 95 of 100. */
  readonly gainError: Fraction;
  /** The same as a share of the efficiency. */
  readonly relativeError: Fraction;
  readonly error: GainErrorKind;
  readonly isProven: boolean;
  readonly verdict: 'gain' | 'loss' | 'inside the error';
}

/**
 * What the error of the gain is made of. `independent`: both tests in full. `repeatability`: the same gauges, of which only the random
 * part counts. `random part not known`: the same gauges, but nobody said how well they repeat, so both tests in full again.
 */
export type GainErrorKind = 'independent' | 'repeatability' | 'random part not known';

export function comparedRuns(runs: readonly Pick<RunEstimate, 'when'>[]): ComparedRuns {
  const kinds = ['new', 'before', 'after'] as const;
  const last = (kind: ComparedKind): number | null => {
    const at = runs.findLastIndex(({ when }) => when === kind);
    return at < 0 ? null : at;
  };
  return {
    new: last('new'),
    before: last('before'),
    after: last('after'),
    repeated: kinds.filter((kind) => runs.filter(({ when }) => when === kind).length > 1),
  };
}

/**
 * The gain in efficiency at duty, and whether the gauges can tell it. Errors of two tests add as squares.
 * @returns  or the reason, a sentence, why there is no comparison
 * Source: ISO 9906:2012, 4.3 (from memory); JCGM 100:2008, 5.1.2; tests/geometry/flow-test/comparison.test.ts
 */
export function compare(
  runs: readonly RunEstimate[],
  { before: beforeAt, after: afterAt }: ComparedRuns,
  test: FlowTest,
): Comparison | { readonly reason: string } {
  if (beforeAt === null && afterAt === null) return { reason: 'No run as found and none after the repair.' };
  if (beforeAt === null) return { reason: 'No run as found to compare with.' };
  if (afterAt === null) return { reason: 'No run after the repair yet.' };
  const [before, after] = [runs[beforeAt], runs[afterAt]];
  if (before.of !== after.of) return { reason: UNLIKE };
  const [from, to] = [before.atDuty?.efficiency ?? null, after.atDuty?.efficiency ?? null];
  if (from === null) return { reason: 'The run as found has no efficiency at duty.' };
  if (to === null) return { reason: 'The run after the repair has no efficiency at duty.' };

  const [ownBefore, ownAfter, error] = ownErrors(before, after, test);
  const gain = to - from;
  const gainError = Math.hypot(from * ownBefore, to * ownAfter);
  const isProven = gain > gainError;
  return {
    of: after.of,
    before: from,
    after: to,
    gain,
    gainError,
    relativeError: Math.hypot(ownBefore, ownAfter),
    error,
    isProven,
    verdict: isProven ? 'gain' : -gain > gainError ? 'loss' : 'inside the error',
  };
}

const UNLIKE =
  'Power was taken at the shaft in one run and at the motor in the other: give the efficiency of the motor to compare them.';

/** What each of the two efficiencies adds to the error of their difference, as a share of it. */
export function ownErrors(
  before: RunEstimate,
  after: RunEstimate,
  { sameGauges, repeatability }: FlowTest,
): readonly [before: Fraction, after: Fraction, kind: GainErrorKind] {
  if (sameGauges && repeatability !== null) {
    // Repeatability is of a difference already: each of the two has its root half.
    const each = repeatability * Math.SQRT1_2;
    return [each, each, 'repeatability'];
  }
  return [
    before.error.efficiency,
    after.error.efficiency,
    sameGauges ? 'random part not known' : 'independent',
  ];
}

/** Against the pump as new, at duty. */
export interface Recovery {
  /** Efficiency after the repair as a share of that as new. */
  readonly recovered: Fraction | null;
  /** Share of what had been lost that came back; null where nothing had been. */
  readonly returned: Fraction | null;
}

export function recovery(runs: readonly RunEstimate[], compared: ComparedRuns): Recovery {
  const at = (place: number | null) => (place === null ? null : runs[place]);
  const [asNew, before, after] = [at(compared.new), at(compared.before), at(compared.after)];
  const best = asNew?.atDuty?.efficiency ?? null;
  const now = after?.atDuty?.efficiency ?? null;
  if (best === null || now === null || best === 0 || asNew?.of !== after?.of)
    return { recovered: null, returned: null };
  const was = before?.of === after?.of ? (before?.atDuty?.efficiency ?? null) : null;
  return {
    recovered: now / best,
    returned: was === null || best <= was ? null : (now - was) / (best - was),
  };
}
