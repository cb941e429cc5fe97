import { type KeptAt, type KeptHead, type KeptJob, readKept, sortKept } from './kept-job.ts';
import { notify } from './notice-store.ts';
import { openJob } from './open-job.ts';
import type { Shelf } from './shelf.ts';

export interface Found {
  readonly head: KeptHead;
  readonly kept: KeptJob;
  /** Other work that is kept, newest first. */
  readonly others: readonly KeptHead[];
}

/**
 * The job that was kept last, undo list and all; null when there is none. What cannot be read is set aside, with a notice, and the
 * next newest is taken. Rejects when the device refuses.
 */
export async function findKept(shelf: Shelf): Promise<Found | null> {
  const { open, done } = sortKept(await shelf.heads());
  for (const head of done) await shelf.remove(head);
  for (const [i, head] of open.entries()) {
    const kept = await takeKept(shelf, head);
    if (kept !== null) return { head, kept, others: open.slice(i + 1) };
  }
  return null;
}

/**
 * Tells of the newest other job that is kept, from a second tab for one, and opens it when the person wants it.
 * @param opened  told when that is done
 */
export function offerOther(shelf: Shelf, others: readonly KeptHead[], opened: (at: KeptAt) => void): void {
  const [head, ...rest] = others;
  if (head === undefined) return;
  const open = async () => {
    const kept = await takeKept(shelf, head);
    if (kept !== null) {
      openJob(kept.job, kept.fileName);
      opened(head);
    }
    offerOther(shelf, rest, opened);
  };
  notify({
    name: 'other-job',
    kind: 'note',
    title: `Another job is kept on this device: ${head.title || 'without a title'}.`,
    sentences: ['It was changed in another tab. Open it here; undo brings the present job back.'],
    action: { label: 'Open it', run: () => void open() },
  });
}

/** The kept job of a slot; null when it cannot be used and was set aside. */
async function takeKept(shelf: Shelf, head: KeptHead): Promise<KeptJob | null> {
  const read = readKept(await shelf.read(head.slot));
  if ('kept' in read) return read.kept;
  await shelf.setAside(head.slot);
  notify({
    name: 'set-aside',
    kind: 'fault',
    title: `The job kept on this device could not be read: ${head.title || 'without a title'}.`,
    sentences: [read.problem, 'It is set aside and nothing else is changed.'],
  });
  return null;
}
