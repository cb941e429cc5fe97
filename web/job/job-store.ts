/**
 * The one job on the screen and its undo list. The job is always one that can be worked out: an edit that would bring faults is
 * refused with them and changes nothing. Holds what is saved; everything that can be computed lives elsewhere.
 */
import { useStore } from 'zustand/react';
import { createStore } from 'zustand/vanilla';
import type { Fault } from '../../geometry/job/fault.ts';
import type { JobFile } from '../../geometry/job/job-file.ts';
import { newPlateJob } from '../../geometry/job/new-plate-job.ts';
import { readJobValue } from '../../geometry/job/read-job.ts';
import { shareUnchanged } from './share-unchanged.ts';
import { openInstead, stepBack, stepForward, type TimeLine, takeStep } from './time-line.ts';

export interface JobState extends TimeLine {
  /** When the device kept this job last, ms since 1970; null = not yet. */
  readonly savedAt: number | null;
  /** When it was written to a file last. */
  readonly fileSavedAt: number | null;
  /**
   * @param label     what is done, to stand behind "Undo"
   * @param change    returns the new job and leaves the old one alone
   * @param mergeKey  an edit with the key of the last step joins that step
   * @returns         [] when taken, else every fault; the job is then as it was
   */
  edit(label: string, change: (job: JobFile) => JobFile, mergeKey?: string): readonly Fault[];
  undo(): void;
  redo(): void;
  /** Takes a job that was read and found sound. Undo brings the present one back. */
  open(job: JobFile, fileName: string | null, label?: string): void;
}

export const jobStore = createStore<JobState>()((set, get) => ({
  job: newPlateJob(),
  fileName: null,
  past: [],
  future: [],
  mergeKey: null,
  savedAt: null,
  fileSavedAt: null,

  edit(label, change, mergeKey) {
    const before = get().job;
    const job = shareUnchanged(before, change(before));
    if (job === before) return [];
    const read = readJobValue(job);
    if ('faults' in read) return read.faults;
    // A joined step began at another job: coming back to that one must be seen as such.
    const start = get().past.at(-1)?.job ?? before;
    set(takeStep(get(), label, shareUnchanged(start, job), mergeKey ?? null));
    return [];
  },
  undo: () => set(stepBack(get())),
  redo: () => set(stepForward(get())),
  open(job, fileName, label = `Open ${fileName ?? (job.title || 'a job')}`) {
    set({ ...openInstead(get(), label, job, fileName), fileSavedAt: null });
  },
}));

export function useJob<T>(select: (state: JobState) => T): T {
  return useStore(jobStore, select);
}
