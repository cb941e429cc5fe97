import type { Clearance } from '../job/job.ts';
import type { Mm } from '../units.ts';
import { coatedGap, type GapSpread } from './gap.ts';
import type { GapBasis } from './gap-basis.ts';
import { DRESS_STEP, filmOf, type GapSetting } from './gap-setting.ts';
import { type GapVerdict, judgeGap } from './judge-gap.ts';
import { leverCaution, leverWords } from './lever-words.ts';

/** One thing that can be done otherwise, to bring the gap in; least work first. */
export const LEVER_KINDS = [
  'flush',
  'stop-short',
  'bare-tips',
  'bare-plate',
  'bare-both',
  'one-coat-less',
  'shim',
  'dress-tips',
  'fill-left',
] as const;

export type LeverKind = (typeof LEVER_KINDS)[number];

export interface Lever {
  readonly kind: LeverKind;
  /** What a shim or a dressing is changed by, or where the fill stops short; null where there is nothing to set. */
  readonly amount: Mm | null;
}

export interface LeverEffect extends Lever {
  /** With this lever alone. */
  readonly coated: GapSpread;
  readonly verdict: GapVerdict;
  readonly likely: GapVerdict;
  /** Of the mean gap, mm; above 0 it opens. */
  readonly change: Mm;
  /** The job has it already. */
  readonly isNow: boolean;
  /** What to do, as an order. */
  readonly words: string;
  readonly caution: string | null;
}

/** Stock for shims comes in steps of this, mm (common practice). */
const SHIM_STEP: Mm = 0.05;

/** What each lever alone does to the coated gap. */
export function levers(basis: GapBasis, ask: Clearance, now: GapSetting): LeverEffect[] {
  const before = coatedGap(basis, ask, now);
  return LEVER_KINDS.filter((kind) => kind !== 'one-coat-less' || now.coats > 1).map((kind) => {
    const lever: Lever = { kind, amount: amountOf(kind, basis, ask, now) };
    const coated = coatedGap(basis, ask, settingWith(now, lever));
    const { verdict, likely } = judgeGap(coated, ask);
    return {
      ...lever,
      coated,
      verdict,
      likely,
      change: coated.mean - before.mean,
      isNow: isNow(basis, lever, now),
      words: leverWords(lever, ask, now),
      caution: leverCaution(lever),
    };
  });
}

/** A setting with one lever moved. The film that a fill stops short by is that of the coats there are in the end. */
export function settingWith(setting: GapSetting, { kind, amount }: Lever): GapSetting {
  switch (kind) {
    case 'flush':
      return { ...setting, allowance: 0 };
    case 'stop-short':
      return { ...setting, allowance: 'the film' };
    case 'bare-tips':
      return { ...setting, bareTips: true };
    case 'bare-plate':
      return { ...setting, barePlate: true };
    case 'bare-both':
      return { ...setting, barePlate: true, bareTips: true };
    case 'one-coat-less':
      return { ...setting, coats: setting.coats - 1 };
    case 'shim':
      return { ...setting, shim: setting.shim + (amount ?? 0) };
    case 'dress-tips':
      return { ...setting, dressTips: setting.dressTips + (amount ?? 0) };
    case 'fill-left':
      return { ...setting, fillsLeft: true };
  }
}

function amountOf(kind: LeverKind, basis: GapBasis, ask: Clearance, now: GapSetting): Mm | null {
  if (kind === 'stop-short') return filmOf(now);
  if (kind === 'shim') {
    const before = coatedGap(basis, ask, now);
    return shimInto(before, ask, 0) ?? centring(before, ask);
  }
  if (kind !== 'dress-tips') return null;
  return (dressInto(basis, ask, now, 0) ?? dressCentring(basis, ask, now)).amount;
}

/** Less than a gap is judged by, mm. */
const DUST: Mm = 1e-6;

/**
 * The shim that brings a gap into its band, worst case and all, and changes the mean the least.
 * @param moved  what the mean has been changed by already, mm
 * @returns      null when no multiple of the step does
 */
