/**
 * What stays on the device between visits: the job, its undo list, the file's name. Every tab keeps its job in a slot of its own, so
 * no tab can write over another's. A slot says which slots it goes on from, and those are needed no longer.
 */
import { faultText } from '../../geometry/job/fault.ts';
import type { JobFile } from '../../geometry/job/job-file.ts';
import { readJobValue } from '../../geometry/job/read-job.ts';
import type { Step, TimeLine } from '../job/time-line.ts';

/** A slot as it was after so many writes. */
export interface KeptAt {
  readonly slot: string;
  readonly writes: number;
}

/** What can be told of a kept job without reading all of it. */
export interface KeptHead extends KeptAt {
  readonly title: string;
  /** ms since 1970. */
  readonly savedAt: number;
  /** The slots whose jobs stand in this one's undo list. */
  readonly from: readonly KeptAt[];
}

/** Kept as one value: jobs that share branches go on sharing them when they are read back. */
export interface KeptJob {
  readonly version: 1;
  readonly job: JobFile;
  readonly past: readonly Step[];
  readonly future: readonly Step[];
  readonly fileName: string | null;
  readonly fileSavedAt: number | null;
}

export function keepable(line: TimeLine & { readonly fileSavedAt: number | null }): KeptJob {
  const { job, past, future, fileName, fileSavedAt } = line;
  return { version: 1, job, past, future, fileName, fileSavedAt };
}

/**
 * What was read back, checked as strictly as a file: the device may have cut it short or another version may have written it.
 * An undo list that cannot be used is left out; the job matters more.
 */
export function readKept(value: unknown): { readonly kept: KeptJob } | { readonly problem: string } {
  if (!isRecord(value) || value.version !== 1)
    return { problem: 'It was written by another version, or cut short.' };
  const reading = readJobValue(value.job);
  if ('faults' in reading) return { problem: faultText(reading.faults[0]) };
  const hasSteps = areSteps(value.past) && areSteps(value.future);
  return {
    kept: {
      version: 1,
      // As kept, not as read: the copy that reading makes shares nothing with the undo list.
      job: value.job as JobFile,
      past: hasSteps ? (value.past as readonly Step[]) : [],
      future: hasSteps ? (value.future as readonly Step[]) : [],
      fileName: typeof value.fileName === 'string' ? value.fileName : null,
      fileSavedAt: typeof value.fileSavedAt === 'number' ? value.fileSavedAt : null,
    },
  };
}

/** The slots that hold work of their own, newest first, and those that another goes on from just as they are. */
export function sortKept(heads: readonly KeptHead[]): {
  readonly open: readonly KeptHead[];
  readonly done: readonly KeptHead[];
} {
  const isDone = (head: KeptHead) =>
    heads.some((other) => other.from.some((at) => at.slot === head.slot && at.writes === head.writes));
  return {
    open: heads.filter((head) => !isDone(head)).sort((a, b) => b.savedAt - a.savedAt),
    done: heads.filter(isDone),
  };
}

function areSteps(value: unknown): boolean {
  return (
    Array.isArray(value) &&
    value.every((step) => isRecord(step) && typeof step.label === 'string' && 'parts' in Object(step.job))
  );
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}
