import { describe, expect, test } from 'vitest';
import { barWords } from '../../../../web/panels/plan/bar-words.ts';
import { textureOf } from '../../../../web/panels/plan/part-texture.ts';
import { shadesOf } from '../../../../web/panels/plan/shades.ts';
import { ticksOf } from '../../../../web/panels/plan/ticks.ts';
import { barAt, timeLineLayout } from '../../../../web/panels/plan/time-line-layout.ts';
import { timeScale } from '../../../../web/panels/plan/time-scale.ts';
import { DAY_END, DAY_START, TWO_PART_DAY } from './two-part-day.ts';

const PARTS = ['plate', 'impeller'];
const layout = timeLineLayout(TWO_PART_DAY, PARTS, DAY_END);

describe('the scale of time', () => {
  test('later is never further left, and even where nothing is folded', () => {
    const scale = timeScale([0, 20, 110, 700, 730]);
    let before = -1;
    for (let minute = 0; minute <= 730; minute += 0.5) {
      expect(scale.x(minute)).toBeGreaterThan(before);
      before = scale.x(minute);
    }
    expect(scale.x(110) - scale.x(20)).toBeCloseTo(4.5 * (scale.x(20) - scale.x(0)), 9);
    expect(scale.x(730)).toBe(scale.width);
  });
  test('a night is drawn short and says from when to when', () => {
    const scale = timeScale([0, 60, 960, 1000]);
    expect(scale.folds.map(({ from, to }) => [from, to])).toEqual([[60, 960]]);
    expect(scale.x(960) - scale.x(60)).toBe(scale.folds[0].width);
  });
  test('a plan of nothing has no width', () => {
    expect(timeScale([0]).width).toBe(0);
    expect(timeScale([0]).x(5)).toBe(0);
  });
});

describe('the picture of the day', () => {
  test('hands stand apart from what is waited for, and every step is in it', () => {
    const [hands, ...waits] = layout.lanes;
    expect(hands.bars.every(({ step }) => step.hands)).toBe(true);
    expect(waits.map(({ part }) => part)).toEqual(PARTS);
    expect(
      waits.flatMap(({ bars }) => bars).every(({ step, kind }) => kind === 'window' || !step.hands),
    ).toBe(true);
    const drawn = new Set(layout.lanes.flatMap(({ bars }) => bars.map(({ step }) => step.id)));
    expect([...drawn].sort()).toEqual(TWO_PART_DAY.map(({ id }) => id).sort());
  });
  test('bars of one row never lie on each other', () => {
    for (const { bars } of layout.lanes) {
      for (const a of bars) {
        for (const b of bars) {
          if (a === b || a.y !== b.y || a.x > b.x) continue;
          expect(a.x + a.width, `${a.step.id} before ${b.step.id}`).toBeLessThanOrEqual(b.x + 1e-6);
        }
      }
    }
  });
  test('a window stands right behind the wait that opens it', () => {
    const plate = layout.lanes[1].bars;
    const wait = plate.find(({ step }) => step.id === 'firm-up:2');
    const window = plate.find(({ step }) => step.id === 'dress:2');
    expect(window?.kind).toBe('window');
    expect(window?.y).toBe(wait?.y);
    expect(window?.x).toBeCloseTo((wait?.x ?? 0) + (wait?.width ?? 0), 9);
  });
  test('a finger beside a short bar means it, one far from all means none', () => {
    const bar = layout.lanes[0].bars[4];
    expect(bar.width).toBeLessThan(10);
    expect(barAt(layout, bar.x + 1, bar.y + 3)?.step.id).toBe(bar.step.id);
    expect(barAt(layout, bar.x + 1, bar.y - 12)?.step.id).toBe(bar.step.id);
    expect(barAt(layout, bar.x, -40)).toBeNull();
  });
  test('words above bars never run into each other, and mixes come first', () => {
    const words = barWords(layout.lanes[0].bars, layout.scale.width);
    const ids = words.map(({ id }) => id);
    expect(ids).toEqual(expect.arrayContaining(['fill:1', 'fill:2', 'fill:3']));
    expect(new Set(ids).size).toBe(ids.length);
    for (const a of words) {
      for (const b of words) {
        if (a !== b && a.x <= b.x) expect(b.x - a.x).toBeGreaterThan(a.text.length * 7);
      }
    }
  });
  test('two parts differ in texture, and one alone has none', () => {
    expect(new Set([['plate'], ['impeller'], PARTS].map((own) => textureOf(own, PARTS))).size).toBe(3);
    expect(textureOf(['plate'], ['plate'])).toBe('plain');
  });
});

describe('hours, nights and breaks', () => {
  const plan = {
    start: DAY_START,
    shiftStart: '06:30',
    shiftEnd: '15:30',
    breaks: [
      { at: '09:30', minutes: 15 },
      { at: '20:00', minutes: 30 },
    ],
  };
  test('lie where the clock has them, within the work', () => {
    expect(shadesOf(plan, DAY_START, layout.scale.stops)).toEqual([
      { kind: 'break', from: 150, to: 165 },
      // 15:30 to 06:30; the break in the evening lies in it and is none.
      { kind: 'night', from: 510, to: 1410 },
      { kind: 'break', from: 1590, to: 1605 },
      { kind: 'night', from: 1950, to: DAY_END },
    ]);
  });
  test('work that begins before the shift of later days is no night', () => {
    expect(shadesOf({ ...plan, start: '2026-12-01T05:00', breaks: [] }, '2026-12-01T05:00', [0, 60])).toEqual(
      [],
    );
  });
  test('without a start nothing is tied to the clock', () => {
    expect(shadesOf(plan, null, layout.scale.stops)).toEqual([]);
  });
  test('full hours, and the day where it begins', () => {
    const { hours, days } = ticksOf(layout.scale, DAY_START, DAY_END);
    expect(days.map(({ text }) => text)).toEqual(['Tue 1 Dec', 'Wed 2 Dec']);
    expect(hours[0]).toEqual({ x: 0, text: '07:00' });
    expect(hours.at(-1)).toEqual({ x: layout.scale.width, text: '18:35' });
    expect(hours.slice(0, -1).every(({ text }) => text.endsWith(':00'))).toBe(true);
    for (let i = 1; i < hours.length; i++) expect(hours[i].x - hours[i - 1].x).toBeGreaterThan(50);
  });
  test('a wait of years is drawn and named at once', () => {
    const scale = timeScale([0, 60, 5e19, 5e19 + 20_000]);
    expect(ticksOf(scale, DAY_START, 5e19 + 20_000).days.at(-1)?.text).toBe('Fri 31 Dec');
    expect(shadesOf(plan, DAY_START, scale.stops).length).toBeLessThan(20);
  });
  test('hours from zero when the start is not known', () => {
    const { hours, days } = ticksOf(layout.scale, null, DAY_END);
    expect(days).toEqual([]);
    expect(hours[1].text).toBe('+1:00');
  });
});
