import { TriangleAlert } from 'lucide-react';
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { Fault } from '../../../geometry/job/fault.ts';
import { tomorrowAtSeven, wallTime } from '../../../geometry/job/shop-clock.ts';
import { durationText } from '../../../geometry/sheet/duration.ts';
import type { Result } from '../../../geometry/sheet/result.ts';
import type { LocalTime } from '../../../geometry/units.ts';
import { jobStore } from '../../job/job-store.ts';
import { viewStore } from '../../view/view-store.ts';
import { Refusal } from '../Refusal.tsx';
import { withPlan } from './plan-edits.ts';
import { SaveCalendar } from './SaveCalendar.tsx';
import { doneText, elsewhereText, troubleText } from './summary-words.ts';
import './Summary.css';

/** What the day comes to, here and in another shop, and what to do with it. */
export function Summary({ result }: { readonly result: Result }) {
  const { plan, day } = result;
  const trouble = troubleText(plan);
  return (
    <section className="section" aria-label="The work">
      {plan.length === 0 ? (
        <p>Nothing to do: no wear is filled and no face is coated.</p>
      ) : (
        <div className="day-summary">
          <p className="day-lead">Hands-on {durationText(day.handsOn)}</p>
          <p>{doneText(day)}</p>
          {trouble !== '' && (
            <p className="day-trouble">
              <TriangleAlert aria-hidden="true" />
              {trouble}
            </p>
          )}
          <ul className="quiet day-elsewhere">
            {day.elsewhere.map((other) => (
              <li key={other.surface}>{elsewhereText(other, day.start)}</li>
            ))}
          </ul>
        </div>
      )}
      {day.start === null && <StartButtons />}
      <div className="buttons">
        <Button className="button" onPress={() => viewStore.getState().set({ isBenchOpen: true })}>
          Open the bench screen
        </Button>
        {plan.length > 0 && <SaveCalendar result={result} />}
      </div>
    </section>
  );
}

function StartButtons() {
  const [faults, setFaults] = useState<readonly Fault[]>([]);
  const start = (of: (now: LocalTime) => LocalTime) => () => {
    const time = of(wallTime(new Date()));
    const { edit } = jobStore.getState();
    setFaults(edit('start of the work', (job) => withPlan(job, { start: time }), 'plan.start'));
  };
  return (
    <>
      <div className="buttons">
        <Button className="button" onPress={start((now) => now)}>
          Start now
        </Button>
        <Button className="button" onPress={start(tomorrowAtSeven)}>
          Start tomorrow at 7
        </Button>
      </div>
      <Refusal faults={faults} />
    </>
  );
}
