import { Disclosure, DisclosurePanel, Heading } from 'react-aria-components';
import { USUAL_STEP_TIMES } from '../../../geometry/job/defaults.ts';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { jobStore, useJob } from '../../job/job-store.ts';
import { DisclosureButton } from '../DisclosureButton.tsx';
import { type StepMinutesFile, withStepMinutes } from './plan-edits.ts';

/** What each step takes this shop. */
export function StepMinutes() {
  const own = useJob((state) => state.job.plan?.minutes);
  return (
    <Disclosure className="disclosure">
      <Heading level={3}>
        <DisclosureButton>Minutes of each step</DisclosureButton>
      </Heading>
      <DisclosurePanel className="disclosure-panel">
        <p className="quiet">
          Filling and brushing follow from the putty, the area and your speed. These do not; the usual times
          are from memory, put in your own. Emptied, a field goes back to the usual time.
        </p>
        <div className="rows">
          {STEPS.map(([name, label]) => (
            <QuantityField
              key={name}
              label={label}
              quantity="minutes"
              path={`plan.minutes.${name}`}
              value={own?.[name] ?? USUAL_STEP_TIMES[name]}
              min={0}
              onCommit={(minutes) => change(name, minutes)}
              onClear={() => change(name, undefined)}
            />
          ))}
        </div>
      </DisclosurePanel>
    </Disclosure>
  );
}

const STEPS: readonly (readonly [keyof StepMinutesFile, string])[] = [
  ['wash', 'Wash, each part'],
  ['blast', 'Blast, each part'],
  ['blowDown', 'Blow down, each part'],
  ['wipe', 'Solvent wipe, each part'],
  ['flashOff', 'Flash off, waiting'],
  ['dress', 'Dress, each mix'],
  ['touchTest', 'Touch test'],
  ['dressHard', 'Dress to size, each part'],
  ['check', 'Check gap and balance'],
  ['assemble', 'Assemble'],
  ['test', 'Test run'],
];

function change(name: keyof StepMinutesFile, minutes: number | undefined) {
  const edited = jobStore.getState().edit;
  return edited(
    'minutes of a step',
    (job) => withStepMinutes(job, { [name]: minutes }),
    `plan.minutes.${name}`,
  );
}
