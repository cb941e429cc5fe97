import { type KeyboardEvent, useEffect, useRef } from 'react';
import { Button } from 'react-aria-components';
import type { PartFile } from '../../../../geometry/job/job-file.ts';
import { QuantityField } from '../../../fields/QuantityField.tsx';
import { useView, viewStore } from '../../../view/view-store.ts';
import { readingPlace, setReadingPlace, useReadingPlace } from '../../../wear/reading-place.ts';
import { forgetDrafts } from '../../forget-drafts.ts';
import { sentenceCase } from '../../sentence-case.ts';
import { faceNumbers } from '../face-words.ts';
import { GaugeField, type GaugeFieldHandle } from './GaugeField.tsx';
import { GAUGE_LABELS } from './gauge-labels.ts';
import { type PlaceOnFace, putReadingDown, sumSoFar } from './put-down.ts';
import { PLACE_PATH, setEntry, useEntry } from './reading-entry.ts';
import './SingleReading.css';

interface SingleReadingProps {
  readonly part: PartFile;
  readonly index: number;
  readonly face: string;
}

/** One reading after the other: its place tapped or typed, then what the gauge says. */
export function SingleReading({ part, index, face }: SingleReadingProps) {
  const place = useReadingPlace((state) => state.place);
  const reading = useEntry((state) => state.reading);
  const kind = useEntry((state) => state.kind);
  useEntry((state) => state.reference);
  const units = useView((view) => view.units);
  const gauge = useRef<GaugeFieldHandle>(null);
  const form = useRef<HTMLFieldSetElement>(null);
  useFocusOnTap(gauge);
  useEffect(() => {
    // Whoever came by a button that is gone by now goes on with the keyboard here.
    if (document.activeElement === document.body) form.current?.querySelector('input')?.focus();
  }, []);
  const numbers = faceNumbers(part, face);
  const at = place !== null && place.part === part.id && place.face === face ? place.at : NOWHERE;
  const on = placeOnFace({ part, index, face }, at);

  const setAt = (which: 0 | 1, value: number) => {
    setReadingPlace({ part: part.id, face, at: which === 0 ? [value, at[1]] : [at[0], value] });
    return [];
  };
  const putDown = () => {
    if (hasRefusedPlace()) return setEntry({ faults: ['Put the place right first.'], note: '' });
    if (on === null) {
      const names = numbers.map(({ label }) => label).join(' and ');
      return setEntry({ faults: [`The place is missing. Tap the part, or type ${names}.`], note: '' });
    }
    if (!putReadingDown(on)) return gauge.current?.focus();
    setReadingPlace(null);
    // A tap brings the next place; typed ones go on with their first number.
    if (place?.isTapped !== true) form.current?.querySelector('input')?.focus();
  };
  const drop = () => {
    forgetDrafts(PLACE_PATH);
    setReadingPlace(null);
    setEntry({ reading: '', faults: [], note: '' });
  };

  return (
    <div className="single-reading">
      <fieldset className="reading-place" ref={form} onKeyDown={(event) => moveOn(event, gauge.current)}>
        <legend className="unseen">Place of the reading</legend>
        {([0, 1] as const).map((which) => (
          <QuantityField
            key={which}
            label={sentenceCase(numbers[which].label)}
            quantity={numbers[which].quantity}
            path={`${PLACE_PATH}[${which}]`}
            value={at[which]}
            onCommit={(value) => setAt(which, value)}
          />
        ))}
      </fieldset>
      <div className="gauge-row">
        <GaugeField
          label={GAUGE_LABELS[kind]}
          sum={sumSoFar(on, reading, kind, units)}
          onEnter={putDown}
          onEscape={drop}
          ref={gauge}
        />
        <Button className="button button-main" onPress={putDown}>
          Put down
        </Button>
      </div>
    </div>
  );
}

const NOWHERE: readonly [null, null] = [null, null];

function placeOnFace(
  on: Omit<PlaceOnFace, 'at'>,
  [first, second]: readonly [number | null, number | null],
): PlaceOnFace | null {
  return first === null || second === null ? null : { ...on, at: [first, second] };
}

/** Text that was refused still stands in a field of the place: it says something else than the place does. */
function hasRefusedPlace(): boolean {
  return Object.entries(viewStore.getState().draftFaults).some(
    ([path, faults]) => path.startsWith(PLACE_PATH) && faults.length > 0,
  );
}

/** Enter in a number of the place goes on to the next one, and from the last to the gauge. */
function moveOn(event: KeyboardEvent<HTMLFieldSetElement>, gauge: GaugeFieldHandle | null): void {
  if (event.key !== 'Enter' || hasRefusedPlace()) return;
  const inputs = [...event.currentTarget.querySelectorAll('input')];
  const next = inputs[inputs.indexOf(event.target as HTMLInputElement) + 1];
  if (readingPlace() === null) return;
  if (next === undefined) gauge?.focus();
  else next.focus();
}

/** The last tap that was answered: one that brings this field onto the screen is not yet. */
let answered = 0;

/** A tap on a picture hands the keys to the gauge. */
function useFocusOnTap(gauge: { readonly current: GaugeFieldHandle | null }): void {
  const taps = useReadingPlace((state) => state.taps);
  useEffect(() => {
    if (answered !== taps) gauge.current?.focus();
    answered = taps;
  }, [taps, gauge]);
}
