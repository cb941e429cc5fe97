import { USUAL_COAT_RATE } from '../../../geometry/job/defaults.ts';
import type { PlanFile } from '../../../geometry/job/job-file.ts';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { jobStore, useJob } from '../../job/job-store.ts';
import { Breaks } from './Breaks.tsx';
import { withPlan } from './plan-edits.ts';
import { StepMinutes } from './StepMinutes.tsx';
import { WallTimeField } from './WallTimeField.tsx';
import './DayFields.css';

/** When the work begins, how long the hands are there, and how fast they are. */
export function DayFields() {
  const { start, shiftStart, shiftEnd, coatRate } = useJob((state) => state.job.plan) ?? {};
  return (
    <section className="section" aria-label="The day">
      <h2>The day</h2>
      <WallTimeField
        label="Start of the work"
        kind="datetime-local"
        path="plan.start"
        value={start}
        onCommit={(time) => change('start of the work', { start: time })}
      />
      <div className="rows shift-fields">
        <WallTimeField
          label="Shift starts"
          kind="time"
          path="plan.shiftStart"
          value={shiftStart}
          help="On later days. Empty: at the hour of the start."
          onCommit={(time) => change('start of the shift', { shiftStart: time })}
        />
        <WallTimeField
          label="Shift ends"
          kind="time"
          path="plan.shiftEnd"
          value={shiftEnd}
          help="No handwork after it. Empty: round the clock."
          onCommit={(time) => change('end of the shift', { shiftEnd: time })}
        />
      </div>
      <Breaks />
      <div className="rows">
        <QuantityField
          label="You brush"
          quantity="brushing"
          path="plan.coatRate"
          value={coatRate ?? USUAL_COAT_RATE}
          help={`Area you coat in a minute. Empty: ${USUAL_COAT_RATE} cm²/min, from memory.`}
          onCommit={(rate) => change('coat rate', { coatRate: rate })}
          onClear={() => change('coat rate', { coatRate: undefined })}
        />
      </div>
      <StepMinutes />
    </section>
  );
}

function change(label: string, fields: { readonly [K in keyof PlanFile]?: PlanFile[K] | undefined }) {
  const [field] = Object.keys(fields);
  return jobStore.getState().edit(label, (job) => withPlan(job, fields), `plan.${field}`);
}
