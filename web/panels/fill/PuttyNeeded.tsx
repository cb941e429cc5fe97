import { GENERIC_FILLER, type WholeRepair } from '../../../geometry/job/defaults.ts';
import type { JobFile } from '../../../geometry/job/job-file.ts';
import { counted } from '../../../geometry/sheet/figure.ts';
import { plusMinus } from '../../../geometry/sheet/readings-text.ts';
import type { FillerResult } from '../../../geometry/sheet/result.ts';
import { typeset } from '../../../geometry/sheet/typeset.ts';
import { BatchList } from './BatchList.tsx';
import { Buy, Weighing } from './Buy.tsx';
import { isGeneric } from './generic.ts';
import { firmsUpSpan, timesText } from './times-text.ts';
import { WorkingOut } from './WorkingOut.tsx';
import { mixesWorking, packsWorking, partsWorking, puttyWorking, scaleWorking } from './workings.ts';
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
        {isGeneric(job.filler) && (
          <p className="quiet">Worked out with generic values. Put in your own data sheet, below.</p>
        )}
        {filler.standardError > 0 && (
          <p className="quiet">The gauge readings leave that open; it lies within, 19 times in 20.</p>
        )}
        <p>
          {passes > 1 ? `In ${passes} passes, one over the other. ` : 'In one pass. '}
          Place each mix within {Math.floor(workingTime)} min of starting to mix it.
        </p>
        {(filler.firmsUp !== null || filler.hard !== null) && (
          <p className="quiet">{timesText({ ...filler, span: firmsUpSpan(filler) }, job.climate?.surface)}</p>
        )}
      </div>
      <BatchList filler={filler} job={job} />
      <Weighing weighing={filler.weighing} />
      <Buy packs={filler.packs} />
      <WorkingOut
        of="the putty"
        workings={[
          puttyWorking(filler, repair),
          partsWorking(filler, sheet),
          mixesWorking(filler, sheet, repair, job.climate?.surface),
          ...scaleWorking(filler.batches),
          packsWorking(filler),
        ]}
      />
    </section>
  );
}
