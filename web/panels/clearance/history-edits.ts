/** Changes to what a job says of its wear so far. Pure; a field that is cleared leaves the job, and so does a history that says nothing. */
import type { HistoryFile, JobFile } from '../../../geometry/job/job-file.ts';

export type EarlierRepairFile = NonNullable<HistoryFile['repairs']>[number];

/** A new value, or undefined to take the field out. */
export type RepairChange = { readonly [K in keyof EarlierRepairFile]?: EarlierRepairFile[K] | undefined };

export function withHours(job: JobFile, hours: number | undefined): JobFile {
  return withHistory(job, { ...job.history, hours });
}

export function withRepair(job: JobFile, at: number, change: RepairChange): JobFile {
  return withRepairs(job, (repairs) =>
    repairs.map((old, i) => (i === at ? (withoutNothing({ ...old, ...change }) as EarlierRepairFile) : old)),
  );
}

/** One more repair, still without hours: it counts once it has some. */
export function withRepairAdded(job: JobFile, date: string): JobFile {
  const part = job.history?.repairs?.at(-1)?.part ?? job.parts[0].id;
  return withRepairs(job, (repairs) => [...repairs, { part, date, hours: 0, deepest: 0 }]);
}

export function withRepairRemoved(job: JobFile, at: number): JobFile {
  return withRepairs(job, (repairs) => repairs.filter((_, i) => i !== at));
}

function withRepairs(
  job: JobFile,
  change: (repairs: readonly EarlierRepairFile[]) => readonly EarlierRepairFile[],
): JobFile {
  const repairs = change(job.history?.repairs ?? []);
  return withHistory(job, { ...job.history, repairs: repairs.length === 0 ? undefined : repairs });
}

function withHistory(
  { history: _, ...rest }: JobFile,
  history: {
    readonly hours?: number | undefined;
    readonly repairs?: readonly EarlierRepairFile[] | undefined;
  },
): JobFile {
  const said = withoutNothing(history) as HistoryFile;
  return Object.keys(said).length === 0 ? rest : { ...rest, history: said };
}

const withoutNothing = (fields: object): object =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined));
