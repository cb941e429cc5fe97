import type { JobFile } from '../../geometry/job/job-file.ts';
import type { Step } from '../job/time-line.ts';
import { differsInLogAlone, lastStamp, logOf, takeBackLast } from './step-log.ts';

/** What one press on Undo takes back here. */
export interface TakeBack {
  /** To stand behind "Undo". */
  readonly label: string;
  /** `step`: the last step of the job's undo list. `stamp`: the last stamp of the log, because other edits came after it. */
  readonly by: 'step' | 'stamp';
}

/** Begins the label of an edit that took a stamp out: undoing that again would bring it back. */
const TOOK_BACK = 'take back ';

/**
 * What Undo would take back: what was done on the bench last, and never an edit of the wear or the fill that nobody at the bench sees.
 * @param past   the undo list
 * @param words  a step in words
 * @returns      null when the log is empty
 */
export function takeBackOf(
  job: JobFile,
  past: readonly Step[],
  words: (step: string) => string,
): TakeBack | null {
  const last = past.at(-1);
  if (last !== undefined && differsInLogAlone(last.job, job) && !last.label.startsWith(TOOK_BACK)) {
    return { label: last.label, by: 'step' };
  }
  const stamp = lastStamp(logOf(job));
  if (stamp === null) return null;
  const what = stamp.kind === 'start' ? 'start of' : 'end of';
  return { label: `${what} ${words(stamp.item.step)}`, by: 'stamp' };
}

/** Takes it back. */
export function takeBack(
  { label, by }: TakeBack,
  { undo, edit }: { undo(): void; edit(label: string, change: (job: JobFile) => JobFile): unknown },
): void {
  if (by === 'step') undo();
  else edit(`${TOOK_BACK}${label}`, takeBackLast);
}
