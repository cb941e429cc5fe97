/** Changes of the flow test in the job file; each leaves the old job alone. */
import type { FlowTestFile, JobFile } from '../../../geometry/job/job-file.ts';

export type RunFile = FlowTestFile['runs'][number];
export type PointFile = RunFile['points'][number];
export type GuaranteeFile = NonNullable<FlowTestFile['guarantee']>;

/** Cold water, kg/m3; and four poles at 50 Hz with a little slip where the job names no speed. */
const WATER = 998;
const USUAL_SPEED = 1450;

/** A test without runs at a duty, m3/h. */
export function startingTest({ rotor }: Pick<JobFile, 'rotor'>, duty: number): FlowTestFile {
  return { density: WATER, ratedSpeed: rotor?.speed ?? USUAL_SPEED, duty, runs: [] };
}

export function withTest(job: JobFile, change: (test: FlowTestFile) => FlowTestFile): JobFile {
  return job.flowTest === undefined ? job : { ...job, flowTest: change(job.flowTest) };
}

export function withRun(job: JobFile, at: number, change: (run: RunFile) => RunFile): JobFile {
  return withTest(job, (test) => ({
    ...test,
    runs: test.runs.map((run, i) => (i === at ? change(run) : run)),
  }));
}

export function withRunAdded(job: JobFile, run: RunFile): JobFile {
  return withTest(job, (test) => ({ ...test, runs: [...test.runs, run] }));
}

export function withoutRun(job: JobFile, at: number): JobFile {
  return withTest(job, (test) => ({ ...test, runs: test.runs.filter((_, i) => i !== at) }));
}

/** The field set, or left out again with undefined. */
export function withField<Key extends keyof FlowTestFile>(
  test: FlowTestFile,
  key: Key,
  value: FlowTestFile[Key] | undefined,
): FlowTestFile {
  const { [key]: _, ...others } = test;
  return (value === undefined ? others : { ...others, [key]: value }) as FlowTestFile;
}

/** Kinds of run a person can choose from; anything else is one that is shown and not compared. */
export const KINDS = [
  { value: 'new', label: 'As new' },
  { value: 'before', label: 'As found' },
  { value: 'after', label: 'After repair' },
  { value: 'other', label: 'Other' },
] as const;

export type RunKind = (typeof KINDS)[number]['value'];

export const kindOf = (when: string): RunKind => KINDS.find(({ value }) => value === when)?.value ?? 'other';

/** The kind that the runs still lack, in the order they are made. */
export function nextKind(runs: readonly Pick<RunFile, 'when'>[]): RunKind {
  return (
    (['before', 'after', 'new'] as const).find((kind) => !runs.some(({ when }) => when === kind)) ?? 'other'
  );
}

export const POWER_AT = [
  { value: 'shaft', label: 'At the shaft' },
  { value: 'motor', label: 'Into the motor' },
] as const;

/** What a run holds at most, as the job file has it. */
export const MOST_POINTS = 1000;
