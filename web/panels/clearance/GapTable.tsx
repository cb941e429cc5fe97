import type { ClearanceResult } from '../../../geometry/sheet/clearance-result.ts';
import { shownUnit } from '../../fields/quantity-units.ts';
import { faceLabel } from '../../view/face-label.ts';
import { useView } from '../../view/view-store.ts';
import { SheetFold } from '../fill/SheetFold.tsx';
import { sentenceCase } from '../sentence-case.ts';
import { gapFigure } from './gap-text.ts';
import '../figure-table.css';

type Spread = ClearanceResult['coated'];

/** The gap in its three states, and as it will be over each vane. */
export function GapTable({ clearance }: { readonly clearance: ClearanceResult }) {
  const units = useView((view) => view.units);
  const { symbol } = shownUnit('length', units);
  const row = (words: string, { least, mean, most }: Spread) => (
    <tr key={words}>
      <th scope="row">{words}</th>
      <td>{gapFigure(least, units)}</td>
      <td>{gapFigure(mean, units)}</td>
      <td>{gapFigure(most, units)}</td>
    </tr>
  );
  const head = (
    <thead>
      <tr>
        <th scope="col">Gap, {symbol}</th>
        <th scope="col">Least</th>
        <th scope="col">Mean</th>
        <th scope="col">Most</th>
      </tr>
    </thead>
  );
  return (
    <>
      <table className="figure-table">
        {head}
        <tbody>
          {row('As found', clearance.asFound)}
          {row('Filled', clearance.filled)}
          {row('Filled and coated', clearance.coated)}
        </tbody>
      </table>
      <SheetFold heading="Over each vane, filled and coated">
        <table className="figure-table">
          {head}
          <tbody>
            {clearance.byVane.map(({ tip, coated }) =>
              row(sentenceCase(faceLabel(tip).replace(', tip', '')), coated),
            )}
          </tbody>
        </table>
      </SheetFold>
    </>
  );
}
