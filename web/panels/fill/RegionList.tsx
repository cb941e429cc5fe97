import { useEffect, useState } from 'react';
import { Button } from 'react-aria-components';
import type { JobFile } from '../../../geometry/job/job-file.ts';
import type { RegionResult, Result } from '../../../geometry/sheet/result.ts';
import { viewStore } from '../../view/view-store.ts';
import { useEstimate } from '../../worker/estimate-client.ts';
import { PartChoice } from '../PartChoice.tsx';
import { RegionRow } from './RegionRow.tsx';
import './RegionList.css';

/** As many as are looked through; the rest is a press away. */
const FIRST = 12;

/** The damage of all parts, deepest first, each to be filled or left. */
export function RegionList() {
  const result = useEstimate((state) => state.result);
  const job = useEstimate((state) => state.job);
  const [showsAll, showAll] = useState(false);
  // A row that goes while it is pointed at hears of no leaving.
  useEffect(() => () => viewStore.getState().set({ hoverRegion: null }), []);
  if (result === null || job === null) return null;
  const regions = allRegions(result, job);
  const shown = showsAll ? regions : regions.slice(0, FIRST);
  return (
    <section className="section">
      <div>
        <h2>Damage</h2>
        <p className="quiet">
          {regions.length === 0 ? 'Nothing is marked.' : 'Deepest first. Choose for each what becomes of it.'}
        </p>
      </div>
      <PartChoice />
      <ol className="regions">
        {shown.map(({ part, region, number }) => (
          <RegionRow
            key={`${part.id}:${region.id}`}
            part={part}
            region={region}
            number={number}
            hasOthers={job.parts.length > 1}
          />
        ))}
      </ol>
      {shown.length < regions.length && (
        <div className="buttons">
          <Button className="button" onPress={() => showAll(true)}>
            Show all {regions.length}
          </Button>
        </div>
      )}
    </section>
  );
}

/** Numbered part by part, as on the sheet and on the flat picture. */
function allRegions(result: Result, job: JobFile) {
  return result.parts
    .flatMap(({ id, regions }) => {
      const part = job.parts.find((known) => known.id === id);
      return part === undefined
        ? []
        : regions.map((region: RegionResult, i) => ({ part, region, number: i + 1 }));
    })
    .sort((a, b) => b.region.deepest - a.region.deepest);
}
