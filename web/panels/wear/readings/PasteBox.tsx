import { FolderOpen } from 'lucide-react';
import { type ClipboardEvent, useDeferredValue, useMemo, useState } from 'react';
import { Button, FileTrigger, Label, Text, TextArea, TextField } from 'react-aria-components';
import { type Fault, faultText } from '../../../../geometry/job/fault.ts';
import { MOST_READINGS } from '../../../../geometry/job/mark-schema.ts';
import { counted } from '../../../../geometry/sheet/figure.ts';
import { ChoiceField } from '../../../fields/ChoiceField.tsx';
import { FaultList } from '../../../fields/FaultList.tsx';
import type { ScreenUnits } from '../../../fields/quantity-units.ts';
import { useJob } from '../../../job/job-store.ts';
import { LARGEST_TABLE, readTable, type Table, tooLarge } from '../../../tools/read-table.ts';
import { wallAsNew } from '../../../tools/reading-depth.ts';
import {
  type ColumnChoice,
  columnsOf,
  type FaceColumns,
  isColumnHeading,
} from '../../../tools/table-columns.ts';
import { takeReadings } from '../../../tools/table-readings.ts';
import type { Commas } from '../../../tools/table-separator.ts';
import { useView } from '../../../view/view-store.ts';
import { liveFace } from '../../../wear/live-faces.ts';
import { Refusal } from '../../Refusal.tsx';
import { faceNumbers } from '../face-words.ts';
import { ColumnChoosers } from './ColumnChoosers.tsx';
import { decodeText } from './decode-text.ts';
import { PastePreview } from './PastePreview.tsx';
import type { PlaceOnFace } from './put-down.ts';
import { readingsInHand, readingsOf, withReadings } from './reading-edits.ts';
import { setEntry, useEntry } from './reading-entry.ts';
import '../../../fields/field.css';
import './PasteBox.css';

type OnFace = Omit<PlaceOnFace, 'at'>;

/** A table from a spreadsheet: pasted or opened, looked at, put right, and then taken in one step. */
export function PasteBox(on: OnFace) {
  const text = useEntry((state) => state.pasted);
  const [refusal, setRefusal] = useState('');
  const [commas, setCommas] = useState<Commas>();
  const face = faceColumns(on);
  const put = (pasted: string) => {
    setRefusal('');
    setEntry({ pasted, note: '' });
    followHeadings(text, pasted, face);
  };
  const guard = (event: ClipboardEvent<HTMLTextAreaElement>) => {
    const { length } = event.clipboardData.getData('text/plain');
    if (length <= LARGEST_TABLE) return;
    event.preventDefault();
    setRefusal(tooLarge(length).problem);
  };
  const open = async (file: File | undefined) => {
    if (file === undefined) return;
    // UTF-16 has two bytes a letter.
    if (file.size > 2 * LARGEST_TABLE) return setRefusal(tooLarge(file.size).problem);
    try {
      put(decodeText(new Uint8Array(await file.arrayBuffer())));
    } catch {
      setRefusal('The file could not be read. It may have been moved or taken away.');
    }
  };
  // A long table is read when the typing pauses.
  const settled = useDeferredValue(text);
  const read = useMemo(() => readTable(settled, isColumnHeading, commas), [settled, commas]);
  const problem = refusal === '' && 'problem' in read ? read.problem : refusal;
  return (
    <div className="paste">
      <TextField
        className="field"
        value={text}
        onChange={put}
        isInvalid={problem !== ''}
        validationBehavior="aria"
        autoComplete="off"
        spellCheck="false"
      >
        <Label className="field-label">Columns from a spreadsheet</Label>
        <TextArea className="field-text paste-text" rows={5} onPaste={guard} />
        <Text slot="description" className="field-help">
          {`${face.labels[0]}, ${face.labels[1]}, depth; with headings or without.`}
        </Text>
        <FaultList faults={problem === '' ? [] : [problem]} />
      </TextField>
      <div className="buttons">
        <FileTrigger
          acceptedFileTypes={['.csv', '.txt', '.tsv', 'text/csv', 'text/plain', 'text/tab-separated-values']}
          onSelect={(files) => void open(files?.[0])}
        >
          <Button className="button">
            <FolderOpen aria-hidden="true" />
            Open a file
          </Button>
        </FileTrigger>
      </div>
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
      {'table' in read && read.table.rows.length > 0 && (
        <TableToTake key={shapeOf(read.table)} {...on} table={read.table} face={on.face} columns={face} />
      )}
    </div>
  );
}

