import { minutesBetween } from '../../../geometry/job/shop-clock.ts';
import { READINGS_HOLD } from '../../../geometry/plan/climate.ts';
import { durationText } from '../../../geometry/sheet/duration.ts';
import type { LocalTime, Minute } from '../../../geometry/units.ts';

/** How long ago the weather was read. */
export interface ReadingAge {
  /** `ahead`: the reading is dated later than this device's clock. */
  readonly kind: 'unknown' | 'fresh' | 'old' | 'ahead';
  readonly text: string;
}

/** Two clocks on two walls. */
const CLOCKS_DIFFER: Minute = 5;

/**
 * @param takenAt  undefined when the job does not say
 * @param now      by the device's clock
 */
export function readingAge(takenAt: LocalTime | undefined, now: LocalTime): ReadingAge {
  if (takenAt === undefined) return { kind: 'unknown', text: 'When it was read is not known.' };
  const age = minutesBetween(takenAt, now);
  if (age < -CLOCKS_DIFFER) {
    return {
      kind: 'ahead',
      text: `Taken ${agoText(-age)} ahead of this device's clock: set the time of the reading, or the clock, right.`,
    };
  }
  if (age > READINGS_HOLD) return { kind: 'old', text: `Taken ${agoText(age)} ago: read again.` };
  return { kind: 'fresh', text: age < 1 ? 'Taken just now.' : `Taken ${durationText(age)} ago.` };
}

/** To the whole hour or day once that is near enough. */
function agoText(minutes: Minute): string {
  if (minutes >= 48 * 60) return `${Math.floor(minutes / (24 * 60))} days`;
  return minutes > READINGS_HOLD ? `${Math.floor(minutes / 60)} h` : durationText(minutes);
}