export function shimInto(gap: GapSpread, ask: Clearance, moved: Mm): Mm | null {
  const { worstCase } = judgeGap(gap, ask).tolerance;
  const low = Math.ceil((ask.least + worstCase - gap.least - DUST) / SHIM_STEP);
  const high = Math.floor((ask.most - worstCase - gap.most + DUST) / SHIM_STEP);
  if (low > high) return null;
  return multiple(Math.min(high, Math.max(low, Math.round(-moved / SHIM_STEP))), SHIM_STEP);
}

/** The shim that leaves as much over the band as under it. */
function centring({ least, most }: GapSpread, ask: Clearance): Mm {
  return multiple(Math.round((ask.least + ask.most - least - most) / 2 / SHIM_STEP), SHIM_STEP);
}

/** Tips dressed otherwise by an amount, and the coated gap that makes. */
export interface Dressing {
  readonly amount: Mm;
  readonly coated: GapSpread;
}

/** The same by dressing the tips to another plane, down to not at all. Open pits take part only once the plane reaches them. */
export function dressInto(basis: GapBasis, ask: Clearance, setting: GapSetting, moved: Mm): Dressing | null {
  const before = coatedGap(basis, ask, setting);
  const change = ({ coated }: Dressing): Mm => Math.abs(moved + coated.mean - before.mean);
  let best: Dressing | null = null;
  for (const dressing of dressings(basis, ask, setting)) {
    const { verdict } = judgeGap(dressing.coated, ask);
    // The deeper the plane, the wider every part of the gap: what is too wide stays so, and a mean once passed is not met again.
    if (verdict === 'wide' || verdict === 'both') break;
    if (verdict === 'tight') continue;
    if (best !== null && change(dressing) >= change(best) - DUST) break;
    best = dressing;
  }
  return best;
}

function dressCentring(basis: GapBasis, ask: Clearance, setting: GapSetting): Dressing {
  const off = ({ coated: { least, most } }: Dressing): Mm => Math.abs(ask.least + ask.most - least - most);
  let best: Dressing | null = null;
  for (const dressing of dressings(basis, ask, setting)) {
    // It falls to the middle of the band and rises from there; over open wear it may stand still for a while.
    if (best !== null && off(dressing) > off(best) + DUST) break;
    if (best === null || off(dressing) < off(best) - DUST) best = dressing;
  }
  if (best === null) throw new Error('dressCentring: needs a dressing, not at all is one');
  return best;
}

/** A hundred mm off a vane is no dressing. */
const MOST_DRESSINGS = 1000;

/** From not at all, one step deeper each time it is asked. */
function* dressings(basis: GapBasis, ask: Clearance, setting: GapSetting): Generator<Dressing> {
  const first = -Math.floor(setting.dressTips / DRESS_STEP + 1e-9);
  for (let count = first; count < first + MOST_DRESSINGS; count++) {
    const amount = multiple(count, DRESS_STEP);
    yield { amount, coated: coatedGap(basis, ask, settingWith(setting, { kind: 'dress-tips', amount })) };
  }
}

/** Steps are hundredths of a mm: so is what they come to, and never -0. */
const multiple = (count: number, step: Mm): Mm => Math.round(count * step * 100) / 100 || 0;

function isNow({ plate, tips }: GapBasis, { kind, amount }: Lever, now: GapSetting): boolean {
  const faces = [plate, ...tips].map(({ running }) => running);
  const isBarePlate = !plate.running.coated;
  const areBareTips = tips.every(({ running }) => !running.coated);
  switch (kind) {
    case 'flush':
      return faces.every(({ fill }) => fill.allowance === 0);
    case 'stop-short':
      return faces.every(({ fill }) => Math.abs(fill.allowance - filmOf(now)) < DUST);
    case 'bare-tips':
      return areBareTips;
    case 'bare-plate':
      return isBarePlate;
    case 'bare-both':
      return isBarePlate && areBareTips;
    case 'one-coat-less':
      return false;
    case 'shim':
    case 'dress-tips':
      return amount === 0;
    case 'fill-left':
      return faces.every(({ fill }) => fill.regions.every(({ action }) => action === 'fill'));
  }
}
