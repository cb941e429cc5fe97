import { Button, Disclosure, DisclosurePanel, Heading } from 'react-aria-components';
import type { PlanStepResult } from '../../../geometry/sheet/day-result.ts';
import type { BenchResult } from '../../bench/bench-plan.ts';
import { benchStore } from '../../bench/bench-store.ts';
import { DisclosureButton } from '../DisclosureButton.tsx';
import { PlannedTime, type ShownTime } from './PlannedTime.tsx';

interface NextStepProps {
  readonly result: BenchResult;
  /** Without the step in hand. */
  readonly toDo: readonly PlanStepResult[];
  readonly time: ShownTime;
}

/** The following step with its planned time, and behind it all that is still to do. */
export function NextStep({ result, toDo, time }: NextStepProps) {
  const [next, ...later] = toDo;
  if (next === undefined) return null;
  return (
    <section className="bench-next" aria-label="Next">
      <h2>Next</h2>
      <p className="bench-next-step">{next.step}</p>
      <p>
        {next.parts.join(', ')}
        {next.parts.length > 0 && '. '}
        <PlannedTime result={result} step={next} time={time} />
      </p>
      <Disclosure className="disclosure">
        <Heading level={3}>
          <DisclosureButton>Still to do: {toDo.length}</DisclosureButton>
        </Heading>
        <DisclosurePanel className="disclosure-panel">
          <ol className="bench-steps">
            {[next, ...later].map((step) => (
              <li key={step.id}>
                <p>
                  <b>{step.step}</b>
                  <span>
                    {step.parts.join(', ')}
                    {step.parts.length > 0 && '. '}
                    <PlannedTime result={result} step={step} time={time} />
                  </span>
                </p>
                <Button
                  className="button bench-button"
                  aria-label={`Take in hand: ${step.step}`}
                  onPress={() => benchStore.getState().set({ taken: step.id })}
                >
                  Take in hand
                </Button>
              </li>
            ))}
          </ol>
        </DisclosurePanel>
      </Disclosure>
    </section>
  );
}
