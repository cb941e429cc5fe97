import { useStore } from 'zustand/react';
import { createStore } from 'zustand/vanilla';
import { type JobState, jobStore } from '../job/job-store.ts';
import { type KeptAt, keepable } from './kept-job.ts';
import { dismiss, notify } from './notice-store.ts';
import type { Shelf } from './shelf.ts';

/** `on`: all is kept; `pending`: a change waits to be kept; `off`: this device does not keep the job. */
export type KeepState = 'on' | 'pending' | 'off';

export const keepStore = createStore<{ readonly state: KeepState }>()(() => ({ state: 'on' }));

export function useKeepState(): KeepState {
  return useStore(keepStore, ({ state }) => state);
}

export interface Autosave {
  /** Keeps a waiting change now. */
  flush(): Promise<void>;
  /** The job from this slot is in the undo list now: once that is kept the slot may go. */
  goOnFrom(at: KeptAt): void;
  stop(): void;
}

interface AutosaveOptions {
  /** Of this tab alone. */
  readonly slot?: string;
  /** Calls back when the page may be about to go; returns what stops that. */
  readonly whenLeaving?: (flush: () => void) => () => void;
}

/** A change is kept this long after it, ms: soon enough to lose nothing worth doing twice, late enough to take a burst at once. */
const DELAY = 500;

/**
 * Keeps the job and its undo list on the device from now on: `DELAY` after a change and when the page is left.
 * @param from  the slots the present job was restored from
 */
export function startAutosave(
  shelf: Pick<Shelf, 'write' | 'remove'>,
  from: readonly KeptAt[],
  { slot = crypto.randomUUID(), whenLeaving = pageLeaving }: AutosaveOptions = {},
): Autosave {
  const sources = from.map(place);
  let writes = 0;
  let timer: ReturnType<typeof setTimeout> | null = null;

  const flush = async () => {
    if (timer === null) return;
    clearTimeout(timer);
    timer = null;
    writes += 1;
    const state = jobStore.getState();
    const savedAt = Date.now();
    try {
      const head = { slot, writes, title: state.job.title ?? '', savedAt, from: [...sources] };
      await shelf.write(head, keepable(state));
    } catch {
      return notKept();
    }
    if (timer === null) keepStore.setState({ state: 'on' });
    jobStore.setState({ savedAt });
    dismiss(NOTICE);
    if (writes === 1) await askToStay();
    await Promise.allSettled(sources.map((at) => shelf.remove(at)));
  };

  const stopWatching = jobStore.subscribe((now, before) => {
    if (isSameWork(now, before)) return;
    if (keepStore.getState().state === 'on') keepStore.setState({ state: 'pending' });
    timer ??= setTimeout(() => void flush(), DELAY);
  });
  const stopLeaving = whenLeaving(() => void flush());
  return {
    flush,
    goOnFrom: (at) => sources.push(place(at)),
    stop() {
      stopWatching();
      stopLeaving();
      if (timer !== null) clearTimeout(timer);
      timer = null;
    },
  };
}

/** Says once that the job is not kept; until a later try succeeds. */
export function notKept(): void {
  if (keepStore.getState().state === 'off') return;
  keepStore.setState({ state: 'off' });
  notify({
    name: NOTICE,
    kind: 'fault',
    title: 'Not kept on this device.',
    sentences: [
      'The browser blocks its storage or has no room left. Save the job to a file before you close this page.',
    ],
  });
}

const NOTICE = 'autosave';

function place({ slot, writes }: KeptAt): KeptAt {
  return { slot, writes };
}

function isSameWork(a: JobState, b: JobState): boolean {
  return (
    a.job === b.job &&
    a.past === b.past &&
    a.future === b.future &&
    a.fileName === b.fileName &&
    a.fileSavedAt === b.fileSavedAt
  );
}

/** Asks the browser not to clear this storage when room gets short. It may say no; the job is kept all the same for now. */
async function askToStay(): Promise<void> {
  try {
    await globalThis.navigator?.storage?.persist?.();
  } catch {
    // Nothing to be done about it.
  }
}

/** Hidden comes first and is the last thing a tablet is sure to tell; the other covers browsers that skip it. */
function pageLeaving(flush: () => void): () => void {
  const whenHidden = () => {
    if (document.visibilityState === 'hidden') flush();
  };
  document.addEventListener('visibilitychange', whenHidden);
  window.addEventListener('pagehide', flush);
  return () => {
    document.removeEventListener('visibilitychange', whenHidden);
    window.removeEventListener('pagehide', flush);
  };
}
