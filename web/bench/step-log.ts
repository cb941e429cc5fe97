import type { JobFile, LogFile } from '../../geometry/job/job-file.ts';
import type { Instant } from '../../geometry/units.ts';
import type { Ms } from './bench-clock.ts';

export type LogItem = LogFile[number];

/** What was put down beside a mix. */
export type MixNotes = Partial<Pick<LogItem, 'massA' | 'massB' | 'packA' | 'packB'>>;

type Outcome = NonNullable<LogItem['outcome']>;
/** `running`: begun and not done. */
export type ItemState = 'running' | 'done' | Outcome;

export function stateOf({ done, outcome }: LogItem): ItemState {
  return done === undefined ? 'running' : (outcome ?? 'done');
}

/** A step is over when it was done or skipped; a mix that was thrown away is still to be made. */
export function isOver(log: LogFile, step: string): boolean {
  return log.some((item) => item.step === step && ['done', 'skipped'].includes(stateOf(item)));
}

/** Place in the log of the step's entry that is begun and not done; null when there is none. */
export function runningPlace(log: LogFile, step: string): number | null {
  const place = log.findLastIndex((item) => item.step === step && stateOf(item) === 'running');
  return place < 0 ? null : place;
}

export const begun = (item: LogItem): Ms => Date.parse(item.started);
/** null while it is running. */
export const ended = (item: LogItem): Ms | null => (item.done === undefined ? null : Date.parse(item.done));

/** The last stamp of all; null when there is none. */
export function newestStamp(log: LogFile): Ms | null {
  return log.length === 0 ? null : Math.max(...log.map((item) => ended(item) ?? begun(item)));
}

/** The same empty list each time where there is none, so that who compares sees no change. */
export function logOf({ log = NONE }: Pick<JobFile, 'log'>): LogFile {
  return log;
}

const NONE: LogFile = [];

/** Begins a step. A step that is running already goes on as it is: a second press is a slip. */
export function startStep(job: JobFile, step: string, at: Instant, notes: MixNotes = {}): JobFile {
  if (runningPlace(logOf(job), step) !== null) return job;
  return withLog(job, [...logOf(job), { step, started: at, ...withoutGaps(notes) }]);
}

/** Stamps a step as done; one that was never begun is begun and done at once. */
export function finishStep(job: JobFile, step: string, at: Instant, notes: MixNotes = {}): JobFile {
  return endStep(job, step, at, notes);
}

export function skipStep(job: JobFile, step: string, at: Instant): JobFile {
  return endStep(job, step, at, {}, 'skipped');
}

/** What is in the bowl goes to waste, and the mix has to be made again. */
export function binMix(job: JobFile, step: string, at: Instant): JobFile {
  return runningPlace(logOf(job), step) === null ? job : endStep(job, step, at, {}, 'discarded');
}

/** Changes what was put down of an entry; undefined takes a value out. */
export function noteItem(job: JobFile, place: number, notes: MixNotes & { note?: string }): JobFile {
  return withLog(
    job,
    logOf(job).map((item, i) => (i === place ? withoutGaps({ ...item, ...notes }) : item)),
  );
}

/** The last stamp and its entry's place; null when the log is empty. */
export function lastStamp(
  log: LogFile,
): { readonly place: number; readonly item: LogItem; readonly kind: 'start' | 'end' } | null {
  let last: { readonly place: number; readonly item: LogItem; readonly kind: 'start' | 'end' } | null = null;
  let latest = -Infinity;
  for (const [place, item] of log.entries()) {
    const end = ended(item);
    if ((end ?? begun(item)) < latest) continue;
    latest = end ?? begun(item);
    last = { place, item, kind: end === null ? 'start' : 'end' };
  }
  return last;
}

/** Takes the last stamp out: the end of an entry, or the entry itself when it has none or was begun and ended with one press. */
export function takeBackLast(job: JobFile): JobFile {
  const log = logOf(job);
  const last = lastStamp(log);
  if (last === null) return job;
  const { place, item, kind } = last;
  if (kind === 'start' || item.done === item.started) {
    return withLog(job, [...log.slice(0, place), ...log.slice(place + 1)]);
  }
  const { done: _, outcome: __, ...again } = item;
  return withLog(job, [...log.slice(0, place), again, ...log.slice(place + 1)]);
}

/** Whether two jobs differ in their log alone: then one step of the undo list takes back what was done here, and nothing else. */
export function differsInLogAlone(before: JobFile, now: JobFile): boolean {
  const [was, is]: Readonly<Record<string, unknown>>[] = [before, now];
  const names = new Set([...Object.keys(was), ...Object.keys(is)]);
  return [...names].every((name) => name === 'log' || was[name] === is[name]) && was.log !== is.log;
}

/** Batch numbers of the packs as they were noted last for the same material. */
export function lastPacks(log: LogFile, material: 'fill' | 'coat'): { packA: string; packB: string } {
  const noted = log.filter(({ step }) => step.startsWith(`${material}:`));
  return {
    packA: noted.findLast(({ packA }) => packA)?.packA ?? '',
    packB: noted.findLast(({ packB }) => packB)?.packB ?? '',
  };
}

function endStep(job: JobFile, step: string, at: Instant, notes: MixNotes, outcome?: Outcome): JobFile {
  const log = logOf(job);
  const place = runningPlace(log, step);
  const item: LogItem = place === null ? { step, started: at, ...withoutGaps(notes) } : log[place];
  // Nothing ends before it began, whoever's clock stamped the start.
  const done = Date.parse(at) < begun(item) ? item.started : at;
  const over: LogItem = outcome === undefined ? { ...item, done } : { ...item, done, outcome };
  return withLog(job, place === null ? [...log, over] : log.map((known, i) => (i === place ? over : known)));
}

function withLog(job: JobFile, log: LogFile): JobFile {
  const { log: _, ...rest } = job;
  return log.length === 0 ? rest : { ...rest, log };
}

function withoutGaps<T extends object>(item: T): T {
  return Object.fromEntries(
    Object.entries(item).filter(([, value]) => value !== undefined && value !== ''),
  ) as T;
}
