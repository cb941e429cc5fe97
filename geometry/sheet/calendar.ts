import { ICalAlarmType, ICalCalendar, ICalEventTransparency } from 'ical-generator';
import type { LocalTime, Minute } from '../units.ts';
import type { PlanStepResult } from './day-result.ts';
import type { Result } from './result.ts';

/** Minutes before a step at which the calendar reminds of it. */
const REMIND: Minute = 5;
const MS_PER_MINUTE = 60_000;

/**
 * The plan as an iCalendar file (RFC 5545): an event a step, by the clock on the wall of the shop ("floating" times, 3.3.5 form 1),
 * so that it falls due at the same hour on any device. Work of the hands reminds beforehand and takes up time; waiting does not.
 * @param title  of the job; names the calendar
 * @returns null when the plan has no start, or no steps: minutes from zero stand in no calendar
 * The same result gives the same bytes.
 */
export function calendarOf(
  { day, plan, cautions }: Pick<Result, 'day' | 'plan' | 'cautions'>,
  title: string,
): string | null {
  const { start } = day;
  if (start === null || plan.length === 0) return null;
  const texts = new Map(cautions.map(({ code, text }) => [code, text]));
  const calendar = new ICalCalendar({
    name: nameOf(title),
    prodId: { company: 'fettle', product: 'plan', language: 'EN' },
  });
  for (const step of plan) {
    const event = calendar.createEvent({
      id: `${start}-${step.id}@fettle`,
      // No clock here: the plan is of the day it begins.
      stamp: timeOf(start, 0),
      start: timeOf(start, step.start),
      end: timeOf(start, step.start + step.minutes),
      floating: true,
      summary: [step.step, step.parts.join(', ')].filter((text) => text !== '').join(': '),
      description: describedAs(step, start, texts),
      transparency: step.hands ? ICalEventTransparency.OPAQUE : ICalEventTransparency.TRANSPARENT,
    });
    if (step.hands) event.createAlarm({ type: ICalAlarmType.display, trigger: REMIND * 60 });
  }
  return calendar.toString();
}

/** The library writes a calendar's name as it stands: one line, and what RFC 5545 3.3.11 wants escaped. */
function nameOf(title: string): string {
  const line = title.replace(/\p{Cc}+/gu, ' ').trim();
  return line === '' ? 'Repair' : line.replace(/[\\;,]/g, '\\$&');
}

function describedAs(
  { note, window, cautions }: PlanStepResult,
  start: LocalTime,
  texts: ReadonlyMap<string, string>,
): string {
  const opening =
    window === null ? '' : `Opens ${clock(start, window.opens)}, closes ${clock(start, window.closes)}.`;
  return [note, opening, ...cautions.map((code) => texts.get(code) ?? '')]
    .filter((text) => text !== '')
    .join('\n');
}

/** Wall clock carried as if it were UTC: no zone of the machine can shift it. */
function timeOf(start: LocalTime, minutes: Minute): Date {
  return new Date(Date.parse(`${start}:00Z`) + Math.round(minutes * MS_PER_MINUTE));
}

function clock(start: LocalTime, minutes: Minute): string {
  return timeOf(start, minutes).toISOString().slice(0, 16).replace('T', ' ');
}
