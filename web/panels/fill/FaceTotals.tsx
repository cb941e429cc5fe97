import { Disclosure, DisclosurePanel, Heading } from 'react-aria-components';
import type { JobFile } from '../../../geometry/job/job-file.ts';
import { figure } from '../../../geometry/sheet/figure.ts';
import type { Result } from '../../../geometry/sheet/result.ts';
import { formatQuantity } from '../../fields/format-quantity.ts';
import { type ScreenUnits, shownUnit } from '../../fields/quantity-units.ts';
import { faceLabel } from '../../view/face-label.ts';
import { useView } from '../../view/view-store.ts';
import { DisclosureButton } from '../DisclosureButton.tsx';
import { sentenceCase } from '../sentence-case.ts';
import { areaText } from './area-text.ts';
import { type PartTotals, partTotals, type WearTotal } from './face-totals.ts';
import './FaceTotals.css';

/** The wear of each part face by face and in all, folded under the list it adds up. */
export function FaceTotals({ result, job }: { readonly result: Result; readonly job: JobFile }) {
  const units = useView((view) => view.units);
  const parts = result.parts.map((part) => partTotals(part, job)).filter(({ faces }) => faces.length > 0);
  if (parts.length === 0) return null;
  return (
    <Disclosure className="disclosure">
      <Heading level={3} className="totals-heading">
        <DisclosureButton>Totals by face</DisclosureButton>
      </Heading>
      <DisclosurePanel className="disclosure-panel">
        {parts.map((totals) => (
          <PartTable key={totals.part} totals={totals} units={units} isNamed={job.parts.length > 1} />
        ))}
      </DisclosurePanel>
    </Disclosure>
  );
}

interface PartTableProps {
  readonly totals: PartTotals;
  readonly units: ScreenUnits;
  readonly isNamed: boolean;
}

function PartTable({ totals: { part, faces, sum, sharesCorners }, units, isNamed }: PartTableProps) {
  const length = shownUnit('length', units).symbol;
  const area = units === 'in' ? 'in²' : 'cm²';
  return (
    <>
      <table className="totals">
        <caption className={isNamed ? 'quiet' : 'unseen'}>{isNamed ? part : 'Totals by face'}</caption>
        <thead>
          <tr>
            <th scope="col">Face</th>
            <th scope="col">Worn {area}</th>
            <th scope="col">Deepest {length}</th>
            <th scope="col">Lost mL</th>
            <th scope="col">Fill mL</th>
            <th scope="col">Left mL</th>
          </tr>
        </thead>
        <tbody>
          {faces.map((face) => (
            <tr key={face.face}>
              <th scope="row">{sentenceCase(faceLabel(face.face))}</th>
              <Numbers total={face} units={units} />
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">All</th>
            <Numbers total={sum} units={units} />
          </tr>
        </tfoot>
      </table>
      {sharesCorners && (
        <p className="quiet">A corner that two faces share is in both of them, and once in the sum.</p>
      )}
    </>
  );
}

function Numbers({ total, units }: { readonly total: WearTotal; readonly units: ScreenUnits }) {
  const { wornArea, deepest, lost, fill, left } = total;
  return (
    <>
      <td>{areaText(wornArea, units).replace(/ .*$/, '')}</td>
      <td>{formatQuantity(deepest, 'length', units)}</td>
      <td>{amount(lost)}</td>
      <td>{amount(fill)}</td>
      <td>{left === null ? <span title="Not coated">–</span> : amount(left)}</td>
    </>
  );
}

const amount = (value: number): string => (value === 0 ? '0' : figure(value));
