import { GENERIC_COAT, type WholeRepair } from '../../../geometry/job/defaults.ts';
import type { JobFile } from '../../../geometry/job/job-file.ts';
import { counted, figure } from '../../../geometry/sheet/figure.ts';
import type { CoatResult } from '../../../geometry/sheet/result.ts';
import { formatQuantity } from '../../fields/format-quantity.ts';
import { shownUnit } from '../../fields/quantity-units.ts';
import { useView } from '../../view/view-store.ts';
import { areaText } from './area-text.ts';
import { Buy, Weighing } from './Buy.tsx';
import { WorkingOut } from './WorkingOut.tsx';
import { coatWorking, packsWorking, partsWorking } from './workings.ts';
import './Needed.css';

interface CoatNeededProps {
  readonly coat: CoatResult;
  /** The job the result belongs to. */
  readonly job: JobFile;
  readonly repair: WholeRepair;
}

/** Coat to mix, coat by coat, and what to buy. */
export function CoatNeeded({ coat, job, repair }: CoatNeededProps) {
  const units = useView((view) => view.units);
  const sheet = job.coat ?? GENERIC_COAT;
  if (coat.volume === 0) {
    return (
      <section className="section" aria-label="Coat">
        <p className="needed-lead">Nothing to coat</p>
        <p>No face is to be coated.</p>
      </section>
    );
  }
  const film = `${formatQuantity(coat.wetFilm, 'film', units)} ${shownUnit('film', units).symbol}`;
  const { partA, partB } = coat;
  return (
    <section className="section" aria-label="Coat">
      <div>
        <p className="needed-lead">
          Coat {figure(coat.volume)} mL in {counted(coat.perCoat.length, 'coat', 'coats')}
        </p>
        <p>
          {film} wet each, over {areaText(coat.area, units)}. Use each within {Math.floor(coat.workingTime)}{' '}
          min.
        </p>
      </div>
      <table className="needed-table">
        <caption className="unseen">Coats</caption>
        <thead>
          <tr>
            <th scope="col">Coat</th>
            <th scope="col">A</th>
            <th scope="col">B</th>
            <th scope="col">Both</th>
          </tr>
        </thead>
        <tbody>
          {coat.perCoat.map((volume, i) => {
            const share = volume / coat.volume;
            return (
              // biome-ignore lint/suspicious/noArrayIndexKey: coats have no name but their place
              <tr key={i}>
                <th scope="row">{i + 1}</th>
                <td>
                  {figure(partA.mass * share)} g
                  <span className="quiet">{figure(partA.volume * share)} mL</span>
                </td>
                <td>
                  {figure(partB.mass * share)} g
                  <span className="quiet">{figure(partB.volume * share)} mL</span>
                </td>
                <td>{figure(volume)} mL</td>
              </tr>
            );
          })}
        </tbody>
      </table>
      <Weighing weighing={coat.weighing} />
      <Buy packs={coat.packs} />
      <WorkingOut
        of="the coat"
        workings={[coatWorking(coat, sheet, repair), partsWorking(coat, sheet), packsWorking(coat)]}
      />
    </section>
  );
}
