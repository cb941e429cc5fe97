import { describe, expect, test } from 'vitest';
import { estimate } from '../../../geometry/estimate.ts';
import type { EarlierRepair, History } from '../../../geometry/job/job.ts';
import type { HistoryResult } from '../../../geometry/sheet/history-result.ts';
import { historyBasis, historyLines, historyNotes } from '../../../geometry/sheet/history-text.ts';
import { sheetPage } from '../../../geometry/sheet/html.ts';
import { toResult } from '../../../geometry/sheet/result.ts';
import { sheetText } from '../../../geometry/sheet/text.ts';
import { job, patch } from '../made.ts';

const repair = (deepest: number, hours: number, volume: number | null = null): EarlierRepair => ({
  part: 'plate',
  date: '2025-03-01',
  hours,
  deepest,
  mean: null,
  volume,
  note: '',
});

const estimated = (history: History) =>
  estimate({ ...job([patch([90, 110], [0, 90], 3)], { holes: [] }), history }, { cell: 1 });

const historyOf = (history: History): HistoryResult => {
  const found = toResult(estimated(history)).history;
  if (found === null) throw new Error('no history');
  return found;
};

describe('the history in the result', () => {
  test('a job that tells nothing has none', () => {
    expect(toResult(estimated({ hours: null, repairs: [] })).history).toBeNull();
  });
  test('mm and mL in 1000 h, this repair counted in', () => {
    const { rates } = historyOf({ hours: 2000, repairs: [repair(6, 4000, 40_000)] });
    const [deepest, mean, volume] = rates;
    // 3 + 6 mm in 6000 h; all of the patch is 3 mm deep.
    expect(deepest.per1000).toBeCloseTo(1.5, 6);
    expect(deepest).toMatchObject({ part: 'plate', of: 'deepest', intervals: 2, hours: 6000 });
    expect(mean.per1000).toBeCloseTo(1.5, 2);
    expect(mean).toMatchObject({ intervals: 1, range: null });
    // A quarter of pi (110^2 - 90^2) 3 mm and 40 mL in 6000 h.
    expect(volume.per1000).toBeCloseTo(((Math.PI * 4000 * 3) / 4000 + 40) / 6, 1);
  });
  test('due: 18 mm filled flush down to 10 at 1.5 mm in 1000 h is 5333 h, and both intervals agree', () => {
    const { due } = historyOf({ hours: 2000, repairs: [repair(6, 4000)] });
    expect(due).toHaveLength(1);
    expect(due[0]).toMatchObject({ what: 'wall', part: 'plate', limit: 10, why: null });
    expect(due[0].margin).toBeCloseTo(8, 4);
    expect(due[0].hours).toBeCloseTo(8000 / 1.5, 1);
    expect(due[0].from).toBeCloseTo(8000 / 1.5, 1);
    expect(due[0].to).toBeCloseTo(8000 / 1.5, 1);
  });
});

describe('the history in words', () => {
  const rate = (part: string, low: number) => ({
    part,
    of: 'deepest' as const,
    per1000: 1.8,
    range: { low, high: 2.4 },
    intervals: 3,
    hours: 9000,
  });
  const due = {
    what: 'gap',
    part: null,
    margin: 0.6,
    limit: 0.6,
    hours: 353,
    from: 262,
    to: 528,
    why: null,
  } as const;
  test('a rate with its range, a due date with its own, hours to two digits', () => {
    expect(historyLines({ rates: [rate('plate', 1.2)], due: [due] })).toEqual([
      'plate loses 1.80 mm per 1000 h at its deepest (1.20 to 2.40 mm); 3 intervals, 9000 h.',
      'The gap reaches 0.60 mm after about 350 h (260 to 530 h).',
    ]);
  });
  test('a range that holds nothing has no lower end, and its due date no upper one', () => {
    const lines = historyLines({ rates: [rate('plate', -0.4)], due: [{ ...due, to: null }] });
    expect(lines[0]).toContain('(up to 2.40 mm)');
    expect(lines[1]).toContain('(not before 260 h; no upper end, the intervals differ too much)');
  });
  test('one interval says that it cannot tell how far off it is', () => {
    const history = historyOf({ hours: 2000, repairs: [] });
    expect(historyLines(history)[0]).toMatch(
      /^plate loses 1\.50 mm per 1000 h at its deepest, .*; 2000 h in one interval: no telling how far off\.$/,
    );
    expect(historyLines(history)[1]).toMatch(
      /^The thinnest wall of plate is down to 10\.00 mm after about 5300 h \(one interval/,
    );
    expect(historyNotes(history).join(' ')).not.toContain('19 times in 20');
    expect(historyNotes(history).join(' ')).toContain('how fast it wears is not known');
  });
  test('no hours say why', () => {
    const why = 'The metal is under its limit already.';
    const never = { ...due, what: 'wall', part: 'plate', hours: null, from: null, to: null, why } as const;
    expect(historyLines({ rates: [], due: [never] })).toEqual([
      'No hours until the thinnest wall of plate is down to 0.60 mm: the metal is under its limit already.',
    ]);
  });
  test('lengths as the screen shows them', () => {
    const inches = (size: number) => `${(size / 25.4).toFixed(3)} in`;
    expect(historyLines({ rates: [rate('plate', 1.2)], due: [] }, inches)[0]).toContain(
      '0.071 in per 1000 h at its deepest (0.047 to 0.094 in)',
    );
  });
  test('both sheets say it, and how it was worked out', () => {
    const known = estimated({ hours: 2000, repairs: [repair(6, 4000)] });
    const text = sheetText(known).replace(/\s+/g, ' ');
    const page = sheetPage(known);
    for (const sheet of [text, page]) {
      expect(sheet).toContain('plate loses 1.50 mm per 1000');
      expect(sheet).toContain('is down to 10.00 mm after about 5300');
    }
    const history = historyOf({ hours: 2000, repairs: [repair(6, 4000)] });
    expect(
      historyBasis(history)
        .map(({ how }) => how)
        .join(' '),
    ).toMatch(/plate 9\.00 mm \/ 6000 h.* 8\.00 mm to the limit .* \/ 1\.50 mm in 1000 h/s);
    expect(sheetText(estimated({ hours: null, repairs: [] }))).not.toContain('Wear so far');
  });
});
