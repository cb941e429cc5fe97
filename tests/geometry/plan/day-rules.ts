/** What holds of every day, checked from the steps alone: written without the scheduler, fault by fault. */
import type { PlanChoices } from '../../../geometry/job/job.ts';
import type { DayPlan, PlanStep } from '../../../geometry/plan/day-plan.ts';
import type { DayWork } from '../../../geometry/plan/day-work.ts';
import type { Minute } from '../../../geometry/units.ts';
import { isShopOpen } from './open-hours.ts';

/** Float dust of a day of a few thousand minutes. */
export const DUST: Minute = 1e-5;

const endOf = ({ start, minutes }: PlanStep): Minute => start + minutes;

/** Every rule of the plan that a day breaks; empty when it breaks none. */
export function dayFaults(day: DayPlan, work: DayWork, choices: PlanChoices): string[] {
  return [
    ...orderFaults(day),
    ...handsFaults(day, choices),
    ...contentFaults(day, work, choices),
    ...waitFaults(day, work),
    ...windowFaults(day, work),
  ];
}

/** Sorted, each named once, each after what it waits for, the sums right. */
function orderFaults({ steps, end, handsOn }: DayPlan): string[] {
  const ends = new Map(steps.map((step) => [step.id, endOf(step)]));
  const hands = steps.filter((step) => step.hands).reduce((sum, { minutes }) => sum + minutes, 0);
  return [
    ...(ends.size === steps.length ? [] : ['two steps of one id']),
    ...steps.flatMap((step, i) => (i > 0 && step.start < steps[i - 1].start ? [`${step.id} unsorted`] : [])),
    ...steps.flatMap(({ id, start, after }) =>
      after.flatMap((other) => {
        const free = ends.get(other);
        if (free === undefined) return [`${id} waits for ${other}, which is no step`];
        return start < free - DUST ? [`${id} at ${start} before ${other} ends at ${free}`] : [];
      }),
    ),
    ...(Math.abs(end - Math.max(0, ...ends.values())) > DUST ? ['end is not the last end'] : []),
    ...(Math.abs(handsOn - hands) > DUST ? ['handsOn is not the sum of the hands'] : []),
  ];
}

/** Two hands do one thing, in working hours. */
function handsFaults({ steps }: DayPlan, choices: PlanChoices): string[] {
  const work = steps.filter(({ hands }) => hands);
  return work.flatMap((step, i) => {
    const open = isShopOpen(choices, step.start, endOf(step));
    return [
      ...work
        .slice(i + 1)
        .filter((other) => step.start < endOf(other) - DUST && other.start < endOf(step) - DUST)
        .map((other) => `${step.id} and ${other.id} at once`),
      ...(step.start < 0 ? [`${step.id} before the start`] : []),
      ...(open || step.trouble === 'outside-shift' ? [] : [`${step.id} outside hours at ${step.start}`]),
      ...(open && step.trouble === 'outside-shift' ? [`${step.id} inside hours is called outside`] : []),
    ];
  });
}

/** Every mix and every step of every part once, as long as it takes, and nothing else. */
function contentFaults({ steps }: DayPlan, work: DayWork, { minutes }: PlanChoices): string[] {
  const { filler, coat } = work;
  const wanted = new Map<string, Minute>();
  const planned = work.parts.filter(
    ({ id, coated }) =>
      (coat.perCoat.length > 0 && coated !== false) ||
      filler.batches.some(({ covers }) => covers.some(({ part }) => part === id)),
  );
  for (const { id } of planned) {
    wanted.set(`wash:${id}`, minutes.wash).set(`blast:${id}`, minutes.blast);
    wanted.set(`blow-down:${id}`, minutes.blowDown).set(`wipe:${id}`, minutes.wipe);
    wanted.set(`flash-off:${id}`, minutes.flashOff).set(`dress-hard:${id}`, minutes.dressHard);
  }
  for (const { number, placing } of filler.batches) {
    wanted.set(`fill:${number}`, (work.mixTime ?? 2) + placing).set(`dress:${number}`, minutes.dress);
    wanted.set(`firm-up:${number}`, filler.firmsUp?.from ?? filler.workingTime);
  }
  for (const { number, mixes } of coat.perCoat) {
    for (const mix of mixes)
      wanted.set(`coat:${number}.${mix.number}`, (work.coatMixTime ?? 2) + mix.placing);
    if (number === coat.perCoat.length) continue;
    wanted.set(`overcoat:${number}`, coat.overcoat?.from ?? coat.workingTime);
    wanted.set(`touch-test:${number}`, minutes.touchTest);
  }
  if (planned.length > 0) {
    const endOfLast = (kind: string) => Math.max(0, ...steps.filter((step) => step.kind === kind).map(endOf));
    const filled = endOfLast('fill') + (filler.batches.length > 0 ? (filler.hard ?? 0) : 0);
    const coated = endOfLast('coat') + (coat.hard ?? 0);
    const from = endOfLast(coat.perCoat.length > 0 ? 'coat' : 'fill');
    wanted.set('harden', Math.max(filled, coat.perCoat.length > 0 ? coated : 0, from) - from);
    wanted.set('check', minutes.check).set('assemble', minutes.assemble).set('test', minutes.test);
  }
  return [
    ...steps.filter(({ id }) => !wanted.has(id)).map(({ id }) => `${id} is nobody's`),
    ...[...wanted].flatMap(([id, time]) => {
      const step = steps.find((each) => each.id === id);
      if (step === undefined) return [`${id} is missing`];
      return Math.abs(step.minutes - time) > DUST ? [`${id} takes ${step.minutes}, not ${time}`] : [];
    }),
  ];
}

