import { Plus, Trash2 } from 'lucide-react';
import { type KeyboardEvent, useEffect, useRef, useState } from 'react';
import { Button } from 'react-aria-components';
import { type Fault, faultText } from '../../../geometry/job/fault.ts';
import { parseQuantity } from '../../fields/parse-quantity.ts';
import { type Quantity, shownUnit } from '../../fields/quantity-units.ts';
import { forgetDrafts } from '../forget-drafts.ts';
import { ReadingCell } from '../wear/readings/ReadingCell.tsx';
import type { PointFile } from './test-edits.ts';
import { EMPTY_ROW, type RowTexts, setRow, useTestEntry } from './test-entry.ts';
import '../wear/readings/ReadingTable.css';
import './PointTable.css';

interface PointTableProps {
  /** Of the run in the job file. */
  readonly path: string;
  /** "run 2", for labels. */
  readonly name: string;
  readonly points: readonly PointFile[];
  /** The row that adds is in hand from the start. */
  readonly isFresh?: boolean;
  /** Puts all points of the run into the job; the faults, [] when they were taken. */
  readonly onChange: (label: string, points: readonly PointFile[], mergeKey?: string) => readonly Fault[];
}

interface Column {
  readonly field: keyof PointFile;
  readonly label: string;
  readonly quantity: Quantity;
}

const COLUMNS: readonly Column[] = [
  { field: 'flow', label: 'Flow', quantity: 'flow' },
  { field: 'head', label: 'Head', quantity: 'head' },
  { field: 'power', label: 'Power', quantity: 'kilowatts' },
];

/** Every point in its row, by keyboard alone: Enter and the arrows go down a column, Tab along a row, the last row adds. */
export function PointTable({ path, name, points, isFresh = false, onChange }: PointTableProps) {
  const table = useRef<HTMLTableElement>(null);
  const wanted = useRef<readonly [row: number, column: number] | null>(isFresh ? [points.length, 0] : null);
  const [faults, setFaults] = useState<readonly Fault[]>([]);
  const count = points.length;
  const focus = () => {
    if (wanted.current === null) return;
    const [row, column] = wanted.current;
    const cells = row >= count ? table.current?.tFoot?.rows[0] : table.current?.tBodies[0].rows[row];
    const input = cells?.querySelectorAll('input')[column];
    if (input === undefined) return;
    wanted.current = null;
    input.focus();
    input.select();
  };
  useEffect(focus);
  const goTo = (row: number, column: number) => {
    if (row < 0) return;
    wanted.current = [row, column];
    focus();
  };
  const put = (row: number, field: keyof PointFile, value: number) =>
    onChange(
      `${field} of a point`,
      points.map((point, i) => (i === row ? { ...point, [field]: value } : point)),
      `${path}.points[${row}].${field}`,
    );
  const remove = (row: number) => {
    forgetDrafts(`${path}.points`);
    setFaults(
      onChange(
        'remove a point',
        points.filter((_, i) => i !== row),
      ),
    );
    goTo(Math.min(row, count - 2), 2);
  };
  return (
    <div className="reading-table-box">
      <table className="reading-table point-table" ref={table}>
        <caption className="unseen">Points of {name}</caption>
        <thead>
          <tr>
            <th scope="col">
              <span aria-hidden="true">#</span>
              <span className="unseen">Number</span>
            </th>
            {COLUMNS.map(({ field, label, quantity }) => (
              <th scope="col" key={field}>
                {label}, {shownUnit(quantity, 'mm').symbol}
              </th>
            ))}
            <th scope="col">
              <span className="unseen">Remove</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {points.map((point, row) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: points have no name but their place
            <tr key={row}>
              <th scope="row">{row + 1}</th>
              {COLUMNS.map(({ field, label, quantity }, column) => (
                <td key={field}>
                  <ReadingCell
                    label={`${label} of point ${row + 1}, ${name}`}
                    quantity={quantity}
                    path={`${path}.points[${row}].${field}`}
                    value={point[field]}
                    onCommit={(value) => put(row, field, value)}
                    onMove={(by) => goTo(row + by, column)}
                  />
                </td>
              ))}
              <td>
                <Button
                  className="button button-bare reading-remove"
                  aria-label={`Remove point ${row + 1}, ${name}`}
                  isDisabled={count < 2}
                  onPress={() => remove(row)}
                >
                  <Trash2 aria-hidden="true" />
                </Button>
              </td>
            </tr>
          ))}
        </tbody>
        <AddRow
          path={path}
          name={name}
          onAdd={(point) => onChange('add a point', [...points, point])}
          onAdded={() => goTo(count + 1, 0)}
        />
      </table>
      {faults.map((fault) => (
        <p key={faultText(fault)} className="field-faults" role="alert">
          {faultText(fault)}
        </p>
      ))}
    </div>
  );
}

interface AddRowProps {
  readonly path: string;
  readonly name: string;
  readonly onAdd: (point: PointFile) => readonly Fault[];
  readonly onAdded: () => void;
}

/** The row that adds a point: Enter goes along it, and from its end adds. What it does not take stays, with the reason below. */
function AddRow({ path, name, onAdd, onAdded }: AddRowProps) {
  const texts = useTestEntry(({ rows }) => rows[path]) ?? EMPTY_ROW;
  const [faults, setFaults] = useState<readonly string[]>([]);
  const row = useRef<HTMLTableRowElement>(null);
  const cell = (column: number) => row.current?.querySelectorAll('input')[column];
  const add = () => {
    const values: number[] = [];
    for (const [i, { label, quantity }] of COLUMNS.entries()) {
      const parsed = parseQuantity(texts[i], quantity, 'mm', { min: 0 });
      if ('fault' in parsed) {
        cell(i)?.focus();
        return setFaults([`${label}: ${parsed.fault}`]);
      }
      values.push(parsed.value);
    }
    const [flow, head, power] = values;
    const refused = onAdd({ flow, head, power }).map(faultText);
    setFaults(refused);
    if (refused.length > 0) return;
    setRow(path, EMPTY_ROW);
    onAdded();
  };
  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>, column: number) => {
    if (event.key !== 'Enter') return;
    event.preventDefault();
    if (column === COLUMNS.length - 1) add();
    else cell(column + 1)?.focus();
  };
  const type = (column: number, text: string) => {
    const [flow, head, power] = texts;
    const typed: RowTexts = [
      column === 0 ? text : flow,
      column === 1 ? text : head,
      column === 2 ? text : power,
    ];
    setRow(path, typed);
  };
  return (
    <tfoot>
      <tr ref={row}>
        <th scope="row">
          <Plus aria-hidden="true" />
          <span className="unseen">New</span>
        </th>
        {COLUMNS.map(({ field, label }, column) => (
          <td key={field}>
            <input
              className="reading-cell"
              aria-label={`${label} of a new point, ${name}`}
              inputMode="decimal"
              autoComplete="off"
              spellCheck="false"
              value={texts[column]}
              onChange={({ target }) => type(column, target.value)}
              onKeyDown={(event) => onKeyDown(event, column)}
            />
          </td>
        ))}
        <td>
          <Button
            className="button button-bare reading-remove"
            aria-label={`Add the point, ${name}`}
            onPress={add}
          >
            <Plus aria-hidden="true" />
          </Button>
        </td>
      </tr>
      {faults.length > 0 && (
        <tr>
          <td colSpan={5} className="field-faults" role="alert">
            {faults.map((fault) => (
              <p key={fault}>{fault}</p>
            ))}
          </td>
        </tr>
      )}
    </tfoot>
  );
}
