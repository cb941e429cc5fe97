import type { Minute } from '../units.ts';
import type { PlanStep } from './day-plan.ts';
import type { DayTask, TaskPart } from './day-task.ts';
import type { LaidDay } from './lay-out-day.ts';
import { coatSteps, fillSteps } from './material-steps.ts';
import type { Preparation } from './preparation.ts';
import { waitStep, workStep } from './step.ts';
import {
  ASSEMBLE_NOTE,
  BLAST_NOTE,
  BLOW_DOWN_NOTE,
  CHECK_NOTE,
  dressHardNote,
  FLASH_OFF_NOTE,
  hardenNote,
  TEST_NOTE,
  WASH_NOTE,
  WIPE_NOTE,
} from './step-notes.ts';

/** The steps of a day that has been laid out: what each waits for, its window, its note, what could not be had. By start. */
export function daySteps(task: DayTask, laid: LaidDay): PlanStep[] {
  const steps = [
    ...task.parts.flatMap((part) => {
      const preparation = laid.preparations.get(part.id);
      return preparation ? preparationSteps(task, part, preparation) : [];
    }),
    ...fillSteps(task, laid),
    ...coatSteps(task, laid),
    ...lastSteps(task, laid),
  ];
  return steps.sort((a, b) => a.start - b.start || Number(a.hands) - Number(b.hands));
}

function preparationSteps({ hours, times }: DayTask, { id }: TaskPart, when: Preparation): PlanStep[] {
  const { wash, blast, blowDown, wipe } = when;
  const parts = [id];
  const work = (
    kind: 'wash' | 'blast' | 'blow-down' | 'wipe',
    start: Minute,
    minutes: Minute,
    after: string[],
    note: string,
  ) => workStep(hours, { kind, of: id, parts, start, minutes, after, note });
  return [
    work('wash', wash, times.wash, [], WASH_NOTE),
    work('blast', blast, times.blast, [`wash:${id}`], BLAST_NOTE),
    work('blow-down', blowDown, times.blowDown, [`blast:${id}`], BLOW_DOWN_NOTE),
    work('wipe', wipe, times.wipe, [`blow-down:${id}`], WIPE_NOTE),
    waitStep({
      kind: 'flash-off',
      of: id,
      parts,
      start: wipe + times.wipe,
      minutes: times.flashOff,
      after: [`wipe:${id}`],
      note: FLASH_OFF_NOTE,
    }),
  ];
}

/** From hardening to the test run. */
function lastSteps(task: DayTask, laid: LaidDay): PlanStep[] {
  const { hours, times, mixes } = task;
  const all = task.parts.map(({ id }) => id);
  const work = (kind: 'check' | 'assemble' | 'test', after: readonly string[], note: string) =>
    workStep(hours, { kind, of: null, parts: all, start: laid[kind], minutes: times[kind], after, note });
  const harden = waitStep({
    kind: 'harden',
    of: null,
    parts: all,
    start: laid.harden,
    minutes: laid.isHard - laid.harden,
    after: [lastOn(task, laid)],
    note: hardenNote(task),
  });
  const dressHard = task.parts.map((part, i) =>
    workStep(hours, {
      kind: 'dress-hard',
      of: part.id,
      parts: [part.id],
      start: laid.dressHard[i],
      minutes: times.dressHard,
      after: [
        'harden',
        ...(task.coats === null ? mixes : [])
          .filter(({ parts }) => parts.includes(part.id))
          .map(({ number }) => `dress:${number}`),
      ],
      note: dressHardNote(part),
    }),
  );
  return [
    harden,
    ...dressHard,
    work(
      'check',
      dressHard.map(({ id }) => id),
      CHECK_NOTE,
    ),
    work('assemble', ['check'], ASSEMBLE_NOTE),
    work('test', ['assemble'], TEST_NOTE),
  ];
}

/** id of what goes on last: it hardens last. */
function lastOn({ mixes, coats }: DayTask, { fills }: LaidDay): string {
  if (coats !== null) return `coat:${coats.coats.length}.${coats.coats[coats.coats.length - 1].length}`;
  const end = (i: number) => fills[i].fill + mixes[i].minutes;
  const last = mixes.reduce((latest, _, i) => (end(i) > end(latest) ? i : latest), 0);
  return `fill:${mixes[last].number}`;
}