/** What must be over before what, from the work itself and not from `after`. */
function waitFaults({ steps }: DayPlan, { filler, coat }: DayWork): string[] {
  const at = new Map(steps.map((step) => [step.id, step]));
  const faults: string[] = [];
  const waits = (id: string, other: string, wait: Minute = 0) => {
    const [step, before] = [at.get(id), at.get(other)];
    if (step && before && step.start < endOf(before) + wait - DUST)
      faults.push(`${id} too soon after ${other}`);
  };
  const batches = filler.batches;
  const firm = filler.firmsUp?.from ?? filler.workingTime;
  for (const { number, covers } of batches) {
    waits(`dress:${number}`, `fill:${number}`, firm);
    for (const { part, face, pass } of covers) {
      waits(`fill:${number}`, `flash-off:${part}`);
      for (const other of batches) {
        const isUnder = other.covers.some(
          (below) => below.part === part && below.face === face && below.pass === pass - 1,
        );
        if (isUnder && other !== batches[number - 1]) waits(`fill:${number}`, `fill:${other.number}`, firm);
      }
    }
    waits('coat:1.1', `dress:${number}`);
    waits('harden', `fill:${number}`);
    for (const { part } of covers) waits(`dress-hard:${part}`, `dress:${number}`);
  }
  const last = coat.perCoat.at(-1);
  if (last) waits('harden', `coat:${last.number}.${last.mixes.length}`);
  for (const { number, mixes } of coat.perCoat) {
    for (let m = 2; m <= mixes.length; m++) waits(`coat:${number}.${m}`, `coat:${number}.${m - 1}`);
    if (number > 1) waits(`coat:${number}.1`, `touch-test:${number - 1}`);
  }
  for (const { id, kind, parts } of steps) {
    for (const part of parts) {
      if (kind === 'coat') waits(id, `flash-off:${part}`);
      for (const [later, earlier] of PREPARATION) if (kind === later) waits(id, `${earlier}:${part}`);
    }
    if (kind === 'dress-hard') {
      waits(id, 'harden');
      waits('check', id);
    }
  }
  waits('assemble', 'check');
  waits('test', 'assemble');
  return faults;
}

const PREPARATION = [
  ['blast', 'wash'],
  ['blow-down', 'blast'],
  ['wipe', 'blow-down'],
  ['flash-off', 'wipe'],
] as const;

/** Dressing and the next coat inside the windows of the data sheet, or it is said that they are not. */
function windowFaults({ steps }: DayPlan, { filler, coat }: DayWork): string[] {
  const at = new Map(steps.map((step) => [step.id, step]));
  return steps.flatMap((step) => {
    const { id, kind, window, trouble, start } = step;
    const lastMix = coat.perCoat[(step.coat ?? 0) - 2]?.mixes.length;
    const [first, last, times] =
      kind === 'dress'
        ? [at.get(`fill:${step.batch}`), at.get(`fill:${step.batch}`), filler.firmsUp]
        : [
            at.get(`coat:${Number(step.coat) - 1}.1`),
            at.get(`coat:${Number(step.coat) - 1}.${lastMix}`),
            coat.overcoat,
          ];
    if ((kind !== 'dress' && kind !== 'coat') || !first || !last || times === null)
      return window === null ? [] : [`${id} has a window nobody gave`];
    const opens = endOf(last) + times.from;
    const closes = endOf(first) + times.to;
    const isKept = start >= opens - DUST && endOf(step) <= closes + DUST;
    const isSame =
      window !== null && Math.abs(window.opens - opens) < DUST && Math.abs(window.closes - closes) < DUST;
    return [
      ...(isSame || opens > closes - DUST ? [] : [`${id} shows another window`]),
      ...(isKept || trouble !== null ? [] : [`${id} misses its window`]),
      ...(isKept && trouble === 'window-missed' ? [`${id} is called late and is not`] : []),
      ...(start < opens - DUST ? [`${id} before its window opens`] : []),
    ];
  });
}
