import type { CoatChain, CoatPlace } from './coat-chain.ts';
import type { PlanStep } from './day-plan.ts';
import type { DayTask } from './day-task.ts';
import type { LaidDay } from './lay-out-day.ts';
import { isOutside, waitStep, workStep } from './step.ts';
import { coatNote, dressNote, fillNote, firmUpNote, overcoatNote, TOUCH_TEST_NOTE } from './step-notes.ts';

/** Mix after mix of filler: put in place, waited for, dressed. */
export function fillSteps(task: DayTask, laid: LaidDay): PlanStep[] {
  const { mixes, hours, dressing } = task;
  const stale = staleAt(task, laid);
  return mixes.flatMap((mix, i) => {
    const { number, parts, minutes } = mix;
    const { fill, dress } = laid.fills[i];
    const filled = fill + minutes;
    const { opens, closes } = dressing;
    return [
      workStep(hours, {
        of: number,
        parts,
        batch: number,
        kind: 'fill',
        start: fill,
        minutes,
        after: [
          ...parts.map((id) => `flash-off:${id}`),
          ...mix.on.map((below) => `dress:${mixes[below].number}`),
        ],
        note: fillNote(mix, task, stale.get(i) ?? []),
      }),
      waitStep({
        of: number,
        parts,
        batch: number,
        kind: 'firm-up',
        start: filled,
        minutes: opens,
        after: [`fill:${number}`],
        note: firmUpNote(task),
      }),
      workStep(hours, {
        of: number,
        parts,
        batch: number,
        kind: 'dress',
        start: dress,
        minutes: dressing.minutes,
        after: [`firm-up:${number}`],
        note: dressNote(mix, task),
        window: closes === null ? null : { opens: filled + opens, closes: filled + closes },
      }),
    ];
  });
}

/** Coat after coat, with the wait and the touch test between. */
export function coatSteps(task: DayTask, laid: LaidDay): PlanStep[] {
  const { coats: chain } = task;
  if (chain === null) return [];
  const parts = task.parts.filter(({ coated }) => coated).map(({ id }) => id);
  const bare = task.parts.filter(({ filled }) => !filled).map(({ id }) => id);
  const stale = laid.stale.filter((id) => bare.includes(id));
  const ground = [
    ...task.mixes.map(({ number }) => `dress:${number}`),
    ...bare.map((id) => `flash-off:${id}`),
  ];
  return laid.coats.flatMap((place, c) => {
    const coat = c + 1;
    const window = c > 0 ? overcoatWindow(chain, laid.coats, c) : null;
    const mixes = place.mixes.map((start, m) => {
      const minutes = chain.coats[c][m];
      const isMissed = window !== null && isOutside(window, start, minutes);
      const first = c === 0 ? ground : [`touch-test:${c}`];
      return workStep(task.hours, {
        kind: 'coat',
        of: `${coat}.${m + 1}`,
        parts,
        coat,
        coatMix: m + 1,
        start,
        minutes,
        after: m === 0 ? first : [`coat:${coat}.${m}`],
        note: coatNote(task, m === 0, c === 0 && m === 0 ? stale : [], isMissed),
        window,
      });
    });
    return [...betweenCoats(task, chain, laid.coats, c, parts), ...mixes];
  });
}

/** The wait for coat c to take the next, and the touch test of it. */
function betweenCoats(
  task: DayTask,
  chain: CoatChain,
  places: readonly CoatPlace[],
  c: number,
  parts: readonly string[],
): PlanStep[] {
  const { touchTest } = places[c];
  if (touchTest === null) return [];
  return [
    waitStep({
      of: c,
      coat: c,
      parts,
      kind: 'overcoat',
      start: mixEnd(chain, places, c - 1, places[c - 1].mixes.length - 1),
      minutes: chain.opens,
      after: [`coat:${c}.${places[c - 1].mixes.length}`],
      note: overcoatNote(task),
    }),
    workStep(task.hours, {
      of: c,
      coat: c,
      parts,
      kind: 'touch-test',
      start: touchTest,
      minutes: chain.touchTest,
      after: [`overcoat:${c}`],
      note: TOUCH_TEST_NOTE,
    }),
  ];
}

function overcoatWindow(chain: CoatChain, places: readonly CoatPlace[], c: number): PlanStep['window'] {
  if (chain.closes === null) return null;
  return {
    opens: mixEnd(chain, places, c - 1, places[c - 1].mixes.length - 1) + chain.opens,
    closes: mixEnd(chain, places, c - 1, 0) + chain.closes,
  };
}

function mixEnd({ coats }: CoatChain, places: readonly CoatPlace[], c: number, m: number): number {
  return places[c].mixes[m] + coats[c][m];
}

/** Which parts each mix is the first to go on, of those blasted too long before. */
function staleAt({ mixes }: DayTask, { stale, fills }: LaidDay): Map<number, string[]> {
  const at = new Map<number, string[]>();
  for (const id of stale) {
    const on = mixes.map((_, i) => i).filter((i) => mixes[i].parts.includes(id));
    const first = on.sort((a, b) => fills[a].fill - fills[b].fill).at(0);
    if (first !== undefined) at.set(first, [...(at.get(first) ?? []), id]);
  }
  return at;
}
