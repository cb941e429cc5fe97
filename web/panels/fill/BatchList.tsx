import { useEffect, useState } from 'react';
import { Button } from 'react-aria-components';
import type { JobFile } from '../../../geometry/job/job-file.ts';
import { figure } from '../../../geometry/sheet/figure.ts';
import type { BatchResult, FillerResult } from '../../../geometry/sheet/result.ts';
import { useView, viewStore } from '../../view/view-store.ts';
import { choosePart, useChosenPart } from '../chosen-part.ts';
import { coverLines, layersText } from './cover-text.ts';
import { bowlTotal, noWeighingText, portionWords, roundingText } from './scale-words.ts';
import './BatchList.css';

/** As many as are looked through; the rest is a press away. */
const FIRST = 12;

interface BatchListProps {
  readonly filler: FillerResult;
  /** The job the result belongs to. */
  readonly job: JobFile;
}

/** The mixes one by one: what the scale is to show, and where each goes; the one that is pointed at stands out on the pictures. */
export function BatchList({ filler, job }: BatchListProps) {
  const [showsAll, showAll] = useState(false);
  // A row that goes while it is pointed at hears of no leaving.
  useEffect(() => () => viewStore.getState().set({ hoverBatch: null }), []);
  const { batches, selfMixing } = filler;
  if (batches.length === 0) return null;
  const shown = showsAll ? batches : batches.slice(0, FIRST);
  const hasDensities = job.filler === undefined || job.filler.densityA !== undefined;
  const notes = [noWeighingText(selfMixing, hasDensities, batches), roundingText(batches)].filter(
    (note) => note !== '',
  );
  return (
    <div>
      <ol className="batches" aria-label="Mixes">
        {shown.map((batch) => (
          <BatchRow key={batch.number} batch={batch} filler={filler} job={job} />
        ))}
      </ol>
      {shown.length < batches.length && (
        <div className="buttons">
          <Button className="button" onPress={() => showAll(true)}>
            Show all {batches.length} mixes
          </Button>
        </div>
      )}
      {notes.map((note) => (
        <p key={note} className="quiet">
          {note}
        </p>
      ))}
    </div>
  );
}

interface BatchRowProps extends BatchListProps {
  readonly batch: BatchResult;
}

function BatchRow({ batch, filler, job }: BatchRowProps) {
  const units = useView((view) => view.units);
  const isLit = useView((view) => view.hoverBatch === batch.number);
  const inSight = useChosenPart().part.id;
  const { number, weigh, volume, minutes, covers } = batch;
  const { a, b } = portionWords(batch);
  const layers = layersText(batch, filler);
  const light = () => viewStore.getState().set({ hoverBatch: number });
  const dim = () => viewStore.getState().set({ hoverBatch: null });
  // What lies on a face out of sight comes into the flat picture, on another part into both.
  const bringIntoSight = () => {
    const cover = covers.find(({ part }) => part === inSight) ?? covers.at(0);
    if (cover === undefined) return;
    if (cover.part !== inSight) choosePart(cover.part);
    viewStore.getState().set({ face: cover.face, hoverBatch: number });
  };
  return (
    <li
      className="batch"
      data-lit={isLit || undefined}
      onPointerEnter={light}
      onPointerLeave={({ currentTarget }) => {
        if (!currentTarget.contains(document.activeElement)) dim();
      }}
      onFocus={light}
      onBlur={({ currentTarget }) => {
        if (!currentTarget.matches(':hover')) dim();
      }}
    >
      <Button className="batch-title" onPress={bringIntoSight}>
        <span className="batch-number">
          <span className="unseen">Mix </span>
          {number}
        </span>
        <span className="batch-parts">
          A {a}, B {b}
        </span>
        <span className="quiet">{Math.floor(minutes)} min</span>
      </Button>
      <div className="batch-words">
        {weigh !== null && (
          <p>
            In one bowl: A to {a}, then B to {bowlTotal(weigh)}
          </p>
        )}
        <p className="quiet">
          {figure(volume)} mL{layers !== '' && `, ${layers}`}
        </p>
        {coverLines(job, covers, units).map((line) => (
          <p key={line} className="quiet">
            {line}
          </p>
        ))}
      </div>
    </li>
  );
}
