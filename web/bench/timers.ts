import type { LogFile } from '../../geometry/job/job-file.ts';
import { MINUTE, type Ms } from './bench-clock.ts';
import { type BenchResult, mixName, mixWords, namedStep, workingTimeOf } from './bench-plan.ts';
import { begun, ended, isOver, type LogItem, stateOf } from './step-log.ts';

/** A time that runs since a stamp in the log. Worked out from the stamp alone, so sleep and reload change nothing. */
export interface BenchTimer {
  /** The same as long as it is the same time: `mix:fill:3@…`. */
  readonly id: string;
  readonly kind: 'mix' | 'dress' | 'overcoat' | 'wait';
  /** id of the step that mixes it, or that it holds back. */
  readonly step: string;
  /** What it is the time of: "Mix 3". */
  readonly name: string;
  readonly phase: TimerPhase;
  /** To what comes next; when nothing comes any more, since the last came. Never negative. */
  readonly span: Ms;
  /** Bench time of that moment. */
  readonly moment: Ms;
  /** Bench time it closes, where it opens and closes. */
  readonly closes: Ms | null;
  /** It was stamped by a clock that was ahead of this one: how long it ran is not known. */
  readonly isAhead: boolean;
}

/**
 * `running`, `ending`, `over`: a mix. `early`, `open`, `closing`, `closed`: a window, too soft before it opens.
 * `waiting`, `passed`: something that just takes its time.
 */
export type TimerPhase =
  | 'running'
  | 'ending'
  | 'over'
  | 'early'
  | 'open'
  | 'closing'
  | 'closed'
  | 'waiting'
  | 'passed';

/** Before a mix is over, and before a window closes. Common practice: time to finish a stroke; time to go and get the tools. */
const MIX_ENDS_SOON: Ms = 2 * MINUTE;
const CLOSES_SOON: Ms = 10 * MINUTE;
/** Stamps are whole seconds, and clocks of two devices differ a little. */
const AHEAD: Ms = 5000;

/**
 * All times that run, the most urgent first.
 * @param now  bench time
 */
export function benchTimers(result: BenchResult, log: LogFile, now: Ms): BenchTimer[] {
  const timers = [
    ...mixTimers(result, log, now),
    ...dressTimers(result, log, now),
    ...overcoatTimers(result, log, now),
    ...waits(result, log, now),
  ];
  return timers.sort((a, b) => urgency(a) - urgency(b));
}

/** Working time of every mix that is begun and not done, on the plan or not. */
function mixTimers(result: BenchResult, log: LogFile, now: Ms): BenchTimer[] {
  return log.flatMap((item): BenchTimer[] => {
    const minutes = workingTimeOf(result, item.step);
    const name = mixName(item.step);
    if (stateOf(item) !== 'running' || minutes === null || name === null) return [];
    const moment = begun(item) + minutes * MINUTE;
    const left = moment - now;
    const phase = left <= 0 ? 'over' : left <= MIX_ENDS_SOON ? 'ending' : 'running';
    return [
      {
        id: `mix:${item.step}@${item.started}`,
        kind: 'mix',
        step: item.step,
        name: mixWords(result, name),
        phase,
        // A stamp from ahead gives no more time than there is.
        span: Math.min(Math.abs(left), left > 0 ? minutes * MINUTE : Infinity),
        moment,
        closes: null,
        isAhead: begun(item) - now > AHEAD,
      },
    ];
  });
}

/** When each fill can be dressed, from its end on, until its dressing is begun. */
function dressTimers(result: BenchResult, log: LogFile, now: Ms): BenchTimer[] {
  const { firmsUp } = result.filler;
  if (firmsUp === null) return [];
  return log.flatMap((item): BenchTimer[] => {
    const name = mixName(item.step);
    const end = ended(item);
    if (name?.material !== 'fill' || end === null || stateOf(item) !== 'done') return [];
    const dress = `dress:${name.number}`;
    // Nothing waits for it when the plan does not dress it.
    if (!result.plan.some(({ id }) => id === dress) || hasBegun(log, dress)) return [];
    return [
      windowTimer(
        { id: `dress:${item.step}@${item.done}`, kind: 'dress', step: dress, name: mixWords(result, name) },
        { opens: end + firmsUp.from * MINUTE, closes: end + firmsUp.to * MINUTE },
        now,
      ),
    ];
  });
}

/**
 * When the next coat can go on, until its first mix is begun: not before the last mix of this coat allows it, and no later than the first
 * mix does, which has set longest.
 */
