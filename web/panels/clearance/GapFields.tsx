import type { ClearanceFile } from '../../../geometry/job/job-file.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { useJob } from '../../job/job-store.ts';
import { SheetFold } from '../fill/SheetFold.tsx';

/** The lengths of a clearance, each with the words beside it. */
type Length =
  | 'asNew'
  | 'least'
  | 'most'
  | 'shim'
  | 'dressTips'
  | 'tolerance'
  | 'filmTolerance'
  | 'dressTolerance'
  | 'runOut';

interface LengthField {
  readonly name: Length;
  readonly label: string;
  readonly help: string;
}

const BAND: readonly LengthField[] = [
  { name: 'asNew', label: 'Gap as new', help: 'Axial, vane tip to plate, both parts as new.' },
  { name: 'least', label: 'Narrowest allowed', help: 'Under it the vanes may touch.' },
  { name: 'most', label: 'Widest allowed', help: 'Over it the pump loses too much past the tips.' },
];

const SET: readonly LengthField[] = [
  {
    name: 'shim',
    label: 'Shims put in',
    help: 'They move the impeller away from the plate; below 0 shims come out.',
  },
  {
    name: 'dressTips',
    label: 'Dressed off the tips',
    help: 'Under their height as new, every filled vane tip alike, before the coat.',
  },
];

const TOLERANCES: readonly LengthField[] = [
  {
    name: 'tolerance',
    label: 'Gap as set',
    help: 'What the feeler gauge and the adjusting screw leave open.',
  },
  { name: 'filmTolerance', label: 'Coats', help: 'How far the films of both faces together may be off.' },
  {
    name: 'dressTolerance',
    label: 'Dressed faces',
    help: 'How true plate and tips are dressed to the straightedge.',
  },
  { name: 'runOut', label: 'Run-out of the tips', help: 'Half of what a dial gauge shows in a turn.' },
];

/** The gap as new, the band, what is set at assembly, and how far each may be off. */
export function GapFields() {
  const clearance = useJob(({ job }) => job.clearance);
  const parts = useJob(({ job }) => job.parts);
  const edit = useJob((state) => state.edit);
  if (clearance === undefined) return null;
  const set = (label: string, change: Partial<ClearanceFile>, field: string) =>
    edit(
      label,
      (job) => (job.clearance === undefined ? job : { ...job, clearance: { ...job.clearance, ...change } }),
      `clearance.${field}`,
    );
  const ids = (kind: 'wear-plate' | 'impeller') =>
    parts.filter((part) => part.kind === kind).map(({ id }) => id);
  const fields = (list: readonly LengthField[]) =>
    list.map(({ name, label, help }) => (
      <QuantityField
        key={name}
        label={label}
        quantity="length"
        path={`clearance.${name}`}
        value={clearance[name] ?? 0}
        min={name === 'shim' ? -100 : 0}
        help={help}
        onCommit={(value) => set(label.toLowerCase(), { [name]: value }, name)}
      />
    ));
  const whichPart = (field: 'plate' | 'impeller', label: string, choices: readonly string[]) =>
    choices.length > 1 && (
      <ChoiceField
        label={label}
        value={clearance[field]}
        choices={choices.map((id) => ({ value: id, label: id }))}
        onCommit={(id) => set(label.toLowerCase(), { [field]: id }, field)}
      />
    );
  return (
    <section className="section" aria-label="The gap">
      <h2>The gap</h2>
      <div className="rows">
        {whichPart('plate', 'Plate', ids('wear-plate'))}
        {whichPart('impeller', 'Impeller', ids('impeller'))}
        {fields(BAND)}
        <ChoiceField
          label="The gap as new holds"
          value={clearance.asNewHolds ?? 'everywhere'}
          choices={[
            { value: 'everywhere', label: 'Everywhere' },
            { value: 'at the closest', label: 'At the closest' },
          ]}
          help="Everywhere when tips and plate run parallel. At the closest when cone and vane heights open it elsewhere."
          onCommit={(asNewHolds) => set('where the gap holds', { asNewHolds }, 'asNewHolds')}
        />
        {fields(SET)}
      </div>
      <SheetFold heading="How far it may be off">
        <p className="quiet">Each to either side. Left at 0 they do not count.</p>
        {fields(TOLERANCES)}
      </SheetFold>
    </section>
  );
}
