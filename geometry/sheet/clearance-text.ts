/** The running gap in words: a headline, sentences, rows for tables, and how it was worked out. */
import { COST, ROUNDED_TIP_LEAK, USUAL_SETTINGS } from '../clearance/gap-cost.ts';
import type { GapVerdict } from '../clearance/judge-gap.ts';
import type { Estimate } from '../estimate.ts';
import type { Basis } from './basis.ts';
import type { ClearanceResult } from './clearance-result.ts';
import { figure, gauge } from './figure.ts';
import type { Headline } from './headline.ts';
import { placeText } from './place-text.ts';

export const VERDICT_WORDS: Readonly<Record<GapVerdict, string>> = {
  fit: 'fits',
  tight: 'too tight',
  wide: 'too wide',
  both: 'too tight and too wide',
};

/** To be read from two metres, and what belongs to it. */
export function clearanceHeadline(result: ClearanceResult): Headline {
  const { verdict, likely, coated, band, tolerance, fit, noFit } = result;
  const likelyWords =
    likely === verdict ? '' : `; likely ${VERDICT_WORDS[likely]}, ${gauge(tolerance.rootSumSquare)} mm`;
  return {
    lead: `Clearance: ${VERDICT_WORDS[verdict]}, ${span(coated)}, band ${span(band)}`,
    notes: [
      ...(tolerance.worstCase > 0
        ? [`uncertain by up to ${gauge(tolerance.worstCase)} mm to either side${likelyWords}`]
        : []),
      ...(coated.least - tolerance.worstCase <= 0
        ? ['tips and plate can touch: turn the rotor by hand before start']
        : []),
      ...(noFit !== null ? ['no change of up to three things fits, see below'] : []),
      ...(fit !== null && fit.levers.length > 0 ? [`to fit: ${fit.words}`] : []),
    ],
  };
}

/** What the figures mean, one sentence each. */
export function clearanceLines(estimate: Estimate, result: ClearanceResult): string[] {
  const { asFound, filled, coated, films, fit, noFit, overlap } = result;
  return [
    `As found ${span(asFound)}, filled ${span(filled)}, filled and coated ${span(coated)}, over the radii of ${figure(overlap.from)} to ${figure(overlap.to)} mm that plate and tips share.`,
    filmSentence(films),
    tightestSentence(estimate, result),
    ...(fit === null ? [noFit ?? ''] : fit.levers.length === 0 ? [] : [fitSentence(fit)]),
    ...(fit?.levers.flatMap(({ caution }) => caution ?? []) ?? []),
    ...costSentences(result),
    ...referenceSentences(result),
  ];
}

function filmSentence({ plate, tips }: ClearanceResult['films']): string {
  if (plate + tips === 0) return 'Neither running face is coated.';
  if (plate === 0) return `The coats on the vane tips take ${mm(tips)} of it; the plate is not coated.`;
  if (tips === 0) return `The coats on the plate take ${mm(plate)} of it; the vane tips are not coated.`;
  return plate === tips
    ? `The coats on both faces take 2 x ${mm(plate)} of it.`
    : `The coats take ${mm(plate)} of it on the plate and ${mm(tips)} on the vane tips.`;
}

function tightestSentence(estimate: Estimate, { tightest }: ClearanceResult): string {
  const { clearance } = estimate;
  if (clearance === null) throw new Error('clearanceLines: needs an estimate with a clearance');
  const { plate, impeller } = clearance.ask;
  return (
    `Tightest ${mm(tightest.gap)} where ${tightest.tip} (${placeText(estimate, impeller, tightest.tip, tightest.on)}) ` +
    `passes the plate at ${placeText(estimate, plate, 'face', tightest.plate)}.`
  );
}

function fitSentence({ words, coated, change }: NonNullable<ClearanceResult['fit']>): string {
  return `The smallest change that fits: ${lower(words)}. That makes ${span(coated)}, ${gauge(Math.abs(change))} mm ${change < 0 ? 'less' : 'more'} in the mean.`;
}

