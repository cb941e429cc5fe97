import type { Clearance } from '../job/job.ts';
import type { Mm } from '../units.ts';
import { coatedGap, type GapSpread } from './gap.ts';
import type { GapBasis } from './gap-basis.ts';
import { filmOf, type GapSetting } from './gap-setting.ts';
import { type GapVerdict, judgeGap } from './judge-gap.ts';
import { leverCaution, leverWords } from './lever-words.ts';
import {
  dressInto,
  LEVER_KINDS,
  type Lever,
  type LeverEffect,
  type LeverKind,
  settingWith,
  shimInto,
} from './levers.ts';

/** The smallest change that brings the gap into its band. */
export interface GapFit {
  /** None when the job fits as it is. */
  readonly levers: readonly FitLever[];
  readonly coated: GapSpread;
  readonly verdict: GapVerdict;
  readonly likely: GapVerdict;
  /** Of the mean gap, mm. */
  readonly change: Mm;
  readonly words: string;
}

export type FitLever = Lever & Pick<LeverEffect, 'words' | 'caution'>;

/** More than this nobody takes for the smallest change. */
const MOST_LEVERS = 3;

/** Of which a job can have one. */
const EITHER: readonly (readonly LeverKind[])[] = [
  ['flush', 'stop-short'],
  ['bare-tips', 'bare-plate', 'bare-both'],
  ['one-coat-less'],
  ['fill-left'],
];

/**
 * Of all ways with up to three levers that fit in the worst case: the fewest levers, then the least change of the mean gap, then the
 * least work. A shim and a dressing never go together: the shim alone does as much.
 * @returns the fit, or why there is none
 * Source: brute force over all ways, tests/geometry/clearance/find-fit.test.ts
 */
export function findFit(
  basis: GapBasis,
  ask: Clearance,
  now: GapSetting,
  each: readonly LeverEffect[],
): { readonly fit: GapFit } | { readonly noFit: string } {
  const before = coatedGap(basis, ask, now);
  const isOpen = (kind: LeverKind): boolean => each.some((lever) => lever.kind === kind && !lever.isNow);
  let best: Way | null = null;
  let evenest = before;
  for (const kinds of wholeWays(isOpen)) {
    const plain = kinds.map((kind): Lever => ({ kind, amount: null }));
    const gap = coatedGap(basis, ask, plain.reduce(settingWith, now));
    if (spreadOf(gap) < spreadOf(evenest)) evenest = gap;
    const moved = gap.mean - before.mean;
    best = better(best, wayOf(plain, gap));
    if (kinds.length === MOST_LEVERS) continue;
    const shim = shimInto(gap, ask, moved);
    if (shim !== null && shim !== 0)
      best = better(best, wayOf([...plain, { kind: 'shim', amount: shim }], shifted(gap, shim)));
    const dressing = dressInto(basis, ask, plain.reduce(settingWith, now), moved);
    if (dressing !== null && dressing.amount !== 0)
      best = better(
        best,
        wayOf([...plain, { kind: 'dress-tips', amount: dressing.amount }], dressing.coated),
      );
  }
  return best === null ? { noFit: whyNot(evenest, ask) } : { fit: fitOf(best) };

  function wayOf(levers: readonly Lever[], coated: GapSpread): Way | null {
    const { verdict, likely } = judgeGap(coated, ask);
    return verdict === 'fit' ? { levers, coated, verdict, likely, change: coated.mean - before.mean } : null;
  }

  function fitOf({ levers, ...way }: Way): GapFit {
    const setting = levers.reduce(settingWith, now);
    const worded = LEVER_KINDS.flatMap((kind) => levers.filter((lever) => lever.kind === kind)).map(
      ({ kind, amount }): FitLever => {
        const lever = { kind, amount: kind === 'stop-short' ? filmOf(setting) : amount };
        return { ...lever, words: leverWords(lever, ask, now), caution: leverCaution(lever) };
      },
    );
    const [first = 'Fits as it is', ...rest] = worded.map((lever) => lever.words);
    const words = [first, ...rest.map((more) => more.charAt(0).toLowerCase() + more.slice(1))].join('; ');
    return { ...way, levers: worded, words };
  }
}

interface Way extends Omit<GapFit, 'levers' | 'words'> {
  readonly levers: readonly Lever[];
}

/** Every choice of up to three levers without an amount to search, none included. */
function wholeWays(isOpen: (kind: LeverKind) => boolean): LeverKind[][] {
  return EITHER.reduce<LeverKind[][]>(
    (ways, kinds) =>
      ways.flatMap((way) => [way, ...kinds.filter(isOpen).map((kind): LeverKind[] => [...way, kind])]),
    [[]],
  ).filter(({ length }) => length <= MOST_LEVERS);
}

/** Changes of the mean closer than this are alike, mm. */
const ALIKE: Mm = 1e-6;

function better(best: Way | null, way: Way | null): Way | null {
  if (best === null || way === null) return best ?? way;
  const fewer = best.levers.length - way.levers.length;
  if (fewer !== 0) return fewer > 0 ? way : best;
  const nearer = Math.abs(best.change) - Math.abs(way.change);
  if (Math.abs(nearer) > ALIKE) return nearer > 0 ? way : best;
  return workOf(best) > workOf(way) ? way : best;
}

const workOf = ({ levers }: Way): number =>
  levers.reduce((sum, { kind }) => sum + LEVER_KINDS.indexOf(kind), 0);

const shifted = ({ least, mean, most }: GapSpread, by: Mm): GapSpread => ({
  least: least + by,
  mean: mean + by,
  most: most + by,
});

const spreadOf = ({ least, most }: GapSpread): Mm => most - least;

function whyNot(evenest: GapSpread, ask: Clearance): string {
  const { worstCase } = judgeGap(evenest, ask).tolerance;
  const room = ask.most - ask.least - 2 * worstCase;
  const spread = spreadOf(evenest);
  const left =
    worstCase > 0
      ? `the band of ${mm(ask.least)} to ${mm(ask.most)} less twice the tolerance of ${mm(worstCase)}`
      : `the band of ${mm(ask.least)} to ${mm(ask.most)}`;
  if (room <= 0) return `No change fits: ${left} leaves nothing. Widen the band or set the gap more closely.`;
  if (spread > room)
    return `No change fits: at best the gap differs by ${mm(spread)} from place to place, and ${left} leaves ${mm(room)}. Fill what is left, dress truer, or widen the band.`;
  return `No change fits: the gap differs by ${mm(spread)} from place to place, and no shim or dressing in the usual steps sets it into the ${mm(room)} that ${left} leaves. Widen the band or set the gap more closely.`;
}

const mm = (size: Mm): string => `${size.toFixed(2)} mm`;
