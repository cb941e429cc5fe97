import { useJob } from '../job/job-store.ts';
import { useView } from '../view/view-store.ts';
import { useEstimate } from '../worker/estimate-client.ts';
import { AskForClearance } from './clearance/AskForClearance.tsx';
import { GapChart } from './clearance/GapChart.tsx';
import { GapCost } from './clearance/GapCost.tsx';
import { GapFields } from './clearance/GapFields.tsx';
import { GapMap } from './clearance/GapMap.tsx';
import { GapTable } from './clearance/GapTable.tsx';
import { GapVerdict } from './clearance/GapVerdict.tsx';
import { gapWorkings } from './clearance/gap-workings.ts';
import { HistorySection } from './clearance/HistorySection.tsx';
import { Levers } from './clearance/Levers.tsx';
import { WallSection } from './clearance/WallSection.tsx';
import { WorkingOut } from './fill/WorkingOut.tsx';

/** Whether impeller and plate run free of each other once filled and coated, the metal that carries them, and how fast it goes. */
export function ClearancePanel() {
  return (
    <div className="panel-body">
      <TheGap />
      <WallSection />
      <HistorySection />
    </div>
  );
}

function TheGap() {
  const result = useEstimate((state) => state.result);
  const job = useEstimate((state) => state.job);
  const units = useView((view) => view.units);
  const isAsked = useJob((state) => state.job.clearance !== undefined);
  if (!isAsked) return <AskForClearance />;
  const clearance = result?.clearance ?? null;
  if (result === null || job === null || job.clearance === undefined)
    return <p className="quiet">Working out the figures</p>;
  if (clearance === null) {
    return (
      <>
        <section className="section">
          <h2>No gap to work out</h2>
          {result.warnings
            .filter(({ code }) => code === 'clearance-apart')
            .map(({ code, text }) => (
              <p key={code}>{text}</p>
            ))}
        </section>
        <GapFields />
      </>
    );
  }
  return (
    <>
      <section className="section" aria-label="Verdict">
        <GapVerdict clearance={clearance} />
        <GapChart clearance={clearance} />
        <GapTable clearance={clearance} />
        <WorkingOut of="the gap" workings={gapWorkings(clearance, units)} />
      </section>
      <Levers clearance={clearance} />
      <GapFields />
      <GapMap clearance={clearance} job={job} />
      <GapCost clearance={clearance} />
    </>
  );
}
