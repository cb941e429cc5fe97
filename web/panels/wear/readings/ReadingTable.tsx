import { ChevronLeft, ChevronRight, Plus, Trash2 } from 'lucide-react';
import { type KeyboardEvent, useEffect, useRef, useState } from 'react';
import { Button } from 'react-aria-components';
import { type Fault, faultText } from '../../../../geometry/job/fault.ts';
import { parseQuantity } from '../../../fields/parse-quantity.ts';
import { shownUnit } from '../../../fields/quantity-units.ts';
import type { ReadingPoint, ReadingsMark } from '../../../tools/table-readings.ts';
import { useView } from '../../../view/view-store.ts';
import { forgetDrafts } from '../../forget-drafts.ts';
import { sentenceCase } from '../../sentence-case.ts';
import type { MarkFieldsProps } from '../BlendField.tsx';
import { faceNumbers } from '../face-words.ts';
import { ReadingCell } from './ReadingCell.tsx';
import { withoutReading, withReading } from './reading-edits.ts';
import './ReadingTable.css';

/** Rows a page: more would keep a tablet waiting at every key. */
const PAGE = 50;

type Column = 0 | 1 | 2;
const COLUMNS: readonly Column[] = [0, 1, 2];
/** A cell of the table; the row after the last one is the one that adds. */
interface Cell {
  readonly row: number;
  readonly column: Column;
}

/** Every reading in its row, by keyboard alone: Enter and the arrows go down a column, Tab along a row, the last row adds. */
export function ReadingTable({ mark, part, path, edit }: MarkFieldsProps<ReadingsMark>) {
  const units = useView((view) => view.units);
  const count = mark.points.length;
  const pages = Math.max(1, Math.ceil(count / PAGE));
  const [chosen, setChosen] = useState(0);
  const page = Math.min(chosen, pages - 1);
  const [rowFaults, setRowFaults] = useState<readonly Fault[]>([]);
  const { table, goTo } = useCells(page, setChosen, count);
  const numbers = [...faceNumbers(part, mark.face), { label: 'depth', quantity: 'length' as const }] as const;

  const put = (i: number, column: Column, value: number) => {
    const [first, second, depth] = mark.points[i];
    const point: ReadingPoint = [
      column === 0 ? value : first,
      column === 1 ? value : second,
      column === 2 ? value : depth,
    ];
    return edit(LABELS[column], withReading(mark, i, point), `points[${i}][${column}]`);
  };
  const remove = (i: number) => {
    forgetDrafts(`${path}.points`);
    setRowFaults(edit('remove a reading', withoutReading(mark, i), `points[${i}]`));
    goTo({ row: Math.min(i, count - 2), column: 2 });
  };
  const add = (point: ReadingPoint) => {
    const [first, second, depth] = point;
    return edit('add a reading', { ...mark, points: [...mark.points, [first, second, depth]] }, 'points');
  };
  const from = page * PAGE;
  const shown = mark.points.slice(from, from + PAGE);
  return (
    <div className="reading-table-box">
      <table className="reading-table" ref={table}>
        <caption className="unseen">Readings</caption>
        <thead>
          <tr>
            <th scope="col">
              <span aria-hidden="true">#</span>
              <span className="unseen">Number</span>
            </th>
            {numbers.map(({ label, quantity }) => (
              <th scope="col" key={label}>
                {sentenceCase(label)}, {shownUnit(quantity, units).symbol}
              </th>
            ))}
            <th scope="col">
              <span className="unseen">Remove</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {shown.map((point, i) => {
            const row = from + i;
            return (
              <tr key={row}>
                <th scope="row">{row + 1}</th>
                {COLUMNS.map((column) => (
                  <td key={column}>
                    <ReadingCell
                      label={`${sentenceCase(numbers[column].label)} of reading ${row + 1}`}
                      quantity={numbers[column].quantity}
                      path={`${path}.points[${row}][${column}]`}
                      value={point[column]}
                      onCommit={(value) => put(row, column, value)}
                      onMove={(by) => goTo({ row: row + by, column })}
                    />
                  </td>
                ))}
                <td>
                  <Button
                    className="button button-bare reading-remove"
                    aria-label={`Remove reading ${row + 1}`}
                    isDisabled={count < 2}
                    onPress={() => remove(row)}
                  >
                    <Trash2 aria-hidden="true" />
                  </Button>
                </td>
              </tr>
            );
          })}
        </tbody>
        <AddRow numbers={numbers} onAdd={add} onAdded={() => goTo({ row: count + 1, column: 0 })} />
      </table>
      {rowFaults.map((fault) => (
        <p key={faultText(fault)} className="field-faults" role="alert">
          {faultText(fault)}
        </p>
      ))}
      {pages > 1 && <Pages page={page} count={count} onGo={setChosen} />}
    </div>
  );
}

