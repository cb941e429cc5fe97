import { TriangleAlert } from 'lucide-react';
import { type ClipboardEvent, useMemo, useState } from 'react';
import {
  Button,
  Disclosure,
  DisclosurePanel,
  Heading,
  Label,
  Text,
  TextArea,
  TextField,
} from 'react-aria-components';
import type { Fault } from '../../../geometry/job/fault.ts';
import { counted } from '../../../geometry/sheet/figure.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { FaultList } from '../../fields/FaultList.tsx';
import { LARGEST_TABLE, readTable, tooLarge } from '../../tools/read-table.ts';
import type { Commas } from '../../tools/table-separator.ts';
import { DisclosureButton } from '../DisclosureButton.tsx';
import { Refusal } from '../Refusal.tsx';
import { isTestHeading, pastedPoints, type TakenPoints } from './pasted-points.ts';
import { MOST_POINTS, type PointFile } from './test-edits.ts';
import { setPasted, useTestEntry } from './test-entry.ts';
import '../../fields/field.css';
import '../wear/readings/PasteBox.css';

interface PastePointsProps {
  readonly path: string;
  readonly name: string;
  /** How many points the run has. */
  readonly held: number;
  readonly onTake: (points: readonly PointFile[]) => readonly Fault[];
}

/** Points from a spreadsheet: pasted, looked at, and then taken in one step. */
export function PastePoints({ path, name, held, onTake }: PastePointsProps) {
  const text = useTestEntry(({ pasted }) => pasted[path]) ?? '';
  const [commas, setCommas] = useState<Commas>();
  const [refusal, setRefusal] = useState('');
  const [faults, setFaults] = useState<readonly Fault[]>([]);
  const [note, setNote] = useState('');
  const read = useMemo(() => readTable(text, isTestHeading, commas), [text, commas]);
  const found = useMemo(
    () =>
      'table' in read && read.table.rows.length > 0 ? pastedPoints(read.table, MOST_POINTS - held) : null,
    [read, held],
  );
  const problem = refusal === '' && 'problem' in read ? read.problem : refusal;
  const guard = (event: ClipboardEvent<HTMLTextAreaElement>) => {
    const { length } = event.clipboardData.getData('text/plain');
    if (length <= LARGEST_TABLE) return;
    event.preventDefault();
    setRefusal(tooLarge(length).problem);
  };
  const take = ({ taken, refused }: TakenPoints) => {
    const kept = onTake(taken.map(({ point }) => point));
    setFaults(kept);
    if (kept.length > 0) return;
    setPasted(path, '');
    const left = refused.length === 0 ? '' : `, ${refused.length} refused`;
    setNote(`${counted(taken.length, 'point', 'points')} taken${left}.`);
  };
  return (
    <Disclosure className="disclosure" defaultExpanded={text !== ''}>
      <Heading level={4} className="paste-heading">
        <DisclosureButton>Paste a table</DisclosureButton>
      </Heading>
      <DisclosurePanel className="disclosure-panel">
        <div className="paste">
          <TextField
            className="field"
            value={text}
            onChange={(pasted) => {
              setRefusal('');
              setNote('');
              setPasted(path, pasted);
            }}
            isInvalid={problem !== ''}
            validationBehavior="aria"
            autoComplete="off"
            spellCheck="false"
          >
            <Label className="field-label">Columns from a spreadsheet, {name}</Label>
            <TextArea className="field-text paste-text" rows={5} onPaste={guard} />
            <Text slot="description" className="field-help">
              Flow, head, power; with headings or without. Without units: m³/h, m, kW.
            </Text>
            <FaultList faults={problem === '' ? [] : [problem]} />
          </TextField>
          {(commas !== undefined || ('problem' in read && read.askCommas)) && (
            <ChoiceField
              label="The commas"
              choices={COMMAS}
              value={commas ?? 'unknown'}
              onCommit={(chosen) => {
                setCommas(chosen === 'unknown' ? undefined : chosen);
                return [];
              }}
            />
          )}
          {found !== null && <Found found={found} onTake={() => take(found)} />}
          {note !== '' && <p role="status">{note}</p>}
          <Refusal faults={faults} />
        </div>
      </DisclosurePanel>
    </Disclosure>
  );
}

const COMMAS: readonly { readonly value: Commas | 'unknown'; readonly label: string }[] = [
  { value: 'columns', label: 'Part the columns' },
  { value: 'decimals', label: 'Mark decimals' },
];

/** Messages; more would not be read. */
const MESSAGES = 20;

function Found({ found, onTake }: { readonly found: TakenPoints; readonly onTake: () => void }) {
  const { taken, refused, columns } = found;
  return (
    <>
      <p className="quiet">Read as {columns}.</p>
      <p>
        {taken.length} to be taken, {refused.length} refused
        {taken.length > 0 && `; the first: ${pointWords(taken[0].point)}`}.
      </p>
      {refused.length > 0 && (
        <ul className="faults paste-refused" aria-label={`${counted(refused.length, 'row', 'rows')} refused`}>
          {refused.slice(0, MESSAGES).map(({ row, sentence }) => (
            <li key={row}>
              <TriangleAlert aria-hidden="true" />
              {sentence}
            </li>
          ))}
          {refused.length > MESSAGES && <li>And {refused.length - MESSAGES} more.</li>}
        </ul>
      )}
      <div className="buttons">
        <Button className="button button-main" isDisabled={taken.length === 0} onPress={onTake}>
          {taken.length === 0 ? 'Nothing to take' : `Take ${counted(taken.length, 'point', 'points')}`}
        </Button>
      </div>
    </>
  );
}

const pointWords = ({ flow, head, power }: PointFile): string =>
  `${short(flow)} m³/h, ${short(head)} m, ${short(power)} kW`;

const short = (value: number): string => String(Number(value.toPrecision(5)));
