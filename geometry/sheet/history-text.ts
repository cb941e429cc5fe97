/** How fast the parts wear and when they are due, in words. */
import type { WearMeasure } from '../clearance/wear-rate.ts';
import type { Due } from '../clearance/when-due.ts';
import type { Basis } from './basis.ts';
import { counted, figure, gauge, plain } from './figure.ts';
import type { HistoryResult, RateResult } from './history-result.ts';

/** How lengths are written: `1.80 mm`, or in inches on a screen that shows them. */
export type LengthWords = (size: number) => string;

const MILLIMETRES: LengthWords = (size) => `${gauge(size)} mm`;

const MEASURE_WORDS: Readonly<Record<WearMeasure, string>> = {
  deepest: ' at its deepest',
  mean: ' on average over the worn area',
  volume: ' of metal and putty',
};

/** How fast each part wears and when it is due, one sentence each. */
export function historyLines({ rates, due }: HistoryResult, length: LengthWords = MILLIMETRES): string[] {
  const parts = [...new Set(rates.map(({ part }) => part))];
  return [
    ...parts.map((part) =>
      rateSentence(
        rates.filter((rate) => rate.part === part),
        length,
      ),
    ),
    ...due.map((one) => dueSentence(one, length)),
  ];
}

/** What those sentences rest on. */
export function historyNotes({ rates, due }: HistoryResult): string[] {
  return [
    ...(rates.some(({ range }) => range !== null)
      ? ['What stands in brackets holds 19 times in 20: it comes from how the intervals differ.']
      : []),
    ...(due.some(({ hours }) => hours !== null)
      ? [
          'Hours count from this repair, at the rate of the deepest wear wherever on the part it is, so most places take longer. Putty is taken to wear as fast as the metal did: how fast it wears is not known.',
        ]
      : []),
  ];
}

/** `plate loses 1.80 mm per 1000 h at its deepest (1.20 to 2.40 mm), 0.54 mm on average over the worn area (0.38 to 0.70 mm); 3 intervals, 8450 h.` */
function rateSentence(rates: readonly RateResult[], length: LengthWords): string {
  const [{ part, intervals, hours }] = rates;
  const isKnown = rates.some(({ range }) => range !== null);
  const amounts = rates.map(({ of, per1000, range }, i) => {
    const amount = (size: number): string => (of === 'volume' ? `${figure(size)} mL` : length(size));
    return `${amount(per1000)}${i === 0 ? ' per 1000 h' : ''}${MEASURE_WORDS[of]}${range === null && !isKnown ? '' : rangeWords(range, amount)}`;
  });
  const over = `${plain(Math.round(hours))} h`;
  const known = isKnown
    ? `${counted(intervals, 'interval', 'intervals')}, ${over}`
    : `${over} in one interval: no telling how far off`;
  return `${part} loses ${amounts.join(', ')}; ${known}.`;
}

function rangeWords(range: RateResult['range'], amount: (size: number) => string): string {
  if (range === null) return ' (one interval)';
  if (range.low <= 0) return ` (up to ${amount(range.high)})`;
  return ` (${amount(range.low).split(' ')[0]} to ${amount(range.high)})`;
}

/** `The gap reaches 0.60 mm after about 350 h (260 to 530 h).` */
function dueSentence({ what, part, limit, hours, from, to, why }: Due, length: LengthWords): string {
  const goal = limit === null ? 'its limit' : length(limit);
  const event =
    what === 'gap' ? `the gap reaches ${goal}` : `the thinnest wall of ${part} is down to ${goal}`;
  if (hours === null) return `No hours until ${event}: ${lowered(why ?? '')}`;
  const spread =
    from === null
      ? ' (one interval: no telling how far off)'
      : to === null
        ? ` (not before ${about(from)} h; no upper end, the intervals differ too much)`
        : ` (${about(from)} to ${about(to)} h)`;
  return `${event.charAt(0).toUpperCase()}${event.slice(1)} after about ${about(hours)} h${spread}.`;
}

const lowered = (sentence: string): string => `${sentence.charAt(0).toLowerCase()}${sentence.slice(1)}`;

export function historyBasis({ rates, due }: HistoryResult): Basis[] {
  if (rates.length === 0) return [];
  const [first] = rates;
  const lost = (first.per1000 * first.hours) / 1000;
  const unit = first.of === 'volume' ? 'mL' : 'mm';
  const wall = due.find(({ what, hours }) => what === 'wall' && hours !== null);
  const gap = due.find(({ what, hours }) => what === 'gap' && hours !== null);
  return [
    {
      what: 'Wear rate',
      how: `All that was lost over all the hours, this repair's wear included where its hours are known: ${first.part} ${gauge(lost)} ${unit} / ${plain(first.hours)} h. The range comes from how the intervals scatter, Student with one less than there are.`,
      source: 'Ratio of sums and its standard error: Cochran, Sampling Techniques, 1977, from memory',
    },
    ...[wall, gap].flatMap((one): Basis[] =>
      one?.margin == null || one.hours === null
        ? []
        : [
            {
              what: one.what === 'gap' ? 'Hours until the gap is wide' : `Hours until ${one.part} is thin`,
              how: `${gauge(one.margin)} mm to the limit ${one.what === 'gap' ? 'from the widest coated gap, plate and tips wearing together' : 'from the repaired surface, putty and metal together'}, / ${((one.margin / one.hours) * 1000).toFixed(2)} mm in 1000 h.`,
              source: 'Arithmetic; that wear goes on as it did is an assumption',
            },
          ],
    ),
  ];
}

/** Two digits are all a forecast holds. */
function about(hours: number): string {
  if (hours < 10) return hours.toFixed(0);
  const step = 10 ** (Math.floor(Math.log10(hours)) - 1);
  return String(Math.round(hours / step) * step);
}
