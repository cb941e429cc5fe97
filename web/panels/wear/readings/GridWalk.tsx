import { ArrowLeft, SkipForward } from 'lucide-react';
import { useEffect, useRef } from 'react';
import { Button } from 'react-aria-components';
import { faceLabel } from '../../../view/face-label.ts';
import { useView } from '../../../view/view-store.ts';
import { sentenceCase } from '../../sentence-case.ts';
import { faceNumbers, valueText } from '../face-words.ts';
import { GaugeField, type GaugeFieldHandle } from './GaugeField.tsx';
import { GridPlan } from './GridPlan.tsx';
import { GAUGE_LABELS } from './gauge-labels.ts';
import { type PlaceOnFace, putReadingDown, sumSoFar } from './put-down.ts';
import { readingAt, readingsInHand, readingsOf } from './reading-edits.ts';
import { endWalk, setEntry, showNext, useEntry, type Walk, walkOn } from './reading-entry.ts';
import './GridWalk.css';

type OnFace = Omit<PlaceOnFace, 'at'>;

/** The walk along a grid: laid out, then place by place with the next one in figures that are read from two metres. */
export function GridWalk(on: OnFace) {
  const walk = useEntry((state) => state.walk);
  if (walk === null) return <GridPlan {...on} key={`${on.part.id} ${on.face}`} />;
  if (walk.part !== on.part.id || walk.face !== on.face) return <WalkElsewhere walk={walk} />;
  return walk.next < walk.places.length ? (
    <NextPlace walk={walk} {...on} />
  ) : (
    <WalkDone walk={walk} {...on} />
  );
}

function NextPlace({ walk, ...on }: OnFace & { readonly walk: Walk }) {
  const { part, face } = on;
  const units = useView((view) => view.units);
  const selected = useView((view) => view.selectedMark);
  const reading = useEntry((state) => state.reading);
  const kind = useEntry((state) => state.kind);
  useEntry((state) => state.reference);
  const gauge = useRef<GaugeFieldHandle>(null);
  const block = useRef<HTMLDivElement>(null);
  useEffect(() => {
    gauge.current?.focus();
    // The field alone would come into sight, without the place it is for.
    block.current?.scrollIntoView({ block: 'nearest' });
  }, []);
  const here: PlaceOnFace = { ...on, at: walk.places[walk.next] };
  const points = readingsOf(part, readingsInHand(part, face, selected));
  const known = points[readingAt(points, here.at)];
  const go = (steps: number) => {
    walkOn(steps);
    gauge.current?.focus();
  };
  const take = () => {
    if (putReadingDown(here, { isAgain: true })) walkOn(1);
    gauge.current?.focus();
  };
  return (
    <div className="walk" ref={block}>
      <p className="walk-count">
        {walk.next + 1} of {walk.places.length}
      </p>
      <dl className="walk-place" aria-live="polite">
        {faceNumbers(part, face).map(({ label, quantity }, i) => (
          <div key={label}>
            <dt>{sentenceCase(label)}</dt>
            <dd>{valueText(here.at[i], quantity, units)}</dd>
          </div>
        ))}
      </dl>
      <div className="gauge-row">
        <GaugeField
          label={GAUGE_LABELS[kind]}
          sum={sumSoFar(here, reading, kind, units)}
          onEnter={take}
          onEscape={() => setEntry({ reading: '', faults: [] })}
          ref={gauge}
        />
        <Button className="button button-main" onPress={take}>
          Take it
        </Button>
      </div>
      {known !== undefined && (
        <p className="quiet">
          Read here: {valueText(known[2], 'length', units)} deep. Another reading takes its place.
        </p>
      )}
      <div className="buttons">
        <Button className="button" isDisabled={walk.next === 0} onPress={() => go(-1)}>
          <ArrowLeft aria-hidden="true" />
          Back
        </Button>
        <Button className="button" onPress={() => go(1)}>
          <SkipForward aria-hidden="true" />
          Skip
        </Button>
        <Button className="button button-bare" onPress={endWalk}>
          End the walk
        </Button>
      </div>
    </div>
  );
}

function WalkDone({ walk, part, face }: OnFace & { readonly walk: Walk }) {
  const selected = useView((view) => view.selectedMark);
  const points = readingsOf(part, readingsInHand(part, face, selected));
  const read = walk.places.filter((place) => readingAt(points, place) >= 0).length;
  return (
    <div className="walk">
      <p className="walk-count">All walked</p>
      <p>
        {read} of {walk.places.length} places read.
      </p>
      <div className="buttons">
        <Button className="button" onPress={() => walkOn(-1)}>
          <ArrowLeft aria-hidden="true" />
          Back
        </Button>
        <Button className="button button-main" onPress={endWalk}>
          End the walk
        </Button>
      </div>
    </div>
  );
}

function WalkElsewhere({ walk }: { readonly walk: Walk }) {
  const next = Math.min(walk.next + 1, walk.places.length);
  return (
    <div className="rows">
      <p>
        A walk waits at {next} of {walk.places.length}, {faceLabel(walk.face)}.
      </p>
      <div className="buttons">
        <Button className="button button-main" onPress={() => showNext(walk)}>
          Go on there
        </Button>
        <Button className="button" onPress={endWalk}>
          End the walk
        </Button>
      </div>
    </div>
  );
}