const LABELS = ['place of a reading', 'place of a reading', 'depth of a reading'] as const;

/** Moves the focus from cell to cell, over the end of a page and on to a row that is only just there. */
function useCells(page: number, setPage: (page: number) => void, count: number) {
  const table = useRef<HTMLTableElement>(null);
  const wanted = useRef<Cell | null>(null);
  const focus = () => {
    const cell = wanted.current;
    if (cell === null) return;
    const isNew = cell.row >= count;
    const row = isNew
      ? table.current?.tFoot?.rows[0]
      : table.current?.tBodies[0].rows[cell.row - page * PAGE];
    const input = row?.querySelectorAll('input')[cell.column];
    if (input === undefined) return;
    wanted.current = null;
    input.focus();
    input.select();
  };
  useEffect(focus);
  const goTo = (cell: Cell) => {
    if (cell.row < 0) return;
    wanted.current = cell;
    const on = Math.floor(cell.row / PAGE);
    if (cell.row < count && on !== page) setPage(on);
    else focus();
  };
  return { table, goTo };
}

interface AddRowProps {
  readonly numbers: readonly { readonly label: string; readonly quantity: 'length' | string }[];
  readonly onAdd: (point: ReadingPoint) => readonly Fault[];
  readonly onAdded: () => void;
}

const EMPTY: readonly string[] = ['', '', ''];

/** The row that adds a reading: Enter goes along it, and from its end adds. */
function AddRow({ numbers, onAdd, onAdded }: AddRowProps) {
  const units = useView((view) => view.units);
  const [texts, setTexts] = useState(EMPTY);
  const [faults, setFaults] = useState<readonly string[]>([]);
  const row = useRef<HTMLTableRowElement>(null);
  const add = () => {
    const values: number[] = [];
    for (const [i, text] of texts.entries()) {
      const parsed = parseQuantity(text, numbers[i].quantity === 'angle' ? 'angle' : 'length', units);
      if ('value' in parsed) values.push(parsed.value);
      else {
        row.current?.querySelectorAll('input')[i].focus();
        return setFaults([`${sentenceCase(numbers[i].label)}: ${parsed.fault}`]);
      }
    }
    const [first, second, depth] = values;
    const refused = onAdd([first, second, depth]).map(faultText);
    setFaults(refused);
    if (refused.length > 0) return;
    setTexts(EMPTY);
    onAdded();
  };
  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>, column: number) => {
    if (event.key !== 'Enter') return;
    event.preventDefault();
    if (column === 2) add();
    else row.current?.querySelectorAll('input')[column + 1].focus();
  };
  return (
    <tfoot>
      <tr ref={row}>
        <th scope="row">
          <Plus aria-hidden="true" />
          <span className="unseen">New</span>
        </th>
        {texts.map((text, column) => (
          <td key={numbers[column].label}>
            <input
              className="reading-cell"
              aria-label={`${sentenceCase(numbers[column].label)} of a new reading`}
              inputMode={numbers[column].quantity === 'length' && units === 'in' ? 'text' : 'decimal'}
              autoComplete="off"
              spellCheck="false"
              value={text}
              onChange={({ target }) => setTexts(texts.map((old, i) => (i === column ? target.value : old)))}
              onKeyDown={(event) => onKeyDown(event, column)}
            />
          </td>
        ))}
        <td>
          <Button className="button button-bare reading-remove" aria-label="Add the reading" onPress={add}>
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

interface PagesProps {
  readonly page: number;
  readonly count: number;
  readonly onGo: (page: number) => void;
}

function Pages({ page, count, onGo }: PagesProps) {
  const last = Math.ceil(count / PAGE) - 1;
  return (
    <div className="reading-pages">
      <Button className="button" isDisabled={page === 0} onPress={() => onGo(page - 1)}>
        <ChevronLeft aria-hidden="true" />
        Before
      </Button>
      <p>
        {page * PAGE + 1} to {Math.min(count, (page + 1) * PAGE)} of {count}
      </p>
      <Button className="button" isDisabled={page === last} onPress={() => onGo(page + 1)}>
        After
        <ChevronRight aria-hidden="true" />
      </Button>
    </div>
  );
}
