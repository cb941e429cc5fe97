import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ROUND_THE_CLOCK, shopHours } from '../../../geometry/plan/shop-hours.ts';
import { choicesOf } from './made-day.ts';
import { isShopOpen } from './open-hours.ts';
import { madeChoices } from './random-day.ts';

const NINE_TO_FIVE = {
  start: '2026-12-01T10:00',
  shift: { from: 540, to: 1020 },
  breaks: [{ at: 720, minutes: 30 }],
};

describe('shopHours', () => {
  test('fits work between breaks, and on the next morning what no longer fits today', () => {
    const { earliest, hold, longest } = shopHours(NINE_TO_FIVE);
    expect(longest).toBe(270);
    // 10:00 to 12:00 holds 120 min, not 121; the afternoon begins at 12:30, minute 150.
    expect([earliest(0, 120), earliest(0, 121), earliest(0, 270)]).toEqual([0, 150, 150]);
    // From 13:00 on 270 min no longer fit: 12:30 of the next day; 180 do at 09:00, minute 1380.
    expect([earliest(180, 270), earliest(300, 180)]).toEqual([1590, 1380]);
    expect([hold(100, 20), hold(100, 21)]).toEqual([true, false]);
  });

  test('begins before the shift on the first day when the work does', () => {
    const { earliest } = shopHours({ ...NINE_TO_FIVE, start: '2026-12-01T06:00' });
    expect([earliest(0, 360), earliest(0, 361)]).toEqual([0, 0]);
    expect(shopHours({ ...NINE_TO_FIVE, start: '2026-12-01T18:00' }).earliest(0, 10)).toBe(900);
  });

  test('runs on over midnight without a shift, and through a break that crosses it', () => {
    const night = { start: '2026-12-01T20:00', shift: null, breaks: [{ at: 1430, minutes: 20 }] };
    // Shut from 23:50, minute 230, to 00:10.
    expect([shopHours(night).earliest(220, 10), shopHours(night).earliest(220, 11)]).toEqual([220, 250]);
    const noon = { ...night, breaks: [{ at: 720, minutes: 30 }] };
    expect(shopHours(noon).earliest(0, 900)).toBe(0);
    expect(shopHours(noon).longest).toBe(1410);
  });

  test('is open at all times without a start', () => {
    expect(shopHours({ ...NINE_TO_FIVE, start: null })).toBe(ROUND_THE_CLOCK);
  });

  test('gives the first start that keeps the hours, minute by minute', () => {
    const whole = (most: number) => fc.integer({ min: 0, max: most });
    fc.assert(
      fc.property(madeChoices, whole(3000), whole(400), (chosen, from, minutes) => {
        const choices = choicesOf(chosen);
        const { earliest, hold } = shopHours(choices);
        const first = Array.from({ length: 4320 }, (_, i) => from + i).find((at) =>
          isShopOpen(choices, at, at + minutes),
        );
        const found = earliest(from, minutes);
        if (first !== undefined && minutes > 0) expect(found).toBe(first);
        expect(found).toBeGreaterThanOrEqual(from);
        if (minutes > 0) expect(hold(found, minutes)).toBe(first !== undefined);
      }),
      { numRuns: 60 },
    );
  });
});
