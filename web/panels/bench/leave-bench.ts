import { viewStore } from '../../view/view-store.ts';

/** Back to the job, where the bench was opened. */
export function leaveBench(): void {
  viewStore.getState().set({ isBenchOpen: false });
}