/** Only what is published, and only as a bound. */
function costSentences({ cost }: ClearanceResult): string[] {
  const edges = `Square the tip edges when they are dressed: a rounded edge leaks about ${Math.round((ROUNDED_TIP_LEAK - 1) * 100)} % more than a square one at the same gap.`;
  if (cost === null) return [edges];
  const { way, from, to, most, outside } = cost;
  const done = way === 'gain' ? 'Closing' : 'Opening';
  const worth = way === 'gain' ? 'may be worth' : 'may cost';
  const rest =
    outside > 0.005
      ? ` Of that change ${mm(outside)} lies outside the published range of ${plainSpan(COST.from, COST.to)}; nothing is counted for it.`
      : '';
  return [
    `${done} the mean gap from ${gauge(from)} to ${gauge(to)} mm ${worth} up to ${most.toFixed(1)} points of efficiency, or next to nothing: impellers differ, and this is a bound, no forecast.${rest}`,
    edges,
  ];
}

function referenceSentences({ ring }: ClearanceResult): string[] {
  const settings = USUAL_SETTINGS.map(({ what, least, most }) => `${plainSpan(least, most)} on ${what}`);
  const inches = ring === null || ring.inch === null ? '' : ` (${ring.inch.toFixed(3)} in)`;
  return [
    `For comparison, published settings of this gap: ${settings.join(', ')}.`,
    ...(ring === null
      ? []
      : [
          `Least radial ring clearance for D = ${figure(ring.diameter)} mm: ${gauge(ring.mm)} mm${inches} on the diameter. Radial, between wear rings: it says nothing about this axial gap.`,
        ]),
  ];
}

export const STATE_HEADS = ['gap', '>least mm', '>mean mm', '>most mm'] as const;

/** As found, filled, coated; then the band. */
export function stateRows({ asFound, filled, coated, band }: ClearanceResult): string[][] {
  const row = (name: string, { least, mean, most }: ClearanceResult['coated']): string[] => [
    name,
    gauge(least),
    gauge(mean),
    gauge(most),
  ];
  return [
    row('as found', asFound),
    row('filled', filled),
    row('filled and coated', coated),
    ['allowed', gauge(band.least), '', gauge(band.most)],
  ];
}

export const VANE_HEADS = ['vane', '>as found mm', '>filled mm', '>coated mm', '>coated mean mm'] as const;

/** One row a vane; none where all are alike to what a gauge shows. */
export function vaneRows({ byVane }: ClearanceResult): string[][] {
  const rows = byVane.map(({ tip, asFound, filled, coated }) => [
    tip.split('/')[0],
    range(asFound),
    range(filled),
    range(coated),
    gauge(coated.mean),
  ]);
  const alike = new Set(rows.map(([, ...figures]) => figures.join(' ')));
  return alike.size > 1 ? rows : [];
}

export const RADIUS_HEADS = [
  '>radius mm',
  '>as found mm',
  '>filled mm',
  '>coated mm',
  '>coated mean mm',
] as const;

/** Rows that a table of radii takes. */
const MOST_RADII = 12;

/** Rings evenly picked, the first and the last among them. */
export function radiusRows({ byRadius }: ClearanceResult): string[][] {
  const count = Math.min(MOST_RADII, byRadius.length);
  return Array.from({ length: count }, (_, i) => {
    const at = count === 1 ? 0 : Math.round((i * (byRadius.length - 1)) / (count - 1));
    const { radius, asFound, filled, coated } = byRadius[at];
    return [radius.toFixed(1), range(asFound), range(filled), range(coated), gauge(coated.mean)];
  });
}

export const LEVER_HEADS = ['>mean by mm', '>least mm', '>most mm', 'then', 'do'] as const;

/** One row a lever that is not pulled yet, least work first. */
export function leverRows({ levers }: ClearanceResult): string[][] {
  return levers
    .filter(({ isNow }) => !isNow)
    .map(({ change, coated, verdict, words }) => [
      signed(change),
      gauge(coated.least),
      gauge(coated.most),
      VERDICT_WORDS[verdict],
      words,
    ]);
}

