/** Days of any kind: parts, layers, mixes, coats, windows wide and narrow, shifts, breaks. */
import fc from 'fast-check';
import type { MadeChoices, MadeDay } from './made-day.ts';

const PARTS = ['plate', 'impeller', 'cover'];
/** Quarters of a minute, so that sums are seldom whole and a scan of them is exact. */
const quarters = (from: number, to: number) =>
  fc.integer({ min: from * 4, max: to * 4 }).map((quarter) => quarter / 4);

function windows(from: number, wide: number) {
  const some = fc
    .tuple(quarters(0, from), quarters(0, wide))
    .map(([opens, width]) => ({ from: opens, to: opens + width }));
  return fc.option(some, { freq: 6 });
}

/** Mixes share the ground out in its order, layer by layer, so a mix may end one layer and begin the next. */
export const madeDays: fc.Arbitrary<MadeDay> = fc
  .record({
    parts: fc.integer({ min: 1, max: 3 }),
    layers: fc.integer({ min: 1, max: 3 }),
    mixTimes: fc.array(quarters(2, 30), { maxLength: 7 }),
    firmsUp: windows(90, 60),
    fillerHard: fc.option(quarters(100, 900), { freq: 6 }),
    coats: fc.array(fc.array(quarters(2, 40), { minLength: 1, maxLength: 3 }), { maxLength: 3 }),
    overcoat: windows(900, 900),
    coatHard: fc.option(quarters(0, 1500), { freq: 6 }),
    uncoated: fc.constantFrom(...PARTS, 'none'),
  })
  .map(({ parts, layers, mixTimes, uncoated, ...rest }) => {
    const ids = PARTS.slice(0, parts);
    const ground = Array.from({ length: layers }, (_, i) => ids.map((id) => `${id}/face/${i + 1}`)).flat();
    const share = ground.length / mixTimes.length;
    return {
      ...rest,
      // Something must be left to coat.
      uncoated: parts > 1 ? uncoated : 'none',
      parts: ids,
      mixes: mixTimes.map((minutes, i) => ({
        minutes,
        on: ground.slice(Math.floor(i * share), Math.ceil((i + 1) * share)),
      })),
    };
  });

const clock = (minutes: number) =>
  `2026-12-01T${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;

/** No clock, a clock without a shift, and shifts of any length. */
export const madeChoices: fc.Arbitrary<MadeChoices> = fc
  .record({
    start: fc.option(fc.integer({ min: 0, max: 1439 }).map(clock), { freq: 4 }),
    shift: fc.option(
      fc
        .tuple(fc.integer({ min: 0, max: 900 }), fc.integer({ min: 10, max: 539 }))
        .map(([from, length]) => ({ from, to: from + length })),
      { freq: 4 },
    ),
    breaks: fc.array(
      fc.record({ at: fc.integer({ min: 0, max: 1439 }), minutes: fc.integer({ min: 1, max: 90 }) }),
      { maxLength: 3 },
    ),
    minutes: fc.record({
      wash: quarters(0, 60),
      blast: quarters(0, 60),
      blowDown: quarters(0, 10),
      wipe: quarters(0, 10),
      flashOff: quarters(0, 30),
      dress: quarters(0, 20),
      touchTest: quarters(0, 5),
      dressHard: quarters(0, 40),
      check: quarters(0, 40),
      assemble: quarters(0, 120),
      test: quarters(0, 60),
    }),
  })
  .map(({ minutes, ...rest }) => ({ ...rest, minutes }));
