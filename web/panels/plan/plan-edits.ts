/** Changes to what a job says of the weather and the day. Pure; a field that is cleared leaves the job. */
import type { ClimateFile, JobFile, PlanFile } from '../../../geometry/job/job-file.ts';

export type BreakFile = NonNullable<PlanFile['breaks']>[number];
export type StepMinutesFile = NonNullable<PlanFile['minutes']>;

/** A new value, or undefined to take the field out. */
type Change<T> = { readonly [K in keyof T]?: T[K] | undefined };

export function withClimate(job: JobFile, change: Change<ClimateFile>): JobFile {
  const { climate, ...rest } = job;
  const changed = changedFields<ClimateFile>(climate, change);
  return changed === undefined ? rest : { ...rest, climate: changed };
}

export function withPlan(job: JobFile, change: Change<PlanFile>): JobFile {
  const { plan, ...rest } = job;
  const changed = changedFields<PlanFile>(plan, change);
  return changed === undefined ? rest : { ...rest, plan: changed };
}

export function withStepMinutes(job: JobFile, change: Change<StepMinutesFile>): JobFile {
  return withPlan(job, { minutes: changedFields<StepMinutesFile>(job.plan?.minutes, change) });
}

/** No breaks are no list. */
export function withBreaks(job: JobFile, breaks: readonly BreakFile[]): JobFile {
  return withPlan(job, { breaks: breaks.length === 0 ? undefined : breaks });
}

/** One more break: at noon, or two hours after the last. */
export function withBreakAdded(breaks: readonly BreakFile[]): readonly BreakFile[] {
  const last = breaks.at(-1);
  const hour = last === undefined ? 12 : (Number(last.at.slice(0, 2)) + 2) % 24;
  return [...breaks, { at: `${String(hour).padStart(2, '0')}:00`, minutes: 30 }];
}

/** @returns undefined when nothing is left to say */
function changedFields<T extends object>(old: T | undefined, change: Change<T>): T | undefined {
  const fields = Object.entries({ ...old, ...change }).filter(([, value]) => value !== undefined);
  return fields.length === 0 ? undefined : (Object.fromEntries(fields) as T);
}
