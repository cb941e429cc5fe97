/** The file is read back by a library that did not write it; the rules are those of RFC 5545. */
import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import { calendarOf } from '../../../geometry/sheet/calendar.ts';
import type { PlanStepResult } from '../../../geometry/sheet/day-result.ts';

const step = (id: string, start: number, more: Partial<PlanStepResult> = {}): PlanStepResult => ({
  id,
  kind: 'fill',
  step: 'Mix and fill 3',
  parts: ['plate'],
  batch: 3,
  coat: null,
  coatMix: null,
  start,
  minutes: 22,
  hands: true,
  window: null,
  after: [],
  note: '',
  trouble: null,
  cautions: [],
  ...more,
});
const day = { start: '2026-12-01T07:00', end: 0, handsOn: 0, elsewhere: [] };
const cautions = [{ code: 'skin', text: 'Wear gloves; keep off the skin, always.', source: 'a rule' }];

function readBack(plan: readonly PlanStepResult[], title = 'Plate, 2; "big"\nspare') {
  const text = calendarOf({ day, plan, cautions }, title) ?? '';
  const calendar = new ICAL.Component(ICAL.parse(text));
  return { text, calendar, events: calendar.getAllSubcomponents('vevent').map((one) => new ICAL.Event(one)) };
}

describe('calendarOf', () => {
  it('gives each step its hours by the shop clock, over midnight and month, in no zone', () => {
    const { events } = readBack([
      step('fill:3', 65.5),
      step('harden', 17 * 60, { hands: false, minutes: 960 }),
    ]);
    expect(events.map(({ startDate, endDate }) => [startDate.toString(), endDate.toString()])).toEqual([
      ['2026-12-01T08:05:30', '2026-12-01T08:27:30'],
      ['2026-12-02T00:00:00', '2026-12-02T16:00:00'],
    ]);
    for (const { startDate } of events) expect(startDate.zone.tzid).toBe('floating');
  });

  it('says the step, the parts, the window and the cautions as they were written', () => {
    const { events } = readBack([
      step('fill:3', 60, {
        note: 'Keep within 20 min; level, then stop',
        window: { opens: 90, closes: 120 },
        cautions: ['skin'],
        parts: ['plate', 'impeller'],
      }),
    ]);
    expect(events[0].summary).toBe('Mix and fill 3: plate, impeller');
    expect(events[0].description).toBe(
      'Keep within 20 min; level, then stop\nOpens 2026-12-01 08:30, closes 2026-12-01 09:00.\nWear gloves; keep off the skin, always.',
    );
  });

  it('reminds of work of the hands and not of waiting, which takes up no time', () => {
    const { events } = readBack([step('fill:3', 60), step('flash-off', 40, { hands: false })]);
    const [work, wait] = events.map(({ component }) => ({
      alarms: component
        .getAllSubcomponents('valarm')
        .map((one) => one.getFirstPropertyValue('trigger')?.toString()),
      transparency: component.getFirstPropertyValue('transp'),
    }));
    expect(work).toEqual({ alarms: ['-PT5M'], transparency: 'OPAQUE' });
    expect(wait).toEqual({ alarms: [], transparency: 'TRANSPARENT' });
  });

  it('keeps to the form: line ends, lines of at most 75 bytes, an id of its own for each event, what is required', () => {
    const note = 'Schicht für Schicht über die Tülle, 日本 und weiter '.repeat(8);
    const { text, calendar, events } = readBack([step('fill:1', 1, { note }), step('fill:2', 30)]);
    expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
    for (const line of text.split('\r\n')) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
    expect(new Set(events.map(({ uid }) => uid)).size).toBe(2);
    expect(calendar.getFirstPropertyValue('version')).toBe('2.0');
    expect(text).toContain('\r\nX-WR-CALNAME:Plate\\, 2\\; "big" spare\r\n');
    expect(calendar.getFirstPropertyValue('prodid')).toMatch(/fettle/);
    for (const { component } of events) expect(component.getFirstPropertyValue('dtstamp')).not.toBeNull();
    expect(events[0].description).toBe(note);
  });

  it('is the same bytes for the same plan, and none without a start or without steps', () => {
    const plan = [step('fill:3', 60)];
    expect(readBack(plan).text).toBe(readBack(plan).text);
    expect(calendarOf({ day: { ...day, start: null }, plan, cautions }, '')).toBeNull();
    expect(calendarOf({ day, plan: [], cautions }, '')).toBeNull();
  });
});
