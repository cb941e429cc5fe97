/** What the person decides about the day, and what was done when. */
import {
  clockTime,
  described,
  grams,
  instant,
  list,
  localTime,
  minutes,
  oneOf,
  optional,
  quantity,
  record,
  temperature,
  text,
} from './field-kinds.ts';

const span = quantity('a time in minutes', { least: 0, most: 10_000 });

const pause = record('a break', { at: clockTime, minutes });

const stepTimes = record('times of the steps', {
  wash: optional(span, 'Each part'),
  blast: optional(span, 'Each part'),
  blowDown: optional(span, 'Each part'),
  wipe: optional(span, 'Each part'),
  flashOff: optional(span, 'Waiting for the solvent to be gone'),
  dress: optional(span, 'Each mix, as it firms up'),
  touchTest: optional(span),
  dressHard: optional(span, 'Each part'),
  check: optional(span, 'Gap and balance'),
  assemble: optional(span),
  test: optional(span),
});

export const planSchema = record('the plan', {
  start: optional(localTime, 'When work begins; hours count from zero when left out'),
  shiftStart: optional(clockTime, 'On later days; the time of day of the start when left out'),
  shiftEnd: optional(clockTime, 'No work of the hands after it; none when left out'),
  breaks: optional(list(pause, 'breaks', 0, 20), 'By the shop clock, every day'),
  coatRate: optional(
    quantity('a rate in cm2/min', { above: 0, most: 100_000 }),
    'What this person brushes, cm2/min; 400 when left out',
  ),
  minutes: optional(stepTimes, 'How long this shop takes, min'),
});

const batchNumber = text('a batch number', 100);

export const logSchema = list(
  record('an entry of the log', {
    step: described(text('the id of a step of the plan', 64), 'As in the result: "fill:3", "coat:1.2"'),
    started: instant,
    done: optional(instant),
    outcome: optional(
      oneOf(['skipped', 'discarded']),
      'Left undone, or mixed and thrown away; done when left out',
    ),
    massA: optional(grams, 'As weighed, g'),
    massB: optional(grams, 'As weighed, g'),
    packA: optional(batchNumber, 'Batch number on the pack of A'),
    packB: optional(batchNumber, 'Batch number on the pack of B'),
    surface: optional(temperature, 'Of the part, degC'),
    note: optional(text('a note', 1000)),
  }),
  'entries of the log',
  0,
  5000,
);
