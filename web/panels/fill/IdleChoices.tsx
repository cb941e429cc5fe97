import { TriangleAlert } from 'lucide-react';
import { useMemo, useState } from 'react';
import { Button } from 'react-aria-components';
import type { Fault } from '../../../geometry/job/fault.ts';
import type { JobFile } from '../../../geometry/job/job-file.ts';
import type { Result } from '../../../geometry/sheet/result.ts';
import { useJob } from '../../job/job-store.ts';
import { faceLabel } from '../../view/face-label.ts';
import { useView } from '../../view/view-store.ts';
import { useEstimate } from '../../worker/estimate-client.ts';
import { Refusal } from '../Refusal.tsx';
import { placeText } from '../wear/face-words.ts';
import { type IdleChoice, idleChoices, withChoiceMoved, withoutChoice } from './idle-choices.ts';

/** Choices to fill or to leave that no worn patch lies under any more: taken over to what is left of it, or dropped, by a press. */
export function IdleChoices({ result, job }: { readonly result: Result; readonly job: JobFile }) {
  const regions = useEstimate((state) => state.regions);
  const newest = useJob((state) => state.job);
  const edit = useJob((state) => state.edit);
  const [faults, setFaults] = useState<readonly Fault[]>([]);
  // Between a change and its figures, points and patches are of two different jobs.
  const idle = useMemo(
    () => (newest === job ? idleChoices(job, result, regions) : []),
    [newest, job, result, regions],
  );
  if (idle.length === 0) return null;
  const move = (choice: IdleChoice) => {
    const on = choice.nearby?.region.face;
    const known = regions.find(({ part, face }) => part === choice.part && face === on);
    setFaults(edit('take over a choice', (now) => withChoiceMoved(now, choice, known)));
  };
  const drop = (choice: IdleChoice) => setFaults(edit('drop a choice', (now) => withoutChoice(now, choice)));
  return (
    <ul className="idle-choices">
      {idle.map((choice) => (
        <li key={choice.index}>
          <IdleWords choice={choice} job={job} />
          <div className="buttons">
            {choice.nearby !== null && (
              <Button className="button" onPress={() => move(choice)}>
                {choice.rule.action === 'fill' ? 'Fill' : 'Leave'} region {choice.nearby.number}
              </Button>
            )}
            <Button className="button" onPress={() => drop(choice)}>
              Drop the choice
            </Button>
          </div>
        </li>
      ))}
      <Refusal faults={faults} />
    </ul>
  );
}

function IdleWords({ choice, job }: { readonly choice: IdleChoice; readonly job: JobFile }) {
  const units = useView((view) => view.units);
  const { rule, part: id, face } = choice;
  const part = job.parts.find((known) => known.id === id);
  const where = part === undefined ? '' : `, ${placeText(part, face, [rule.point[0], rule.point[1]], units)}`;
  const on = `${job.parts.length > 1 ? `${id}, ` : ''}${faceLabel(face)}`;
  return (
    <p>
      <TriangleAlert aria-hidden="true" />
      You chose to {rule.action} the wear at {on}
      {where}. Nothing is worn there now, so the choice does nothing.
    </p>
  );
}
