/** What the person decides about the day, and what was done when. */
import {
  clockTime,
  grams,
  instant,
  list,
  localTime,
  minutes,
  quantity,
  record,
  temperature,
  text,
} from './field-kinds.ts';

const span = quantity('a time in minutes', { least: 0, most: 10_000 });

export const planSchema = record('the plan', {
  start: localTime.optional().describe('When work begins; hours count from zero when left out'),
  shiftStart: clockTime.optional().describe('On later days; the time of day of the start when left out'),
  shiftEnd: clockTime.optional().describe('No work of the hands after it; none when left out'),
  breaks: list(record('a break', { at: clockTime, minutes }), 'breaks', 0, 20)
    .optional()
    .describe('By the shop clock, every day'),
  coatRate: quantity('a rate in cm2/min', { above: 0, most: 100_000 })
    .optional()
    .describe('What this person brushes, cm2/min; 400 when left out'),
  minutes: record('times of the steps', {
    wash: span.optional().describe('Each part'),
    blast: span.optional().describe('Each part'),
    blowDown: span.optional().describe('Each part'),
    wipe: span.optional().describe('Each part'),
    flashOff: span.optional().describe('Waiting for the solvent to be gone'),
    dress: span.optional().describe('Each mix, as it firms up'),
    touchTest: span.optional(),
    dressHard: span.optional().describe('Each part'),
    check: span.optional().describe('Gap and balance'),
    assemble: span.optional(),
    test: span.optional(),
  })
    .optional()
    .describe('How long this shop takes, min'),
});

const batchNumber = text('a batch number', 100).optional();

export const logSchema = list(
  record('an entry of the log', {
    step: text('the id of a step of the plan', 64).describe('As in the result: "fill:3", "coat:1.2"'),
    started: instant,
    done: instant.optional(),
    massA: grams.optional().describe('As weighed, g'),
    massB: grams.optional().describe('As weighed, g'),
    packA: batchNumber.describe('Batch number on the pack of A'),
    packB: batchNumber.describe('Batch number on the pack of B'),
    surface: temperature.optional().describe('Of the part, degC'),
    note: text('a note', 1000).optional(),
  }),
  'entries of the log',
  0,
  5000,
);
