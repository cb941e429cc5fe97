import type { Guarantee } from '../job/job.ts';
import type { Fraction } from '../units.ts';
import { type AcceptanceLimits, acceptanceLimits } from './acceptance-limits.ts';
import { crossings } from './crossings.ts';
import { isCovered, type MonotoneCurve, valueAt } from './monotone-curve.ts';
import type { RunEstimate } from './run-estimate.ts';

export type AcceptanceVerdict = 'met' | 'not met' | 'not covered';

/** The guaranteed point against one run, at rated speed. */
export interface Acceptance {
  /** Place of the run in the list. */
  readonly run: number;
  readonly grade: Guarantee['grade'];
  readonly limits: AcceptanceLimits;
  readonly checks: readonly AcceptanceCheck[];
  /** Not met when one is not; not covered when one is not. */
  readonly verdict: AcceptanceVerdict;
}

/** m3/h, m, kW, a share. */
export interface AcceptanceCheck {
  /** `head` at the guaranteed flow, `flow` at the guaranteed head; the others where the line through nought and the guaranteed point meets the curve. */
  readonly what: 'head' | 'flow' | 'efficiency' | 'power';
  /** null where the run does not reach. */
  readonly value: number | null;
  readonly least: number | null;
  readonly most: number | null;
  /** Head and flow share theirs: the curve has to pass through one arm of the cross. */
  readonly verdict: AcceptanceVerdict;
}

/** A value that is on its limit keeps it: float dust, as a share. */
const EVEN = 1e-9;

/**
 * Whether a run keeps to what was guaranteed: its curve passes through the tolerance cross, and efficiency and power are judged where
 * the line from nought through the guaranteed point cuts it.
 * @param run  place of the run, and the run itself
 * Source: ISO 9906:2012, 4.4 and 6.2 (from memory); tests/geometry/flow-test/acceptance.test.ts
 */
export function acceptanceOf(run: RunEstimate, at: number, guarantee: Guarantee): Acceptance {
  const { grade } = guarantee;
  const isShaft = run.of === 'pump';
  const most = isShaft ? Math.max(0, ...run.points.map(({ power }) => power)) : null;
  const limits = acceptanceLimits(grade, guarantee.power ?? most);
  const checks = [
    ...crossChecks(run.head, guarantee, limits),
    ...cutChecks(isShaft ? run : { ...run, power: [], efficiency: [] }, guarantee, limits),
  ];
  const verdicts = checks.map(({ verdict }) => verdict);
  const verdict = (['not met', 'not covered'] as const).find((worst) => verdicts.includes(worst)) ?? 'met';
  return { run: at, grade, limits, checks, verdict };
}

function crossChecks(
  curve: MonotoneCurve,
  { flow, head }: Guarantee,
  limits: AcceptanceLimits,
): AcceptanceCheck[] {
  const flows = rangeOf(flow, limits.flow);
  const heads = rangeOf(head, limits.head);
  const headThere = valueAt(curve, flow);
  const flowThere = nearest(crossings(curve, head), flow);
  const isMet = isWithin(headThere, heads) || isWithin(flowThere, flows);
  // Seen over the whole width of the cross, a curve that misses it does not meet it elsewhere.
  const isSeen = isCovered(curve, flows[0]) && isCovered(curve, flows[1]);
  const verdict = isMet ? 'met' : isSeen ? 'not met' : 'not covered';
  return [
    { what: 'head', value: headThere, least: heads[0], most: heads[1], verdict },
    { what: 'flow', value: flowThere, least: flows[0], most: flows[1], verdict },
  ];
}

function cutChecks(
  run: Pick<RunEstimate, 'head' | 'power' | 'efficiency'>,
  guarantee: Guarantee,
  limits: AcceptanceLimits,
): AcceptanceCheck[] {
  const cut = nearest(crossings(run.head, 0, guarantee.head / guarantee.flow), guarantee.flow);
  const there = (curve: MonotoneCurve): number | null => (cut === null ? null : valueAt(curve, cut));
  const checks: AcceptanceCheck[] = [];
  if (guarantee.efficiency !== null) {
    const [value, least] = [there(run.efficiency), guarantee.efficiency * (1 + limits.efficiency)];
    checks.push({
      what: 'efficiency',
      value,
      least,
      most: null,
      verdict: verdictOf(value, [least, Number.POSITIVE_INFINITY]),
    });
  }
  if (guarantee.power !== null) {
    const [value, most] = [there(run.power), guarantee.power * (1 + limits.power)];
    checks.push({ what: 'power', value, least: null, most, verdict: verdictOf(value, [0, most]) });
  }
  return checks;
}

const rangeOf = (value: number, [down, top]: readonly [Fraction, Fraction]): readonly [number, number] => [
  value * (1 + down),
  value * (1 + top),
];

const verdictOf = (value: number | null, range: readonly [number, number]): AcceptanceVerdict =>
  value === null ? 'not covered' : isWithin(value, range) ? 'met' : 'not met';

function isWithin(value: number | null, [least, most]: readonly [number, number]): boolean {
  return value !== null && value >= least * (1 - EVEN) && value <= most * (1 + EVEN);
}

function nearest(places: readonly number[], to: number): number | null {
  return places.reduce<number | null>(
    (best, place) => (best === null || Math.abs(place - to) < Math.abs(best - to) ? place : best),
    null,
  );
}
