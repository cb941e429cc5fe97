import { Check, Play, SkipForward, Trash2, TriangleAlert } from 'lucide-react';
import { Button } from 'react-aria-components';
import type { LogFile } from '../../../geometry/job/job-file.ts';
import type { PlanStepResult } from '../../../geometry/sheet/day-result.ts';
import type { Result } from '../../../geometry/sheet/result.ts';
import { mixName, mixWords } from '../../bench/bench-plan.ts';
import { begun, lastPacks, runningPlace } from '../../bench/step-log.ts';
import type { BenchTimer } from '../../bench/timers.ts';
import { draftOf, useWeighedDraft } from '../../bench/weighed-draft.ts';
import { useJob } from '../../job/job-store.ts';
import { benchPress, isPress } from './bench-edits.ts';
import { PlannedTime, type ShownTime } from './PlannedTime.tsx';
import { TimeLeft } from './TimeLeft.tsx';
import { lowerFirst, UndoStamp } from './UndoStamp.tsx';
import { useMixInHand } from './use-mix-in-hand.ts';
import { Weigh } from './Weigh.tsx';
import { WeighFields } from './WeighFields.tsx';

interface NowStepProps {
  readonly result: Result;
  readonly log: LogFile;
  readonly step: PlanStepResult;
  /** The time that belongs to this step; null when none runs. */
  readonly timer: BenchTimer | null;
  readonly time: ShownTime;
  /** How many steps are not over, this one too. */
  readonly left: number;
}

/** The step in hand: where, how long, what to weigh, what to watch for, and the presses that stamp it. */
export function NowStep({ result, log, step, timer, time, left }: NowStepProps) {
  const title = useJob((state) => state.job.title);
  const draft = useWeighedDraft(draftOf(title, step.id));
  const place = runningPlace(log, step.id);
  const running = place === null ? null : log[place];
  const mix = mixName(step.id);
  const all = result.plan.filter(({ hands }) => hands).length;
  const words = lowerFirst(step.step);
  const packs = mix === null ? {} : lastPacks(log, mix.material);
  const notes = { ...packs, ...draft };
  const mixing = useMixInHand(result, step.id, running ?? notes, place);
  const cautions = result.cautions.filter(({ code }) => step.cautions.includes(code));
  return (
    <section className="bench-now" aria-label="Now">
      <p className="bench-count">
        Now: step {all - left + 1} of {all}
      </p>
      <h2 className="bench-step">{step.step}</h2>
      <p className="bench-place">
        {step.parts.length > 0 && <b>{step.parts.join(', ')}</b>}
        {step.note !== '' && <span>{step.note}</span>}
        <span>
          <PlannedTime result={result} step={step} time={time} hasBegun={running !== null} />
        </span>
      </p>
      {step.trouble !== null && (
        <p className="bench-trouble">
          <TriangleAlert aria-hidden="true" />
          {step.trouble === 'window-missed'
            ? 'The plan misses the window of this step.'
            : 'No working hours fit this step.'}
        </p>
      )}
      <div className="bench-figures">
        <TimeLeft
          result={result}
          step={step}
          timer={timer}
          since={running === null ? null : begun(running)}
          time={time}
        />
        {mixing !== null && <Weigh mix={mixing} />}
      </div>
      <div className="bench-actions">
        <Button
          className={`button bench-button bench-press ${running === null && timer?.phase !== 'waiting' ? 'button-main' : ''}`}
          // Keeps the focus, where a disabled button would drop it.
          isPending={running !== null}
          onPress={() => isPress('Start') && benchPress.start(step.id, words, notes)}
        >
          <Play aria-hidden="true" />
          {running !== null ? 'Started' : mix === null ? 'Start' : 'Start mix'}
        </Button>
        <Button
          className={`button bench-button bench-press ${running === null ? '' : 'button-main'}`}
          onPress={() => isPress('Done') && benchPress.done(step.id, words, notes)}
        >
          <Check aria-hidden="true" />
          Done
        </Button>
        {running !== null && mix !== null && (
          <Button
            className="button bench-button"
            onPress={() => isPress('Bin') && benchPress.bin(step.id, lowerFirst(mixWords(result, mix)))}
          >
            <Trash2 aria-hidden="true" />
            Throw this mix away
          </Button>
        )}
        {running === null && (
          <Button
            className="button bench-button"
            onPress={() => isPress('Skip') && benchPress.skip(step.id, words)}
          >
            <SkipForward aria-hidden="true" />
            Skip
          </Button>
        )}
        <UndoStamp result={result} />
      </div>
      {mixing !== null && <WeighFields key={step.id} mix={mixing} />}
      {cautions.length > 0 && (
        <ul className="bench-cautions" aria-label="Cautions">
          {cautions.map(({ code, text }) => (
            <li key={code}>
              <TriangleAlert aria-hidden="true" />
              {text}
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
