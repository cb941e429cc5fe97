import { wholeRepair } from '../../../geometry/job/defaults.ts';
import { SwitchField } from '../../fields/SwitchField.tsx';
import { useJob } from '../../job/job-store.ts';
import { coatedGroups, isCoated, withCoated } from './coated-groups.ts';

/** Which faces are coated: face by face on a plate, kind by kind on an impeller. */
export function CoatedFaces() {
  const job = useJob((state) => state.job);
  const edit = useJob((state) => state.edit);
  const patterns = wholeRepair(job.repair).coatedFaces;
  const groups = coatedGroups(job);
  const isOnlyPart = job.parts.length === 1;
  return (
    <fieldset className="coated">
      <legend className="field-label">Coat</legend>
      {groups.map((group) => (
        <SwitchField
          key={`${group.part}:${group.face}`}
          label={isOnlyPart ? group.label : `${group.part}, ${group.label.toLowerCase()}`}
          value={isCoated(patterns, group)}
          onCommit={(isOn) =>
            edit('coated faces', (old) => ({
              ...old,
              repair: { ...old.repair, coatedFaces: withCoated(patterns, groups, group, isOn) },
            }))
          }
        />
      ))}
    </fieldset>
  );
}
