import { GENERIC_FILLER, type WholeRepair } from '../../../geometry/job/defaults.ts';
import type { JobFile } from '../../../geometry/job/job-file.ts';
import { counted, figure } from '../../../geometry/sheet/figure.ts';
import { plusMinus } from '../../../geometry/sheet/readings-text.ts';
import type { FillerResult } from '../../../geometry/sheet/result.ts';
import { typeset } from '../../../geometry/sheet/typeset.ts';
import { Buy, Weighing } from './Buy.tsx';
import { WorkingOut } from './WorkingOut.tsx';
import { mixesWorking, packsWorking, partsWorking, puttyWorking } from './workings.ts';
import './Needed.css';

interface PuttyNeededProps {
  readonly filler: FillerResult;
  /** The job the result belongs to. */
  readonly job: JobFile;
  readonly repair: WholeRepair;
}

/** Putty to mix: how much, in which mixes, what to weigh for each, how long there is to place it, what to buy. */
export function PuttyNeeded({ filler, job, repair }: PuttyNeededProps) {
  const sheet = job.filler ?? GENERIC_FILLER;
  if (filler.volume === 0) {
    return (
      <section className="section" aria-label="Putty">
        <p className="needed-lead">Nothing to fill</p>
        <p>No wear reaches the depth from which it is filled.</p>
      </section>
    );
  }
  const { batches, passes, workingTime } = filler;
  return (
    <section className="section" aria-label="Putty">
      <div>
        <p className="needed-lead">
          Fill {typeset(plusMinus(filler.volume, filler.standardError, 'mL'))}
          {batches.length > 0 && ` in ${counted(batches.length, 'mix', 'mixes')}`}
        </p>
        {filler.standardError > 0 && (
          <p className="quiet">The gauge readings leave that open; it lies within, 19 times in 20.</p>
        )}
        <p>
          {passes > 1 ? `In ${passes} passes, one over the other. ` : 'In one pass. '}
          Place each mix within {Math.floor(workingTime)} min of starting to mix it.
        </p>
      </div>
      {batches.length > 0 && (
        <table className="needed-table">
          <caption className="unseen">Mixes</caption>
          <thead>
            <tr>
              <th scope="col">Mix</th>
              <th scope="col">A</th>
              <th scope="col">B</th>
              <th scope="col">Within</th>
            </tr>
          </thead>
          <tbody>
            {batches.map(({ number, partA, partB, minutes }) => (
              <tr key={number}>
                <th scope="row">{number}</th>
                <td>
                  {figure(partA.mass)} g<span className="quiet">{figure(partA.volume)} mL</span>
                </td>
                <td>
                  {figure(partB.mass)} g<span className="quiet">{figure(partB.volume)} mL</span>
                </td>
                <td>{Math.floor(minutes)} min</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      <Weighing weighing={filler.weighing} />
      <Buy packs={filler.packs} />
      <WorkingOut
        of="the putty"
        workings={[
          puttyWorking(filler, repair),
          partsWorking(filler, sheet),
          mixesWorking(filler, sheet, repair, job.climate?.surface),
          packsWorking(filler),
        ]}
      />
    </section>
  );
}
