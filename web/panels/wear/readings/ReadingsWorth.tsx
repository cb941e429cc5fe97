import { Check, Crosshair, Ruler } from 'lucide-react';
import { Button } from 'react-aria-components';
import type { PartFile } from '../../../../geometry/job/job-file.ts';
import { counted, figure } from '../../../../geometry/sheet/figure.ts';
import type { EnoughResult, NextResult, ReadingsResult } from '../../../../geometry/sheet/readings-result.ts';
import { readingsHow } from '../../../../geometry/sheet/readings-text.ts';
import { typeset } from '../../../../geometry/sheet/typeset.ts';
import { formatQuantity } from '../../../fields/format-quantity.ts';
import { type ScreenUnits, shownUnit } from '../../../fields/quantity-units.ts';
import { faceLabel } from '../../../view/face-label.ts';
import { useView, viewStore } from '../../../view/view-store.ts';
import { setReadingPlace } from '../../../wear/reading-place.ts';
import { useEstimate } from '../../../worker/estimate-client.ts';
import { WorkingOut } from '../../fill/WorkingOut.tsx';
import { sentenceCase } from '../../sentence-case.ts';
import { placeText } from '../face-words.ts';
import { ReadingsCovariance } from './ReadingsCovariance.tsx';
import { ReadingWorth } from './ReadingWorth.tsx';
import './ReadingsWorth.css';

interface ReadingsWorthProps {
  readonly part: PartFile;
  /** Place of the part in the job, and of the readings in its list of wear. */
  readonly index: number;
  readonly at: number;
}

/** What the readings of a mark are worth: how far off the volume may be, where to read next, and whether that is worth it. */
export function ReadingsWorth({ part, index, at }: ReadingsWorthProps) {
  const result = useEstimate((state) => state.result);
  const isPending = useEstimate((state) => state.pending);
  const units = useView((view) => view.units);
  const worth = result?.parts.find(({ id }) => id === part.id)?.readings.find(({ mark }) => mark === at);
  return (
    <section className="readings-worth" aria-label="What the readings are worth" aria-busy={isPending}>
      {worth === undefined || result === null ? (
        <p className="quiet">{isPending ? 'Working out what they say' : 'None of them lies on the face.'}</p>
      ) : (
        <>
          <Volumes worth={worth} units={units} />
          {worth.next !== null && <Next next={worth.next} part={part} units={units} />}
          {result.filler.readings !== null && <Enough enough={result.filler.readings} />}
          <WorkingOut
            of="the surface"
            workings={[
              {
                what: 'Between the readings',
                rule: 'Ordinary kriging: each place is a weighed mean of the readings, the nearer ones more. What is alike over which distance is found from the readings themselves.',
                numbers: [typeset(readingsHow(worth))],
                source:
                  'Isaaks and Srivastava, Applied Geostatistics (1989), chapter 12; error of the volume by block kriging. Which regions are filled is taken as certain.',
              },
            ]}
          />
        </>
      )}
      <ReadingsCovariance part={index} at={at} worth={worth} />
      <ReadingWorth />
    </section>
  );
}

function Volumes({ worth, units }: { readonly worth: ReadingsResult; readonly units: ScreenUnits }) {
  const { fillError, lostError, leaveOneOut, used, count } = worth;
  return (
    <div>
      <p className="worth-lead">
        {fillError > 0 ? `Fill ±${figure(2 * fillError)} mL` : `Lost ±${figure(2 * lostError)} mL`}
      </p>
      <p>
        The true volume lies within, 19 times in 20.
        {used < count && ` ${counted(used, 'place', 'places')} of ${count} readings are used.`}
      </p>
      {leaveOneOut !== null && (
        <p className="quiet">
          Each left out and told from the others: {lengthText(leaveOneOut.rms, units)} off,{' '}
          {leaveOneOut.within} of {leaveOneOut.of} as near as foreseen.
        </p>
      )}
    </div>
  );
}

function Next({
  next,
  part,
  units,
}: {
  readonly next: NextResult;
  readonly part: PartFile;
  readonly units: ScreenUnits;
}) {
  const show = () => {
    viewStore.getState().set({ part: part.id, face: next.face, tool: 'readings' });
    setReadingPlace({ part: part.id, face: next.face, at: next.at });
  };
  return (
    <div className="worth-next">
      <Crosshair aria-hidden="true" />
      <div>
        <h3>Measure here next</h3>
        <p>
          {sentenceCase(
            `${next.face === 'face' ? '' : `${faceLabel(next.face)}, `}${placeText(part, next.face, next.at, units)}`,
          )}
          . It takes ±{figure(2 * next.from)} mL down to ±{figure(2 * next.to)} mL.
        </p>
      </div>
      <Button className="button" onPress={show}>
        Read it
      </Button>
    </div>
  );
}

function Enough({ enough: { moves, limit, isEnough } }: { readonly enough: EnoughResult }) {
  const Icon = isEnough ? Check : Ruler;
  return (
    <p className="worth-enough" data-enough={isEnough || undefined}>
      <Icon aria-hidden="true" />
      <span>
        {isEnough && <strong>Enough. </strong>}
        Another reading changes the order by less than {figure(moves)} mL
        {limit !== null &&
          (isEnough
            ? `; from ${figure(limit)} mL on it would matter`
            : `, and from ${figure(limit)} mL on that matters. Measure on`)}
        .
      </span>
    </p>
  );
}

function lengthText(size: number, units: ScreenUnits): string {
  return `${formatQuantity(size, 'length', units)} ${shownUnit('length', units).symbol}`;
}
