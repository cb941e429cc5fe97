import type { PlanStepResult } from '../../../geometry/sheet/day-result.ts';
import { MINUTE } from '../../bench/bench-clock.ts';
import type { BenchResult } from '../../bench/bench-plan.ts';
import { type Clock, lateWords } from '../../bench/bench-words.ts';
import { clockText, timeText } from '../../bench/instant.ts';
import { lateness, plannedStart } from '../../bench/lateness.ts';
import type { BenchTimer } from '../../bench/timers.ts';

/** The time the screen shows: the calendar, what runs, and how a moment of bench time is written. */
export interface ShownTime {
  readonly wall: number;
  readonly timers: readonly BenchTimer[];
  readonly clock: Clock;
}

/** `Planned 10:40, about 20 min`, and how late that is. */
export function PlannedTime({
  result,
  step,
  time,
  hasBegun = false,
}: {
  readonly result: BenchResult;
  readonly step: PlanStepResult;
  readonly time: ShownTime;
  readonly hasBegun?: boolean;
}) {
  const planned = plannedStart(result.day.start, step);
  const late = lateness(step, hasBegun ? null : planned, time.wall, time.timers);
  const length = timeText(step.minutes * MINUTE);
  return (
    <>
      {planned === null
        ? `Planned ${timeText(step.start * MINUTE)} from the start, for ${length}`
        : `Planned ${clockText(planned, time.wall)}, for ${length}`}
      {late !== null && <strong className="bench-late">{lateWords(late)}</strong>}
    </>
  );
}
