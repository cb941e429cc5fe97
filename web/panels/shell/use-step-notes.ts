import { useJob } from '../../job/job-store.ts';
import { type StepName, useView } from '../../view/view-store.ts';
import { useEstimate } from '../../worker/estimate-client.ts';
import { type StepNote, stepNotes } from './step-notes.ts';

/** The notes of the job on the screen. */
export function useStepNotes(): Readonly<Record<StepName, StepNote>> {
  const job = useJob((state) => state.job);
  const result = useEstimate((state) => state.result);
  const refused = useView((view) => Object.keys(view.draftFaults).join(' '));
  return stepNotes(job, result, refused === '' ? [] : refused.split(' '));
}
