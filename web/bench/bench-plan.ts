import type { LogFile } from '../../geometry/job/job-file.ts';
import type { PlanStepResult } from '../../geometry/sheet/day-result.ts';
import type { BatchResult, CoatMixResult, Result } from '../../geometry/sheet/result.ts';
import type { Minute } from '../../geometry/units.ts';
import { isOver, runningPlace } from './step-log.ts';

/** The parts of the result the bench works from. */
export type BenchResult = Pick<Result, 'plan' | 'day' | 'filler' | 'coat' | 'cautions'>;

/** A mix by the id of its step: `fill:3`, `coat:1`, `coat:1.2`. */
export interface MixName {
  readonly material: 'fill' | 'coat';
  /** Of the mix of filler, or of the coat. */
  readonly number: number;
  /** Within the coat; 1 where the coat is one mix. */
  readonly coatMix: number;
}

/** null for steps that mix nothing. */
export function mixName(step: string): MixName | null {
  const found = /^(fill|coat):(\d+)(?:\.(\d+))?$/.exec(step);
  if (found === null) return null;
  const [, material, number, coatMix = '1'] = found;
  return {
    material: material === 'fill' ? 'fill' : 'coat',
    number: Number(number),
    coatMix: Number(coatMix),
  };
}

/** The mix of a step as the result has it; null when it has it no more, or when nothing is mixed. */
export function mixOf(result: BenchResult, step: string): BatchResult | CoatMixResult | null {
  const name = mixName(step);
  if (name === null) return null;
  const mixes =
    name.material === 'fill'
      ? result.filler.batches
      : (result.coat.layers.find(({ number }) => number === name.number)?.mixes ?? []);
  const number = name.material === 'fill' ? name.number : name.coatMix;
  return mixes.find((mix) => mix.number === number) ?? null;
}

/** From the start of mixing until it must be in place; null for steps that mix nothing. */
export function workingTimeOf({ filler, coat }: BenchResult, step: string): Minute | null {
  const name = mixName(step);
  if (name === null) return null;
  return name.material === 'fill' ? filler.workingTime : coat.workingTime;
}

/** `Mix 3`, `Coat 1`, `Coat 1, mix 2`: what is in the bowl, also when the plan has it no more. */
export function mixWords({ coat }: BenchResult, { material, number, coatMix }: MixName): string {
  if (material === 'fill') return `Mix ${number}`;
  const mixes = coat.layers.find((layer) => layer.number === number)?.mixes.length ?? 1;
  return mixes > 1 || coatMix > 1 ? `Coat ${number}, mix ${coatMix}` : `Coat ${number}`;
}

/** A step in words, also one that the plan has no more. */
export function stepWords(result: BenchResult, step: string): string {
  const planned = result.plan.find(({ id }) => id === step);
  if (planned !== undefined) return namedStep(result.plan, planned);
  const name = mixName(step);
  return name === null ? step : mixWords(result, name);
}

/** A step in words, with its part where the plan has the same for another one: "Blast plate". */
export function namedStep(plan: readonly PlanStepResult[], { id, step, parts }: PlanStepResult): string {
  const isShared = plan.some((other) => other.id !== id && other.step === step);
  return isShared ? `${step} ${parts.join(', ')}` : step;
}

/** Steps of the hands that are not over, in the order of the plan. */
export function stepsToDo(plan: readonly PlanStepResult[], log: LogFile): PlanStepResult[] {
  return plan.filter(({ id, hands }) => hands && !isOver(log, id));
}

/**
 * The step in hand: the one the person took, else one that is begun, else the first that is not over; null when all is done.
 * @param taken  id of the step the person took; it may be over by now
 */
export function stepInHand(toDo: readonly PlanStepResult[], log: LogFile, taken: string | null) {
  const begun = toDo.find(({ id }) => runningPlace(log, id) !== null);
  return toDo.find(({ id }) => id === taken) ?? begun ?? toDo[0] ?? null;
}
