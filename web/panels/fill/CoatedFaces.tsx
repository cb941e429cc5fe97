import { isListed } from '../../../geometry/fill/fill-map.ts';
import { wholeRepair } from '../../../geometry/job/defaults.ts';
import type { JobFile } from '../../../geometry/job/job-file.ts';
import { SwitchField } from '../../fields/SwitchField.tsx';
import { useJob } from '../../job/job-store.ts';
import { plateFaces } from '../wear/face-words.ts';

/** Which faces are coated, face by face. */
export function CoatedFaces() {
  const job = useJob((state) => state.job);
  const edit = useJob((state) => state.edit);
  const patterns = wholeRepair(job.repair).coatedFaces;
  const faces = facesOf(job);
  const coated = faces.filter(({ part, face }) => isListed(patterns, part, face));
  const set = (part: string, face: string, isOn: boolean) => {
    const chosen = faces.filter((known) =>
      known.part === part && known.face === face ? isOn : coated.includes(known),
    );
    const coatedFaces =
      chosen.length === faces.length ? ['*:*'] : chosen.map((known) => `${known.part}:${known.face}`);
    return edit('coated faces', (old) => ({ ...old, repair: { ...old.repair, coatedFaces } }));
  };
  const isOnlyPart = job.parts.length === 1;
  return (
    <fieldset className="coated">
      <legend className="field-label">Coat</legend>
      {faces.map(({ part, face, label }) => (
        <SwitchField
          key={`${part}:${face}`}
          label={isOnlyPart ? label : `${part}, ${label.toLowerCase()}`}
          value={coated.some((known) => known.part === part && known.face === face)}
          onCommit={(isOn) => set(part, face, isOn)}
        />
      ))}
    </fieldset>
  );
}

function facesOf(job: JobFile) {
  return job.parts.flatMap((part) =>
    part.kind === 'wear-plate'
      ? plateFaces(part).map(({ value, label }) => ({ part: part.id, face: value, label }))
      : [],
  );
}
