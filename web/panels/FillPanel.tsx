import { wholeRepair } from '../../geometry/job/defaults.ts';
import { useEstimate } from '../worker/estimate-client.ts';
import { CoatNeeded } from './fill/CoatNeeded.tsx';
import { CoatSheet } from './fill/CoatSheet.tsx';
import { FillerSheet } from './fill/FillerSheet.tsx';
import { PuttyNeeded } from './fill/PuttyNeeded.tsx';
import { RegionList } from './fill/RegionList.tsx';
import { RepairChoices } from './fill/RepairChoices.tsx';
import { Warnings } from './fill/Warnings.tsx';
import { WhichPutty } from './fill/WhichPutty.tsx';
import { PartChoice } from './PartChoice.tsx';

/** What is filled and what is left, and what to mix and to buy for it, from the person's own data sheets. */
export function FillPanel() {
  const result = useEstimate((state) => state.result);
  const job = useEstimate((state) => state.job);
  if (result === null || job === null) return <p className="quiet">Working out the figures</p>;
  const repair = wholeRepair(job.repair);
  return (
    <div className="panel-body">
      <PuttyNeeded filler={result.filler} job={job} repair={repair} />
      <WhichPutty advice={result.advice} />
      <CoatNeeded coat={result.coat} job={job} repair={repair} />
      <Warnings warnings={result.warnings} />
      <RegionList>
        <PartChoice />
      </RegionList>
      <RepairChoices />
      <FillerSheet />
      <CoatSheet />
    </div>
  );
}