/** How the gap was worked out, with its numbers. */
export function clearanceBasis(result: ClearanceResult): Basis[] {
  const { asNew, shim, dressTips, films, tightest, band, coated, tolerance, cost, ring, mismatch } = result;
  const missing = tightest.gap - asNew - shim + films.plate + films.tips;
  const dressed = dressTips > 0 ? `, tips dressed to ${gauge(dressTips)}` : '';
  const { setting, film, dressing, runOut, worstCase, rootSumSquare } = tolerance;
  return [
    {
      what: 'Gap',
      how:
        `As new ${gauge(asNew)} + shims ${gauge(shim)} + missing of plate and tip ${gauge(missing)}${dressed} ` +
        `- coats ${gauge(films.plate)} and ${gauge(films.tips)} = ${mm(tightest.gap)} where it is tightest. As found counts the wear as it is and no coats.`,
      source: 'Geometry; as new, shims, dressing and coats as chosen in the job',
    },
    {
      what: 'Gap by radius',
      how:
        'Every place of a tip passes every place of the plate at its radius once a turn: ring by ring the least is the least of both, the mean their means, the most the largest. ' +
        (mismatch > 0.005
          ? `By their drawings the parts stand up to ${mm(mismatch)} further apart elsewhere than at the closest.`
          : 'By their drawings plate and tips run parallel.'),
      source: 'Geometry',
    },
    {
      what: 'Fits or not',
      how:
        `Setting ${gauge(setting)} + coats ${gauge(film)} + dressing ${gauge(dressing)} + run-out ${gauge(runOut)} = ${mm(worstCase)} in the worst case, ` +
        `${mm(rootSumSquare)} as the root of their squares. ${gauge(coated.least)} - ${gauge(worstCase)} = ${mm(coated.least - worstCase)} against the least of ${gauge(band.least)}; ` +
        `${gauge(coated.most)} + ${gauge(worstCase)} = ${mm(coated.most + worstCase)} against the most of ${gauge(band.most)}.`,
      source: 'Stacking of tolerances, common practice; band chosen in the job',
    },
    {
      what: 'Smallest change',
      how: 'Of all ways with up to three levers that fit in the worst case: the fewest levers, then the least change of the mean gap, then the least work. Shims in steps of 0.05 mm, dressing in 0.1 mm.',
      source: 'Exhaustive search; steps and order of work common practice',
    },
    ...(cost === null
      ? []
      : [
          {
            what: 'Worth of the gap',
            how:
              `Up to ${COST.perMm} points a mm between ${plainSpan(COST.from, COST.to)}: ${gauge(cost.within)} mm x ${COST.perMm} = ${cost.most.toFixed(1)}. ` +
              `Found on semi-open impellers of specific speed (US) ${COST.specificSpeed.join(' to ')}; no formula fit to forecast with is published.`,
            source: COST.source,
          },
        ]),
    {
      what: 'Tip edges',
      how: `Leak coefficients 0.91 of a round and 0.73 of a sharp square edge: ${ROUNDED_TIP_LEAK.toFixed(2)} times. Measured in gas on 16 vanes.`,
      source: 'Ishida, Ueki and Senoo, J. Turbomach. 112(1), 1990, abstract',
    },
    ...(ring === null
      ? []
      : [
          {
            what: 'Ring clearance',
            how: `Table of least running clearances by the diameter of the ring, here the bore of the plate, ${figure(ring.diameter)} mm. An older edition asks for more.`,
            source: 'API 610, as service manuals print it',
          },
        ]),
  ];
}

/** What rounds to nothing has no sign. */
function signed(size: number): string {
  const words = gauge(Math.abs(size));
  return Number(words) === 0 ? words : `${size < 0 ? '-' : '+'}${words}`;
}
const mm = (size: number): string => `${gauge(size)} mm`;
/** `0.12 to 0.45`; one figure where both round to it. */
function range({ least, most }: { readonly least: number; readonly most: number }): string {
  const [low, high] = [gauge(least), gauge(most)];
  return low === high ? low : `${low} to ${high}`;
}
const span = (ends: { readonly least: number; readonly most: number }): string => `${range(ends)} mm`;
const plainSpan = (least: number, most: number): string => `${least} to ${most} mm`;
const lower = (words: string): string => words.charAt(0).toLowerCase() + words.slice(1);
