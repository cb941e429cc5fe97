import { useId } from 'react';
import { ChoiceField } from '../../../fields/ChoiceField.tsx';
import { shortened, type Table } from '../../../tools/read-table.ts';
import type { ReadingKind } from '../../../tools/reading-depth.ts';
import { type ColumnChoice, columnsOf, type FaceColumns } from '../../../tools/table-columns.ts';
import { sentenceCase } from '../../sentence-case.ts';

interface ColumnChoosersProps {
  readonly table: Table;
  readonly kind: ReadingKind;
  readonly labels: FaceColumns;
  readonly choice: ColumnChoice;
  readonly onChange: (choice: ColumnChoice) => void;
}

const VALUE_LABELS: Readonly<Record<ReadingKind, string>> = {
  depth: 'Depth',
  'two-readings': 'Gauge reading',
  'wall-left': 'Wall left',
};

/** Which column holds what, as it was found, to be put right. */
export function ColumnChoosers({ table, kind, labels, choice, onChange }: ColumnChoosersProps) {
  const [first, second] = choice.places === 'xy' ? ['x', 'y'] : labels.labels;
  const chooser = (name: Exclude<keyof ColumnChoice, 'places'>, label: string, none: string) => (
    <ColumnChooser
      label={sentenceCase(label)}
      none={none}
      table={table}
      value={choice[name]}
      onChange={(column) => onChange({ ...choice, [name]: column })}
    />
  );
  return (
    <>
      {labels.isRound && (
        <ChoiceField
          label="Places are given as"
          choices={[
            { value: 'own', label: 'Radius and angle' },
            { value: 'xy', label: 'x and y' },
          ]}
          value={choice.places}
          onCommit={(places) => {
            onChange({ ...columnsOf(table, labels).choice, ...choice, places });
            return [];
          }}
        />
      )}
      <div className="column-choosers">
        {chooser('first', first, 'Choose a column')}
        {chooser('second', second, 'Choose a column')}
        {chooser('value', VALUE_LABELS[kind], 'Choose a column')}
        {kind === 'two-readings' && chooser('reference', 'On sound metal', 'As typed below')}
      </div>
    </>
  );
}

interface ColumnChooserProps {
  readonly label: string;
  readonly none: string;
  readonly table: Table;
  readonly value: number | null;
  readonly onChange: (column: number | null) => void;
}

/** Further to the right nobody looks for readings. */
const MOST_COLUMNS = 60;

function ColumnChooser({ label, none, table, value, onChange }: ColumnChooserProps) {
  const id = useId();
  const columns = Array.from({ length: Math.min(table.columns, MOST_COLUMNS) }, (_, i) => i);
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        {label}
      </label>
      <select
        className="field-text"
        id={id}
        value={value ?? ''}
        onChange={({ target }) => onChange(target.value === '' ? null : Number(target.value))}
      >
        <option value="">{none}</option>
        {columns.map((column) => (
          <option key={column} value={column}>
            {`${column + 1}: ${sampleOf(table, column)}`}
          </option>
        ))}
      </select>
    </div>
  );
}

/** The heading of a column, or what stands in its first row. */
function sampleOf({ headings, rows }: Table, column: number): string {
  const heading = headings[column] ?? '';
  return shortened(heading !== '' ? heading : (rows[0]?.cells[column] ?? '')) || 'empty';
}
