import { Plus } from 'lucide-react';
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { Fault } from '../../../geometry/job/fault.ts';
import { historyLines, historyNotes } from '../../../geometry/sheet/history-text.ts';
import { typeset } from '../../../geometry/sheet/typeset.ts';
import { jobStore, useJob } from '../../job/job-store.ts';
import { useView } from '../../view/view-store.ts';
import { useEstimate } from '../../worker/estimate-client.ts';
import { forgetDrafts } from '../forget-drafts.ts';
import { keptUnits } from '../kept-units.ts';
import { OptionalQuantity } from '../OptionalQuantity.tsx';
import { Refusal } from '../Refusal.tsx';
import { EarlierRepair } from './EarlierRepair.tsx';
import { type EarlierRepairFile, withHours, withRepairAdded, withRepairRemoved } from './history-edits.ts';
import { today } from './today.ts';
import { lengthText } from './wall-words.ts';
import './HistorySection.css';

const NONE: readonly EarlierRepairFile[] = [];
const A_YEAR = 4000;

/** Hours since the last repair, what earlier repairs found, and what follows: how fast it wears and when it is due. */
export function HistorySection() {
  const hours = useJob(({ job }) => job.history?.hours);
  const repairs = useJob(({ job }) => job.history?.repairs) ?? NONE;
  const parts = useJob(({ job }) => job.parts);
  const history = useEstimate(({ result }) => result?.history ?? null);
  const units = useView((view) => view.units);
  const [faults, setFaults] = useState<readonly Fault[]>([]);
  const edit = useJob((state) => state.edit);
  const list = (label: string, change: Parameters<typeof edit>[1]) => {
    forgetDrafts('history.repairs');
    setFaults(jobStore.getState().edit(label, change));
  };
  const isSaid = hours !== undefined || repairs.length > 0;
  return (
    <section className="section history" aria-label="Wear so far">
      <h2>Wear so far</h2>
      {isSaid && history !== null && (
        <ul className="plain-lines history-lines" aria-label="Wear rates and due dates">
          {historyLines(history, (size) => lengthText(size, units)).map((line) => (
            <li key={line}>{keptUnits(typeset(line))}</li>
          ))}
          {historyNotes(history).map((line) => (
            <li key={line} className="quiet">
              {typeset(line)}
            </li>
          ))}
        </ul>
      )}
      {!isSaid && (
        <p>
          Give the hours run and what earlier repairs found, and you see how fast it wears and when it is due.
        </p>
      )}
      <OptionalQuantity
        known="The hours since the last repair are known"
        label="Run since the last repair, or since new"
        quantity="hours"
        path="history.hours"
        value={hours}
        start={A_YEAR}
        min={0}
        step={100}
        help="By the hour meter or the log."
        onCommit={(value) => edit('the hours run', (job) => withHours(job, value), 'history.hours')}
      />
      <h3>Earlier repairs</h3>
      {repairs.length === 0 && (
        <p className="quiet">None noted. Two or more tell how far off the rate may be.</p>
      )}
      <ol className="history-repairs">
        {repairs.map((repair, i) => (
          <EarlierRepair
            // biome-ignore lint/suspicious/noArrayIndexKey: repairs have no name but their place
            key={i}
            repair={repair}
            at={i}
            parts={parts}
            onRemove={() => list('remove an earlier repair', (job) => withRepairRemoved(job, i))}
          />
        ))}
      </ol>
      <div className="buttons">
        <Button
          className="button"
          onPress={() => list('add an earlier repair', (job) => withRepairAdded(job, today()))}
        >
          <Plus aria-hidden="true" />
          Add an earlier repair
        </Button>
      </div>
      <Refusal faults={faults} />
    </section>
  );
}