const COMMAS: readonly { readonly value: Commas | 'unknown'; readonly label: string }[] = [
  { value: 'columns', label: 'Part the columns' },
  { value: 'decimals', label: 'Mark decimals' },
];

/** Another table of the same shape keeps the columns as they were chosen. */
const shapeOf = ({ headings, columns }: Table): string => [columns, ...headings].join('\t');

function faceColumns({ part, face }: OnFace): FaceColumns {
  const [first, second] = faceNumbers(part, face);
  return { labels: [first.label, second.label], isRound: first.label === 'radius' };
}

/** Where the first rows say anew what was read, the switch follows them; it stays the person's afterwards. */
function followHeadings(before: string, pasted: string, face: FaceColumns): void {
  const headOf = (text: string) => readTable(text.slice(0, HEAD), isColumnHeading, 'columns');
  const [old, now] = [headOf(before), headOf(pasted)];
  if (!('table' in now) || ('table' in old && shapeOf(old.table) === shapeOf(now.table))) return;
  const { kind } = columnsOf(now.table, face);
  if (kind !== null) setEntry({ kind });
}

/** Letters that hold the headings. */
const HEAD = 4000;

interface TableToTakeProps extends OnFace {
  readonly table: Table;
  readonly columns: FaceColumns;
}

function TableToTake({ table, columns, part, index, face }: TableToTakeProps) {
  const screen = useView((view) => view.units);
  const selected = useView((view) => view.selectedMark);
  const kind = useEntry((state) => state.kind);
  const reference = useEntry((state) => state.reference);
  const edit = useJob((state) => state.edit);
  const [choice, setChoice] = useState<ColumnChoice>(() => columnsOf(table, columns).choice);
  const [units, setUnits] = useState<ScreenUnits>();
  const [faults, setFaults] = useState<readonly Fault[]>([]);
  const bare = units ?? screen;
  const mark = readingsInHand(part, face, selected);
  const room = MOST_READINGS - readingsOf(part, mark).length;
  const numbers = useMemo(() => faceNumbers(part, face), [part, face]);
  const found = useMemo(
    () =>
      takeReadings(table, {
        part,
        face,
        numbers: [asColumn(numbers[0]), asColumn(numbers[1])],
        columns: choice,
        kind,
        bare,
        reference,
        wallAt: (first, second) => {
          const live = liveFace(part.id, face);
          return live === undefined ? null : wallAsNew(live.face, [first, second]);
        },
        room,
      }),
    [table, part, face, numbers, choice, kind, bare, reference, room],
  );
  const take = () => {
    const points = found.taken.map(({ point }) => point);
    const refused = edit('paste readings', (job) => withReadings(job, index, { at: mark, face, points }));
    setFaults(refused);
    if (refused.length > 0) return;
    const left = found.refused.length === 0 ? '' : `, ${found.refused.length} refused`;
    setEntry({ pasted: '', note: `${counted(points.length, 'reading', 'readings')} taken${left}.` });
  };
  return (
    <>
      <ColumnChoosers table={table} kind={kind} labels={columns} choice={choice} onChange={setChoice} />
      <ChoiceField
        label="Lengths without a unit are"
        choices={UNITS}
        value={bare}
        onCommit={(chosen) => {
          setUnits(chosen);
          return [];
        }}
      />
      <PastePreview found={found} part={part} face={face} />
      <div className="buttons">
        <Button className="button button-main" isDisabled={found.taken.length === 0} onPress={take}>
          {found.taken.length === 0
            ? 'Nothing to take'
            : `Take ${counted(found.taken.length, 'reading', 'readings')}`}
        </Button>
      </div>
      <Refusal key={faults.map(faultText).join()} faults={faults} />
    </>
  );
}

const UNITS = [
  { value: 'mm', label: 'mm' },
  { value: 'in', label: 'inch' },
] as const;

const asColumn = ({ label, quantity }: ReturnType<typeof faceNumbers>[number]) => ({
  label,
  quantity: quantity === 'angle' ? ('angle' as const) : ('length' as const),
});
