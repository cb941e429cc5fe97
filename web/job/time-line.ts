/**
 * The job and the way it came about: whole jobs before and after each step. Untouched branches are shared between them, so a step
 * costs little more than what it changed. Pure: each function returns a new time line.
 */
import type { JobFile } from '../../geometry/job/job-file.ts';

export interface TimeLine {
  readonly job: JobFile;
  /** The file the job was opened from or saved to; null = never in a file. */
  readonly fileName: string | null;
  /** Oldest first, each with the job as it was before the step. */
  readonly past: readonly Step[];
  /** The next step to redo last, each with the job as it was after the step. */
  readonly future: readonly Step[];
  /** Steps given with this key join the last one: a drag, or a held button, is one step. */
  readonly mergeKey: string | null;
}

export interface Step {
  /** What was done, to stand behind "Undo": "bore diameter", "brush stroke". */
  readonly label: string;
  readonly job: JobFile;
  /** Only where another job was opened: the file's name that goes with `job`. Saving under another name is no step. */
  readonly fileName?: string | null;
}

/** More steps than anyone walks back, few enough to be kept on a tablet. */
export const MOST_STEPS = 500;

/** @param job  the job after the step, different from the one before */
export function takeStep(
  line: TimeLine,
  label: string,
  job: JobFile,
  mergeKey: string | null = null,
): TimeLine {
  const last = line.past.at(-1);
  if (last === undefined || mergeKey === null || mergeKey !== line.mergeKey) {
    return { ...line, job, past: withStep(line.past, { label, job: line.job }), future: [], mergeKey };
  }
  const before = line.past.slice(0, -1);
  // A drag that ends where it began is no step.
  if (last.job === job) return { ...line, job, past: before, future: [], mergeKey: null };
  return { ...line, job, past: [...before, { ...last, label }], future: [], mergeKey };
}

/** Another job in place of this one, as a step like any other: undo brings this one back. */
export function openInstead(line: TimeLine, label: string, job: JobFile, fileName: string | null): TimeLine {
  const step: Step = { label, job: line.job, fileName: line.fileName };
  return { job, fileName, past: withStep(line.past, step), future: [], mergeKey: null };
}

/** One step back; the same time line when there is none. */
export function stepBack(line: TimeLine): TimeLine {
  const step = line.past.at(-1);
  if (step === undefined) return line;
  const past = line.past.slice(0, -1);
  return { ...standAt(line, step), past, future: [...line.future, mirrored(line, step)], mergeKey: null };
}

/** One step forward again; the same time line when there is none. */
export function stepForward(line: TimeLine): TimeLine {
  const step = line.future.at(-1);
  if (step === undefined) return line;
  const future = line.future.slice(0, -1);
  return { ...standAt(line, step), past: [...line.past, mirrored(line, step)], future, mergeKey: null };
}

function withStep(past: readonly Step[], step: Step): readonly Step[] {
  return [...past, step].slice(-MOST_STEPS);
}

function standAt(line: TimeLine, step: Step): Pick<TimeLine, 'job' | 'fileName'> {
  return { job: step.job, fileName: step.fileName === undefined ? line.fileName : step.fileName };
}

/** The same step seen from its other end. */
function mirrored(line: TimeLine, step: Step): Step {
  const seen = { label: step.label, job: line.job };
  return step.fileName === undefined ? seen : { ...seen, fileName: line.fileName };
}
