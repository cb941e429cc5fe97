import { jobStore } from '../job/job-store.ts';
import { viewStore } from '../view/view-store.ts';
import { notKept, startAutosave } from './autosave.ts';
import { openDropped } from './open-job.ts';
import { watchOtherTabs } from './other-tabs.ts';
import { type Found, findKept, offerOther } from './restore-job.ts';
import { firstSample } from './samples.ts';
import { deviceShelf, type Shelf } from './shelf.ts';

/** A device that has not answered by now would leave an empty screen, ms. What it keeps stays where it is. */
const PATIENCE = 4000;

/**
 * Before the first picture: the job that was kept on this device, or a worked sample on the first visit. From then on the job is
 * kept, files dropped on the window are opened, and other tabs are told of.
 */
export async function startJob(openShelf: () => Promise<Shelf> = deviceShelf): Promise<void> {
  const device = await inTime(lookInto(openShelf));
  const found = device?.found ?? null;
  if (found === null) showSample();
  else showKept(found);
  viewStore.getState().set({ part: jobStore.getState().job.parts[0].id });
  openDropped();
  if (device === null) return notKept();

  const { shelf } = device;
  const autosave = startAutosave(shelf, found === null ? [] : [found.head]);
  offerOther(shelf, found?.others ?? [], autosave.goOnFrom);
  watchOtherTabs();
}

async function lookInto(
  openShelf: () => Promise<Shelf>,
): Promise<{ readonly shelf: Shelf; readonly found: Found | null }> {
  const shelf = await openShelf();
  return { shelf, found: await findKept(shelf) };
}

/** null when it failed or took too long. */
async function inTime<T>(work: Promise<T>): Promise<T | null> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const late = new Promise<null>((answer) => {
    timer = setTimeout(() => answer(null), PATIENCE);
  });
  try {
    return await Promise.race([work, late]);
  } catch {
    return null;
  } finally {
    clearTimeout(timer);
  }
}

function showKept({ head, kept }: Found): void {
  const { job, past, future, fileName, fileSavedAt } = kept;
  jobStore.setState({ job, past, future, fileName, fileSavedAt, mergeKey: null, savedAt: head.savedAt });
}

/** A first visit is no step: there is nothing to go back to. */
function showSample(): void {
  jobStore.setState({ job: firstSample() });
}
