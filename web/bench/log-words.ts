import { plain } from '../../geometry/sheet/figure.ts';
import { type BenchResult, mixName } from './bench-plan.ts';
import { type LogItem, stateOf } from './step-log.ts';

/** `10:02 to 10:15` by the clock that stamped it; with the day when that is not today's. @param wall  the calendar now */
export function itemTimes({ started, done }: LogItem, wall: number): string {
  const today = localDay(wall);
  const start = stampText(started, today);
  if (done === undefined) return `${start}, running`;
  return done === started ? start : `${start} to ${stampText(done, started.slice(0, DAY))}`;
}

/** What was put down of an entry, a line each. */
export function itemWords(item: LogItem, { plan, filler, coat }: BenchResult): string[] {
  const state = stateOf(item);
  const mix = mixName(item.step);
  const lines: string[] = [];
  if (state === 'skipped') lines.push('Skipped');
  if (state === 'discarded') lines.push('Thrown away');
  if (mix !== null && state !== 'skipped') {
    const selfMixing = mix.material === 'fill' ? filler.selfMixing : coat.selfMixing;
    const grams = [amount('A', item.massA), amount('B', item.massB)].filter((words) => words !== '');
    if (grams.length > 0) lines.push(grams.join(', '));
    else if (!selfMixing) lines.push('Grams not noted');
    const packs = [pack('A', item.packA), pack('B', item.packB)].filter((words) => words !== '');
    if (packs.length > 0) lines.push(`Pack ${packs.join(', ')}`);
  }
  if (!plan.some(({ id }) => id === item.step)) lines.push('Not in the plan any more');
  return lines;
}

const DAY = '2026-12-01'.length;

function stampText(stamp: string, today: string): string {
  const clock = stamp.slice('2026-12-01T'.length, '2026-12-01T07:12'.length);
  const day = stamp.slice(0, DAY);
  return day === today ? clock : `${day} ${clock}`;
}

/** `2026-12-01` by this device's calendar. */
function localDay(wall: number): string {
  const day = new Date(wall);
  const twoDigits = (count: number) => String(count).padStart(2, '0');
  return `${day.getFullYear()}-${twoDigits(day.getMonth() + 1)}-${twoDigits(day.getDate())}`;
}

const amount = (part: string, mass: number | undefined): string =>
  mass === undefined ? '' : `${part} ${plain(mass)} g`;
const pack = (part: string, number: string | undefined): string => (number ? `${part} ${number}` : '');
