import type { Estimate } from '../estimate.ts';
import { counted, figure, gauge } from './figure.ts';
import { placeText } from './place-text.ts';
import type { ReadingsResult } from './readings-result.ts';
import type { PartResult, Result } from './result.ts';

/** `142 +- 5 mL`; without an error the value alone. Two standard errors: the truth lies within, 19 times in 20. */
export function plusMinus(value: number, standardError: number, unit: string): string {
  const shown = figure(value);
  if (standardError === 0) return `${shown} ${unit}`;
  // As fine as the value, unless that would round it away.
  const decimals = shown.includes('.') ? shown.length - shown.indexOf('.') - 1 : 0;
  const error = (2 * standardError).toFixed(decimals);
  return `${shown} +- ${Number(error) > 0 ? error : figure(2 * standardError)} ${unit}`;
}

export const READINGS_HEADS = [
  'part',
  'face',
  '>readings',
  '>lost +- mL',
  '>fill +- mL',
  '>left out mm',
  'alike over',
];

/** One row a mark of readings. */
export function readingsRows({ parts }: Result): string[][] {
  return parts.flatMap(({ id, readings }) =>
    readings.map(({ face, count, used, lostError, fillError, leaveOneOut, covariance }) => [
      id,
      face,
      used === count ? String(count) : `${used} of ${count}`,
      figure(2 * lostError),
      figure(2 * fillError),
      leaveOneOut === null ? '' : gauge(leaveOneOut.rms),
      `${figure(covariance.length)} mm`,
    ]),
  );
}

/** What the readings leave open, in sentences: where to read next, and whether it is worth it. */
export function readingsLines(estimate: Estimate, { parts, filler }: Result): string[] {
  const next = nextOf(parts);
  if (next === null) return [];
  const { part, readings } = next;
  const { face, at, from, to } = readings;
  const lines = [
    `Measure next at ${part} ${face}, ${placeText(estimate, part, face, at)}: the volume is then known to +- ${figure(2 * to)} mL instead of +- ${figure(2 * from)} mL.`,
  ];
  if (filler.readings === null) return lines;
  const { moves, limit, isEnough } = filler.readings;
  const order = `Another reading changes the order by less than ${figure(moves)} mL, 19 times in 20`;
  if (limit === null) return [...lines, `${order}.`];
  return [
    ...lines,
    isEnough
      ? `${order}; a change by ${figure(limit)} mL would matter. Enough is measured.`
      : `${order}, and a change by ${figure(limit)} mL matters. Measure on.`,
  ];
}

function nextOf(parts: readonly PartResult[]) {
  const all = parts.flatMap(({ id, readings }) =>
    readings.flatMap(({ next }) => (next === null ? [] : [{ part: id, readings: next }])),
  );
  return all.length === 0 ? null : all.reduce((a, b) => (b.readings.moves > a.readings.moves ? b : a));
}

/** How the surface was found, with its numbers. */
export function readingsHow(readings: ReadingsResult): string {
  const { face, used, gaugeError, covariance, given, leaveOneOut } = readings;
  const chosen =
    given.length === 0 ? 'found from the readings' : `${given.join(' and ')} given, the rest found`;
  const check =
    leaveOneOut === null
      ? ''
      : ` Each left out and estimated from the others: ${gauge(leaveOneOut.rms)} mm off, ${leaveOneOut.within} of ${leaveOneOut.of} within two standard errors.`;
  return (
    `${counted(used, 'place', 'places')} on ${face}, gauge +- ${gauge(gaugeError)} mm. Ordinary kriging; covariance ${shapeWords(covariance.shape)}, ` +
    `alike over ${figure(covariance.length)} mm, standing ${gauge(Math.sqrt(covariance.sill))} mm up and down, ${chosen}.${check}`
  );
}

function shapeWords(shape: ReadingsResult['covariance']['shape']): string {
  return shape.startsWith('matern') ? `Matern ${shape.slice(shape.indexOf('-') + 1)}` : shape;
}
