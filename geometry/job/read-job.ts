import { checkJob } from './check-job.ts';
import { type Fault, missing, shown, WHOLE_FILE } from './fault.ts';
import { FORMAT, type JobFile, jobSchema } from './job-file.ts';
import { oddValues } from './odd-values.ts';
import { parseText } from './parse-text.ts';
import { readableJob } from './readable.ts';
import { fallbackNeeds, schemaFaults } from './schema-faults.ts';

export type JobReading = { readonly job: JobFile } | { readonly faults: readonly Fault[] };

/**
 * Reads the text of a job file: the job, or every fault in it at once (at most `MOST_FAULTS`). Never throws.
 * Fields we do not know stay in the job. A file that is no JSON or of a newer format has that one fault.
 */
export function readJob(text: string): JobReading {
  const parsed = parseText(text);
  return 'fault' in parsed ? { faults: [parsed.fault] } : readJobValue(parsed.value);
}

/** The same for a value that is parsed already, such as a job a form has just changed. */
export function readJobValue(value: unknown): JobReading {
  const { tooDeep, faults: odd } = oddValues(value);
  if (tooDeep !== null) return { faults: [tooDeep] };
  const newer = newerFormat(value);
  if (newer !== null) return { faults: [newer] };

  const read = jobSchema.safeParse(value, { error: fallbackNeeds });
  if (read.success && odd.length === 0) {
    const faults = checkJob(read.data);
    return faults.length === 0 ? { job: read.data } : { faults: limited(faults) };
  }
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    return { faults: [notAJob(value)] };
  const issues = read.error?.issues ?? [];
  const readable = readableJob(
    value,
    issues.map((issue) => issue.path),
  );
  const unread = oneAField([...schemaFaults(issues, value), ...odd]);
  return {
    faults: limited([...unread.values(), ...checkJob(readable).filter(({ field }) => !unread.has(field))]),
  };
}

/** More would not be read. */
const MOST_FAULTS = 500;

function limited(faults: readonly Fault[]): readonly Fault[] {
  if (faults.length <= MOST_FAULTS) return faults;
  const found = `${faults.length - MOST_FAULTS} more faults`;
  return [
    ...faults.slice(0, MOST_FAULTS),
    { field: WHOLE_FILE, found, needs: 'a job without faults', problem: `${found} not listed here` },
  ];
}

/** The first fault of each field; a number that is both too large and no whole number is said once. */
function oneAField(faults: readonly Fault[]): ReadonlyMap<string, Fault> {
  const byField = new Map<string, Fault>();
  for (const fault of faults) if (!byField.has(fault.field)) byField.set(fault.field, fault);
  return byField;
}

/** A newer format may mean anything by its fields: no other fault is worth telling. */
function newerFormat(value: unknown): Fault | null {
  if (typeof value !== 'object' || value === null || !('format' in value)) return null;
  const { format } = value;
  if (typeof format !== 'number' || !Number.isInteger(format) || format <= FORMAT) return null;
  return {
    field: 'format',
    found: shown(format),
    needs: `${FORMAT}, the format this version reads`,
    problem: `${format} is newer than this version reads (${FORMAT})`,
  };
}

function notAJob(value: unknown): Fault {
  const found = shown(value);
  return value === undefined
    ? missing(WHOLE_FILE, 'a job')
    : { field: WHOLE_FILE, found, needs: 'a job, an object in braces { … }' };
}
