import { plain } from '../../../geometry/sheet/figure.ts';
import type { FlowTestResult } from '../../../geometry/sheet/flow-result.ts';
import { ACCEPTANCE_HEADS, acceptanceRows, DUTY_HEADS, dutyRows } from '../../../geometry/sheet/flow-text.ts';
import { typeset } from '../../../geometry/sheet/typeset.ts';
import { keptUnits } from '../kept-units.ts';
import { sentenceCase } from '../sentence-case.ts';
import '../figure-table.css';
import './TestTables.css';

/** What each run does at duty, and how the guarantee stands. */
export function TestTables({ flowTest }: { readonly flowTest: FlowTestResult }) {
  if (flowTest.runs.length === 0) return null;
  return (
    <>
      <TestTable
        caption={`At duty, ${plain(flowTest.duty)} m3/h at ${plain(flowTest.ratedSpeed)} r/min`}
        heads={DUTY_HEADS}
        rows={dutyRows(flowTest)}
      />
      <TestTable caption="Guarantee" heads={ACCEPTANCE_HEADS} rows={acceptanceRows(flowTest)} />
    </>
  );
}

interface TestTableProps {
  readonly caption: string;
  readonly heads: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

const kept = (text: string): string => keptUnits(typeset(text));

/** The sheet's own rows; what is more or less than a value stands below it. */
function TestTable({ caption, heads, rows }: TestTableProps) {
  if (rows.length === 0) return null;
  return (
    <table className="figure-table test-table">
      <caption>{typeset(caption)}</caption>
      <thead>
        <tr>
          {heads.map((head) => (
            <th key={head} scope="col">
              {typeset(sentenceCase(head.replace('>', '')))}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(([name, ...cells], i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: two runs may have one name
          <tr key={i}>
            <th scope="row">{kept(name)}</th>
            {cells.map((cell, column) => {
              const [value, error] = cell.split(' +- ');
              return (
                <td key={heads[column + 1]} data-quiet={heads[column + 1] === '>allowed' || undefined}>
                  {kept(value)}
                  {error !== undefined && <span className="quiet">± {error}</span>}
                </td>
              );
            })}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
