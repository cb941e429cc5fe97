import type { LogFile } from '../../../geometry/job/job-file.ts';
import type { PlanStepResult } from '../../../geometry/sheet/day-result.ts';
import type { Result } from '../../../geometry/sheet/result.ts';
import { benchTime } from '../../bench/bench-clock.ts';
import { stepInHand, stepsToDo } from '../../bench/bench-plan.ts';
import { useBench } from '../../bench/bench-store.ts';
import { clockOn } from '../../bench/bench-words.ts';
import { type BenchTimer, benchTimers } from '../../bench/timers.ts';
import { NextStep } from './NextStep.tsx';
import { NowStep } from './NowStep.tsx';
import { Times } from './Times.tsx';
import { UndoStamp } from './UndoStamp.tsx';

interface BenchWorkProps {
  readonly result: Result;
  readonly log: LogFile;
}

/** Now, next, and every time that runs. */
export function BenchWork({ result, log }: BenchWorkProps) {
  const clock = useBench((state) => state.clock);
  const taken = useBench((state) => state.taken);
  if (clock === null) return null;
  const timers = benchTimers(result, log, benchTime(clock));
  const toDo = stepsToDo(result.plan, log);
  const now = stepInHand(toDo, log, taken);
  const clockText = clockOn(clock.seen.wall, clock.back);
  const own = now === null ? undefined : ownTimer(now, timers);
  const others = timers.filter((timer) => timer !== own);
  const time = { wall: clock.seen.wall, timers, clock: clockText };
  return (
    <div className="bench-work">
      {now === null ? (
        <section className="bench-now" aria-label="Now">
          <p className="bench-step">
            {result.plan.length === 0 ? 'Nothing to do yet' : 'All steps are done'}
          </p>
          {result.plan.length === 0 && <p>Mark the wear first. The steps come from what is to be filled.</p>}
          <div className="bench-actions">
            <UndoStamp result={result} />
          </div>
        </section>
      ) : (
        <NowStep result={result} log={log} step={now} timer={own ?? null} time={time} left={toDo.length} />
      )}
      <div className="bench-beside">
        <Times timers={others} clock={clockText} />
        <NextStep result={result} toDo={toDo.filter((step) => step !== now)} time={time} />
      </div>
    </div>
  );
}

/** What belongs to the step in hand stands with it: its own time, else of the waits that hold it back the one that ends last. */
function ownTimer({ id, after }: PlanStepResult, timers: readonly BenchTimer[]): BenchTimer | undefined {
  const waits = timers.filter(({ step, phase }) => phase === 'waiting' && after.includes(step));
  return (
    timers.find(({ step }) => step === id) ??
    waits.reduce<BenchTimer | undefined>(
      (last, wait) => (last && last.moment >= wait.moment ? last : wait),
      undefined,
    )
  );
}
