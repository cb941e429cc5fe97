import { useEstimate } from '../worker/estimate-client.ts';
import { DayFields } from './plan/DayFields.tsx';
import { StepList } from './plan/StepList.tsx';
import { Summary } from './plan/Summary.tsx';
import { TimeLine } from './plan/TimeLine.tsx';
import { TimesHere } from './plan/TimesHere.tsx';
import { Weather } from './plan/Weather.tsx';

/** The day from washing to the test run: whether the weather allows it, when each step falls due, and what it waits for. */
export function PlanPanel() {
  const result = useEstimate((state) => state.result);
  const job = useEstimate((state) => state.job);
  if (result === null || job === null) return <p className="quiet">Working out the figures</p>;
  return (
    <div className="panel-body">
      <Summary result={result} />
      <Weather result={result} />
      <DayFields />
      {result.plan.length > 0 && (
        <>
          <TimeLine job={job} result={result} />
          <StepList result={result} />
        </>
      )}
      <TimesHere job={job} result={result} />
    </div>
  );
}
