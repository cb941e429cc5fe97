import { Trash2 } from 'lucide-react';
import { Button, Disclosure, DisclosurePanel, Heading } from 'react-aria-components';
import type { PartFile } from '../../../geometry/job/job-file.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { QuantityField } from '../../fields/QuantityField.tsx';
import type { ScreenUnits } from '../../fields/quantity-units.ts';
import { TextInput } from '../../fields/TextInput.tsx';
import { jobStore } from '../../job/job-store.ts';
import { useView } from '../../view/view-store.ts';
import { DisclosureButton } from '../DisclosureButton.tsx';
import { DayField } from './DayField.tsx';
import { type EarlierRepairFile, type RepairChange, withRepair } from './history-edits.ts';
import { lengthText } from './wall-words.ts';
import '../Disclosure.css';

interface EarlierRepairProps {
  readonly repair: EarlierRepairFile;
  /** Place in the list. */
  readonly at: number;
  readonly parts: readonly PartFile[];
  readonly onRemove: () => void;
}

/** What one earlier repair found on one part. */
export function EarlierRepair({ repair, at, parts, onRemove }: EarlierRepairProps) {
  const path = `history.repairs[${at}]`;
  const nr = at + 1;
  const units = useView((view) => view.units);
  const put = (change: RepairChange, field: string) =>
    jobStore.getState().edit('an earlier repair', (job) => withRepair(job, at, change), `${path}.${field}`);
  return (
    <li className="history-repair">
      <Disclosure className="disclosure" defaultExpanded={repair.hours === 0}>
        <div className="section-head">
          <Heading level={4}>
            <DisclosureButton>
              {nr}. {repair.part}, {repair.date}
            </DisclosureButton>
          </Heading>
          <Button
            className="button button-bare"
            aria-label={`Remove earlier repair ${nr}`}
            onPress={onRemove}
          >
            <Trash2 aria-hidden="true" />
          </Button>
        </div>
        <p className="quiet">{summary(repair, units)}</p>
        <DisclosurePanel className="disclosure-panel history-fields">
          {parts.length > 1 && (
            <ChoiceField
              label={`Part of repair ${nr}`}
              choices={parts.map(({ id }) => ({ value: id, label: id }))}
              value={repair.part}
              onCommit={(part) => put({ part }, 'part')}
            />
          )}
          <DayField
            label={`Day of repair ${nr}`}
            path={`${path}.date`}
            value={repair.date}
            onCommit={(date) => put({ date }, 'date')}
          />
          <div className="rows">
            <QuantityField
              label={`Hours before repair ${nr}`}
              quantity="hours"
              path={`${path}.hours`}
              value={repair.hours}
              min={0}
              step={100}
              help={
                repair.hours === 0
                  ? 'Since the repair before it, or since new. Without hours it does not count.'
                  : 'Since the repair before it, or since new.'
              }
              onCommit={(hours) => put({ hours }, 'hours')}
            />
            <QuantityField
              label={`Deepest wear at repair ${nr}`}
              quantity="length"
              path={`${path}.deepest`}
              value={repair.deepest}
              min={0}
              step={0.1}
              onCommit={(deepest) => put({ deepest }, 'deepest')}
            />
            <QuantityField
              label={`Mean wear at repair ${nr}`}
              quantity="length"
              path={`${path}.mean`}
              value={repair.mean ?? null}
              min={0}
              step={0.1}
              help="Over the worn area; empty when it was not noted."
              onCommit={(mean) => put({ mean }, 'mean')}
              onClear={() => put({ mean: undefined }, 'mean')}
            />
            <QuantityField
              label={`Volume lost at repair ${nr}`}
              quantity="volume"
              path={`${path}.volume`}
              value={repair.volume ?? null}
              min={0}
              step={1}
              help="Metal and filler; empty when it was not noted."
              onCommit={(volume) => put({ volume }, 'volume')}
              onClear={() => put({ volume: undefined }, 'volume')}
            />
          </div>
          <TextInput
            label={`Note on repair ${nr}`}
            path={`${path}.note`}
            value={repair.note ?? ''}
            onCommit={(note) => put({ note: note === '' ? undefined : note }, 'note')}
          />
        </DisclosurePanel>
      </Disclosure>
    </li>
  );
}

/** `4.60 mm at its deepest in 3400 h`. */
function summary({ hours, deepest, note }: EarlierRepairFile, units: ScreenUnits): string {
  if (hours === 0) return 'Without hours it does not count yet.';
  return `${lengthText(deepest, units)} at its deepest in ${hours} h${note === undefined ? '' : `. ${note}`}`;
}
