import { Disclosure, DisclosurePanel, Heading } from 'react-aria-components';
import type { JobFile } from '../../../geometry/job/job-file.ts';
import { figure } from '../../../geometry/sheet/figure.ts';
import type { CoatResult } from '../../../geometry/sheet/result.ts';
import { faceLabel } from '../../view/face-label.ts';
import { useView } from '../../view/view-store.ts';
import { DisclosureButton } from '../DisclosureButton.tsx';
import { sentenceCase } from '../sentence-case.ts';
import { areaText } from './area-text.ts';
import './FaceTotals.css';

/** Area and coat of each face, folded. */
export function CoatByFace({ coat, job }: { readonly coat: CoatResult; readonly job: JobFile }) {
  const units = useView((view) => view.units);
  const area = (size: number) => areaText(size, units).replace(/ .*$/, '');
  return (
    <Disclosure className="disclosure">
      <Heading level={3} className="totals-heading">
        <DisclosureButton>Area and coat by face</DisclosureButton>
      </Heading>
      <DisclosurePanel className="disclosure-panel">
        <table className="totals">
          <caption className="unseen">Area and coat by face</caption>
          <thead>
            <tr>
              <th scope="col">Face</th>
              <th scope="col">Area {units === 'in' ? 'in²' : 'cm²'}</th>
              <th scope="col">Coat mL</th>
            </tr>
          </thead>
          <tbody>
            {coat.faces.map((face) => (
              <tr key={`${face.part}:${face.face}`}>
                <th scope="row">
                  {sentenceCase(
                    job.parts.length > 1 ? `${face.part}, ${faceLabel(face.face)}` : faceLabel(face.face),
                  )}
                </th>
                <td>{area(face.area)}</td>
                <td>{figure(face.volume)}</td>
              </tr>
            ))}
          </tbody>
          <tfoot>
            <tr>
              <th scope="row">All</th>
              <td>{area(coat.area)}</td>
              <td>{figure(coat.volume)}</td>
            </tr>
          </tfoot>
        </table>
      </DisclosurePanel>
    </Disclosure>
  );
}
