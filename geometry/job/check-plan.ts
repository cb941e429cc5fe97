import { type Fault, missing, shown } from './fault.ts';
import type { JobFile, PlanFile } from './job-file.ts';
import type { Readable } from './readable.ts';

type Plan = Readable<PlanFile>;
type Log = NonNullable<Readable<JobFile>['log']>;

/** What the day must agree on: a shift ends after it begins, on the same day, and begins when nothing else says. */
export function checkPlan(plan: Plan): Fault[] {
  const { start, shiftEnd } = plan;
  if (shiftEnd == null || start === null || plan.shiftStart === null) return [];
  const shiftStart = plan.shiftStart ?? start?.slice('2026-12-01T'.length);
  if (shiftStart === undefined) return [missing('plan.start', 'when work begins, since a shift ends')];
  const faults: Fault[] = [];
  if (shiftEnd <= shiftStart) {
    faults.push({
      field: 'plan.shiftEnd',
      found: shown(shiftEnd),
      needs: `later than the start of the shift, ${shiftStart}`,
    });
  }
  return faults;
}

/** Nothing is done before it was begun. */
export function checkLog(log: Log): Fault[] {
  return log.flatMap((entry, i) => {
    if (entry?.started == null || entry.done == null) return [];
    if (Date.parse(entry.done) >= Date.parse(entry.started)) return [];
    return [
      { field: `log[${i}].done`, found: shown(entry.done), needs: `at or after started, ${entry.started}` },
    ];
  });
}
