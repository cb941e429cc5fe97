import type { PlanStepResult } from '../../../geometry/sheet/day-result.ts';
import { MINUTE } from '../../bench/bench-clock.ts';
import { type BenchResult, workingTimeOf } from '../../bench/bench-plan.ts';
import { useBench } from '../../bench/bench-store.ts';
import { timerWords } from '../../bench/bench-words.ts';
import { countdownText } from '../../bench/instant.ts';
import type { BenchTimer } from '../../bench/timers.ts';
import type { ShownTime } from './PlannedTime.tsx';
import { isBad, signed } from './Times.tsx';

interface TimeLeftProps {
  readonly result: BenchResult;
  readonly step: PlanStepResult;
  readonly timer: BenchTimer | null;
  /** Bench time the step was begun; null before. */
  readonly since: number | null;
  readonly time: ShownTime;
}

/** The one figure to be read from across the shop. */
export function TimeLeft({ result, step, timer, since, time }: TimeLeftProps) {
  const now = useBench((state) => (state.clock === null ? 0 : state.clock.seen.wall + state.clock.back));
  if (timer !== null) {
    const label = timer.kind === 'mix' ? 'Time left in this mix' : timer.name;
    return (
      <div className="bench-left" data-bad={isBad(timer) || undefined}>
        <p className="bench-label">{timer.phase === 'over' ? 'This mix is over since' : label}</p>
        <Figure text={signed(timer)} label={label} />
        <p className="bench-words">{timerWords(timer, time.clock)}</p>
        {timer.isAhead && (
          <p className="bench-words">
            It was started by a clock that is ahead of this one. How long it has run is not known: check the
            mix.
          </p>
        )}
      </div>
    );
  }
  const workingTime = workingTimeOf(result, step.id);
  if (since === null && workingTime !== null) {
    return (
      <div className="bench-left">
        <p className="bench-label">Working time</p>
        <Figure text={countdownText(workingTime * MINUTE)} />
        <p className="bench-words">Runs from the start of mixing</p>
      </div>
    );
  }
  if (since === null) return null;
  return (
    <div className="bench-left">
      <p className="bench-label">Since the start</p>
      <Figure text={countdownText(Math.max(0, now - since))} label="Since the start" />
      <p className="bench-words">Planned {countdownText(step.minutes * MINUTE)}</p>
    </div>
  );
}

/** Longer than `19:59` or `+4:05`: hours are in it. */
const LONG = 6;

/** @param label  of a time that runs */
function Figure({ text, label }: { readonly text: string; readonly label?: string }) {
  return (
    <p
      className="bench-figure"
      data-long={text.length > LONG || undefined}
      {...(label !== undefined && { role: 'timer', 'aria-label': label })}
    >
      {text}
    </p>
  );
}