function overcoatTimers(result: BenchResult, log: LogFile, now: Ms): BenchTimer[] {
  const { overcoat, layers } = result.coat;
  if (overcoat === null) return [];
  return layers.slice(0, -1).flatMap((layer, i): BenchTimer[] => {
    const done = coatEnds(log, layer.number);
    const planned = result.plan.filter(({ kind, coat }) => kind === 'coat' && coat === layer.number);
    const next = result.plan.find(({ kind, coat }) => kind === 'coat' && coat === layers[i + 1].number);
    const isWhole = planned.length > 0 && planned.every(({ id }) => isOver(log, id));
    if (done.length === 0 || !isWhole || next === undefined || hasCoat(log, layers[i + 1].number)) return [];
    return [
      windowTimer(
        {
          id: `overcoat:${layer.number}@${Math.max(...done)}`,
          kind: 'overcoat',
          step: next.id,
          name: `Coat ${layer.number}`,
        },
        {
          opens: Math.max(...done) + overcoat.from * MINUTE,
          closes: Math.min(...done) + overcoat.to * MINUTE,
        },
        now,
      ),
    ];
  });
}

/**
 * What just takes its time after a step, by the plan: solvent flashing off, the last coat hardening; firming up and setting too, where
 * the data sheet gives them no window.
 */
function waits({ plan, filler, coat }: BenchResult, log: LogFile, now: Ms): BenchTimer[] {
  const kinds = new Set<string>(['flash-off', 'harden']);
  if (filler.firmsUp === null) kinds.add('firm-up');
  if (coat.overcoat === null) kinds.add('overcoat');
  return plan.flatMap((step): BenchTimer[] => {
    if (!kinds.has(step.kind)) return [];
    const ends = step.after.map((id) => lastEnd(log, id));
    if (ends.length === 0 || ends.some((end) => end === null) || isFollowed(plan, log, step.id)) return [];
    const from = Math.max(...ends.map((end) => end ?? 0));
    const moment = from + step.minutes * MINUTE;
    const left = moment - now;
    return [
      {
        id: `wait:${step.id}@${from}`,
        kind: 'wait',
        step: step.id,
        name: namedStep(plan, step),
        phase: left > 0 ? 'waiting' : 'passed',
        span: Math.abs(left),
        moment,
        closes: null,
        isAhead: false,
      },
    ];
  });
}

function windowTimer(
  named: Pick<BenchTimer, 'id' | 'kind' | 'step' | 'name'>,
  { opens, closes }: { readonly opens: Ms; readonly closes: Ms },
  now: Ms,
): BenchTimer {
  const isOpen = now >= opens;
  const phase =
    now >= closes ? 'closed' : !isOpen ? 'early' : closes - now <= CLOSES_SOON ? 'closing' : 'open';
  const moment = phase === 'early' ? opens : closes;
  return { ...named, phase, span: Math.abs(moment - now), moment, closes, isAhead: false };
}

/** Smaller is more urgent, ms: an overdue mix first, then what is due next; what is too late already waits behind what can still be met. */
function urgency({ phase, span }: BenchTimer): number {
  if (phase === 'over') return -1;
  if (phase === 'closed') return CLOSES_SOON;
  return phase === 'passed' ? Infinity : span;
}

const hasBegun = (log: LogFile, step: string): boolean =>
  log.some((item) => item.step === step && stateOf(item) !== 'discarded');

function hasCoat(log: LogFile, number: number): boolean {
  return log.some((item) => isOfCoat(item, number) && stateOf(item) !== 'discarded');
}

function coatEnds(log: LogFile, number: number): Ms[] {
  return log
    .filter((item) => isOfCoat(item, number) && stateOf(item) === 'done')
    .map((item) => ended(item) ?? 0);
}

function isOfCoat({ step }: LogItem, number: number): boolean {
  const name = mixName(step);
  return name?.material === 'coat' && name.number === number;
}

/** When a step was done last; null when it was not. A step that was skipped makes nothing wait. */
function lastEnd(log: LogFile, step: string): Ms | null {
  const ends = log
    .filter((item) => item.step === step && stateOf(item) === 'done')
    .map((item) => ended(item) ?? 0);
  return ends.length === 0 ? null : Math.max(...ends);
}

/** What waited for it has been begun. */
function isFollowed(plan: BenchResult['plan'], log: LogFile, wait: string): boolean {
  return plan.some(({ id, after }) => after.includes(wait) && hasBegun(log, id));
}
