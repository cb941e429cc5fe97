/** How long a piece of work takes, in milliseconds a call. */
export interface Timing {
  readonly name: string;
  readonly fastest: number;
  readonly median: number;
  /** From the 10th to the 90th hundredth of the samples, as a share of the median. */
  readonly spread: number;
  readonly samples: number;
}

/** How many times as long one piece of work takes as another, both in the same run, turn and turn about. */
export interface Ratio {
  readonly name: string;
  readonly median: number;
  readonly spread: number;
  readonly samples: number;
  /** What it has to be; null where nothing is demanded. */
  readonly most: number | null;
  readonly least: number | null;
}

/** What a bench file hands over: `export function bench()` returns it. */
export interface BenchResult {
  readonly timings: readonly Timing[];
  readonly ratios: readonly Ratio[];
}

/** Work to time. What it returns is kept, so that the engine cannot leave the work out. */
export type Work = () => unknown;

/** Shorter samples than this are mostly clock: quick work is called several times a sample. */
const LEAST_SAMPLE_MS = 1;
const LEAST_RATIO_SAMPLES = 15;

/** Takes what the work returned; written to, never read. */
const kept: { last?: unknown } = {};

/**
 * Times work on its own. For a claim use `ratio`: milliseconds differ from machine to machine and from minute to minute.
 * @param warm     calls before the first sample, so that the code is compiled
 * @param repeats  samples
 */
export function measure(name: string, work: Work, { warm = 10, repeats = 30 } = {}): Timing {
  const calls = warmUp(work, warm);
  collectGarbage();
  const samples = Float64Array.from({ length: repeats }, () => sample(work, calls)).sort();
  return { name, fastest: samples[0], ...middle(samples) };
}

/**
 * Times two pieces of work side by side: each sample runs both, the first alternating, and gives one ratio of `work` to `unit`.
 * @returns the two timings, and the median of the samples' ratios: what disturbs the machine disturbs both alike
 */
export function ratio(
  workName: string,
  work: Work,
  unitName: string,
  unit: Work,
  { warm = 10, repeats = 31, most = null as number | null, least = null as number | null } = {},
): BenchResult {
  if (repeats < LEAST_RATIO_SAMPLES) {
    throw new Error(`ratio: repeats is ${repeats}, but a median wants ${LEAST_RATIO_SAMPLES} or more`);
  }
  const workCalls = warmUp(work, warm);
  const unitCalls = warmUp(unit, warm);
  collectGarbage();
  const workSamples = new Float64Array(repeats);
  const unitSamples = new Float64Array(repeats);
  const ratios = new Float64Array(repeats);
  for (let i = 0; i < repeats; i++) {
    if (i % 2 === 0) workSamples[i] = sample(work, workCalls);
    unitSamples[i] = sample(unit, unitCalls);
    if (i % 2 === 1) workSamples[i] = sample(work, workCalls);
    ratios[i] = workSamples[i] / unitSamples[i];
  }
  const timing = (name: string, samples: Float64Array): Timing => ({
    name,
    fastest: samples.sort()[0],
    ...middle(samples),
  });
  return {
    timings: [timing(workName, workSamples), timing(unitName, unitSamples)],
    ratios: [{ name: `${workName} / ${unitName}`, ...middle(ratios.sort()), most, least }],
  };
}

/** Warms the work up and says how many calls make a sample long enough. */
function warmUp(work: Work, warm: number): number {
  for (let i = 0; i < warm; i++) kept.last = work();
  const once = Math.min(sample(work, 1), sample(work, 1), sample(work, 1));
  return Math.max(1, Math.ceil(LEAST_SAMPLE_MS / Math.max(once, 1e-5)));
}

/** ms a call over `calls` calls. */
function sample(work: Work, calls: number): number {
  const start = performance.now();
  for (let i = 0; i < calls; i++) kept.last = work();
  return (performance.now() - start) / calls;
}

/** @param sorted ascending */
function middle(sorted: Float64Array): { median: number; spread: number; samples: number } {
  const at = (share: number) => sorted[Math.round(share * (sorted.length - 1))];
  const median = at(0.5);
  return { median, spread: (at(0.9) - at(0.1)) / median, samples: sorted.length };
}

function collectGarbage(): void {
  globalThis.gc?.();
}
