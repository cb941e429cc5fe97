import { GENERIC_COAT, type WholeRepair } from '../../../geometry/job/defaults.ts';
import type { JobFile } from '../../../geometry/job/job-file.ts';
import { counted, figure, plain } from '../../../geometry/sheet/figure.ts';
import { combWords } from '../../../geometry/sheet/plan-text.ts';
import type { CoatResult } from '../../../geometry/sheet/result.ts';
import { typeset } from '../../../geometry/sheet/typeset.ts';
import { useView } from '../../view/view-store.ts';
import { areaText } from './area-text.ts';
import { Buy, Weighing } from './Buy.tsx';
import { CoatByFace } from './CoatByFace.tsx';
import { CoatLayers } from './CoatLayers.tsx';
import { isGeneric } from './generic.ts';
import { overcoatSpan, timesText } from './times-text.ts';
import { WorkingOut } from './WorkingOut.tsx';
import { wetFilmText } from './wet-film-text.ts';
import {
  coatWasteWorking,
  coatWorking,
  packsWorking,
  partsWorking,
  scaleWorking,
  wetFilmWorking,
} from './workings.ts';
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
  const { lostShare, perCoat } = coat;
  const surface = job.climate?.surface;
  return (
    <section className="section" aria-label="Coat">
      <div>
        <p className="needed-lead">
          Coat {figure(coat.volume)} mL in {counted(perCoat.length, 'coat', 'coats')}
        </p>
        {isGeneric(sheet) && (
          <p className="quiet">Worked out with generic values. Put in your own data sheet, below.</p>
        )}
        <p>
          {wetFilmText(coat, units)} wet each, over {areaText(coat.area, units)}.{' '}
          {typeset(combWords(coat.comb))}
        </p>
        <p className="quiet">{timesText({ ...coat, span: overcoatSpan(coat) }, surface)}</p>
        {lostShare > 0 && (
          <p className="quiet">
            With {plain(repair.coatWaste)} % for waste on top of the need: {percent(lostShare)} of what you
            mix is lost.
          </p>
        )}
      </div>
      <CoatLayers coat={coat} hasDensities={sheet.densityA !== undefined} />
      <Weighing weighing={coat.weighing} />
      <Buy packs={coat.packs} />
      <CoatByFace coat={coat} job={job} />
      <WorkingOut
        of="the coat"
        workings={[
          coatWorking(coat, sheet, repair),
          wetFilmWorking(coat, sheet),
          coatWasteWorking(repair),
          partsWorking(coat, sheet),
          ...scaleWorking(coat.layers.flatMap(({ mixes }) => mixes)),
          packsWorking(coat),
        ]}
      />
    </section>
  );
}

const percent = (share: number): string => `${plain(Number((100 * share).toFixed(1)))} %`;
