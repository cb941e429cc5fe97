import type { Minute } from '../units.ts';
import type { DayTask, TaskMix, TaskPart } from './day-task.ts';

/** More faces than this are counted, not named. */
const MOST_NAMED = 3;

export const WASH_NOTE = 'Oil, grease and salt off before blasting.';
export const BLAST_NOTE = 'To bright, rough metal. From here on touch it with clean gloves only.';
export const BLOW_DOWN_NOTE = 'With dry air, free of oil.';
export const WIPE_NOTE = 'Clean cloth, clean solvent; turn the cloth often.';
export const FLASH_OFF_NOTE = 'Until the solvent is gone.';

export function fillNote(mix: TaskMix, task: DayTask, stale: readonly string[]): string {
  return sentences([
    stale.length > 0 && reblast(stale),
    mix.covers.length > 0 && `On ${whereTo(mix)}.`,
    `In place within ${wholeMinutes(task.fillWithin)} of starting to mix.`,
    mix.twice.length > 0 &&
      `It holds more than one layer of ${named(mix.twice)}: mix each layer apart, once the one below is dressed.`,
  ]);
}

export function firmUpNote(task: DayTask): string {
  return task.dressing.closes === null
    ? 'The data sheet does not say when it firms up: the working time is taken, and no end.'
    : '';
}

export function dressNote(mix: TaskMix, task: DayTask): string {
  const { opens, closes, minutes } = task.dressing;
  return sentences([
    mix.isCovered
      ? 'Level it and leave it rough: the next layer goes on it.'
      : `${dressed(task.parts.filter(({ id }) => mix.parts.includes(id)))}.`,
    closes !== null &&
      closes - opens < minutes &&
      `Dressing takes ${wholeMinutes(minutes)} and the filler allows ${wholeMinutes(closes - opens)}: begin as soon as it firms up.`,
  ]);
}

/** @param isFirst  of the mixes of its coat */
export function coatNote(
  task: DayTask,
  isFirst: boolean,
  stale: readonly string[],
  isMissed: boolean,
): string {
  return sentences([
    stale.length > 0 && reblast(stale),
    isFirst && 'Check the weather first: the part at least 3 degC above the dew point.',
    `Brushed out within ${wholeMinutes(task.coatWithin)} of starting to mix.`,
    isMissed && 'The coat below is past its window by then: roughen it and wipe it first.',
  ]);
}

export function overcoatNote(task: DayTask): string {
  return task.coats?.closes === null
    ? 'The data sheet does not say when the next coat goes on: the working time is taken, and no end.'
    : '';
}

export const TOUCH_TEST_NOTE = 'A gloved finger leaves a print and the coat does not move.';

export function hardenNote(task: DayTask): string {
  const what = task.coats === null ? 'filler' : 'coat';
  return task.hard === null
    ? `The data sheet does not say when the ${what} is hard: ask before going on.`
    : '';
}

export function dressHardNote(part: TaskPart): string {
  return part.tips ? 'Square the vane tips.' : '';
}

export const CHECK_NOTE = 'Gap and balance against what was worked out.';
export const ASSEMBLE_NOTE = 'Turn the shaft by hand: nothing rubs.';
export const TEST_NOTE = 'Flow, head and power, as before the repair.';

const dressed = (parts: readonly TaskPart[]): string =>
  `Dress flush${parts.some(({ tips }) => tips) ? ', square the vane tips' : ''}, take the dust off`;

const reblast = (stale: readonly string[]): string =>
  `Blasted more than 4 h before: blast ${named(stale)} again lightly.`;

function whereTo({ covers }: TaskMix): string {
  return named([...new Set(covers.map(({ part, face }) => `${part}: ${face}`))]);
}

function named(names: readonly string[]): string {
  const rest = names.length - MOST_NAMED;
  const first = names.slice(0, MOST_NAMED).join(', ');
  return rest > 0 ? `${first} and ${rest} more` : first;
}

/** Rounded down: a minute less is safe, a minute more is not. */
function wholeMinutes(time: Minute): string {
  return time < 10 ? `${Math.floor(time * 10 + 1e-6) / 10} min` : `${Math.floor(time + 1e-6)} min`;
}

function sentences(parts: readonly (string | false)[]): string {
  return parts.filter((part) => part !== false).join(' ');
}
