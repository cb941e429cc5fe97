import { TriangleAlert } from 'lucide-react';
import { useEffect } from 'react';
import { Disclosure, DisclosurePanel, Heading } from 'react-aria-components';
import type { PlanStepResult } from '../../../geometry/sheet/day-result.ts';
import { momentText, windowText } from '../../../geometry/sheet/duration.ts';
import type { Result } from '../../../geometry/sheet/result.ts';
import { typeset } from '../../../geometry/sheet/typeset.ts';
import type { LocalTime } from '../../../geometry/units.ts';
import { viewStore } from '../../view/view-store.ts';
import { DisclosureButton } from '../DisclosureButton.tsx';
import { cautionsOf, type StepCaution } from './cautions-of.ts';
import { planDays } from './plan-days.ts';
import { lengthWords, troubleWords } from './step-words.ts';
import './StepList.css';

/** Every step by time, with what it waits for, what may go wrong, and what to take care of. */
export function StepList({ result }: { readonly result: Result }) {
  const { plan, day, cautions } = result;
  const care = cautionsOf(plan, cautions);
  useEffect(() => () => standOut(null), []);
  return (
    <section className="section" aria-label="Steps of the work">
      <h2>Steps</h2>
      {planDays(plan, day.start).map(({ day: heading, steps }) => (
        <div key={heading ?? ''} className="plan-step-day">
          {heading === null ? (
            <p className="quiet">Hours and minutes from the start of the work.</p>
          ) : (
            <h3>{heading}</h3>
          )}
          <ol className="plan-step-list">
            {steps.map((step) => (
              <Step
                key={step.id}
                step={step}
                start={day.start}
                cautions={care.of.get(step.id) ?? []}
                isNew={care.first.has(step.id)}
                level={heading === null ? 3 : 4}
              />
            ))}
          </ol>
        </div>
      ))}
      {care.always !== '' && <p className="plan-step-always">{care.always}</p>}
    </section>
  );
}

interface StepProps {
  readonly step: PlanStepResult;
  readonly start: LocalTime | null;
  readonly cautions: readonly StepCaution[];
  /** One of its cautions comes up for the first time: it then lies open. */
  readonly isNew: boolean;
  /** Of the headings below that of the day. */
  readonly level: number;
}

function Step({ step, start, cautions, isNew, level }: StepProps) {
  const trouble = troubleWords(step);
  const { batch, window, note, parts } = step;
  return (
    <li
      className="plan-step"
      data-waits={step.hands ? undefined : ''}
      onPointerEnter={() => standOut(batch)}
      onPointerLeave={() => standOut(null)}
      onFocus={() => standOut(batch)}
      onBlur={() => standOut(null)}
    >
      <p className="plan-step-time">{momentText(start, step.start)}</p>
      <div className="plan-step-body">
        <p className="plan-step-what">
          <span className="plan-step-name">{step.step}</span>
          {parts.length > 0 && `, ${parts.join(' and ')}`}
        </p>
        <p className="quiet">
          {lengthWords(step)}
          {window !== null && `; ${windowText(start, window, step.start)}`}
        </p>
        {note !== '' && <p className="quiet">{typeset(note)}</p>}
        {trouble !== '' && (
          <p className="plan-step-trouble">
            <TriangleAlert aria-hidden="true" />
            {trouble}
          </p>
        )}
        {cautions.length > 0 && <Care cautions={cautions} isNew={isNew} level={level} />}
      </div>
    </li>
  );
}

function Care({ cautions, isNew, level }: Pick<StepProps, 'cautions' | 'isNew' | 'level'>) {
  return (
    <Disclosure className="disclosure plan-step-care" defaultExpanded={isNew}>
      <Heading level={level}>
        <DisclosureButton>Take care: {cautions.map(({ topic }) => topic).join(', ')}</DisclosureButton>
      </Heading>
      <DisclosurePanel className="disclosure-panel">
        <ul className="plan-step-cautions">
          {cautions.map(({ code, text, source }) => (
            <li key={code}>
              {text} <span className="quiet">{source}.</span>
            </li>
          ))}
        </ul>
      </DisclosurePanel>
    </Disclosure>
  );
}

/** The stretches of a mix, on the part. */
function standOut(batch: number | null): void {
  if (viewStore.getState().hoverBatch !== batch) viewStore.getState().set({ hoverBatch: batch });
}
