import { newPlateJob } from '../../../geometry/job/new-plate-job.ts';
import { openJob } from '../../files/open-job.ts';
import { viewStore } from '../../view/view-store.ts';

/** A fresh plate to type one's own sizes into; the present job is one undo away. */
export function startOwn(): void {
  openJob(newPlateJob(), null, 'New job');
  viewStore.getState().set({ step: 'part', tool: 'turn' });
}
