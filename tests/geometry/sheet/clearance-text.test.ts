import { describe, expect, test } from 'vitest';
import { estimate } from '../../../geometry/estimate.ts';
import {
  clearanceBasis,
  clearanceHeadline,
  clearanceLines,
  leverRows,
  radiusRows,
  stateRows,
  vaneRows,
} from '../../../geometry/sheet/clearance-text.ts';
import { sheetBody } from '../../../geometry/sheet/html.ts';
import { toResult } from '../../../geometry/sheet/result.ts';
import { sheetText } from '../../../geometry/sheet/text.ts';
import { ASK, type MadePair, pairJob } from '../clearance/made-gap.ts';
import { evenly, patch } from '../made.ts';

function made(pair: MadePair) {
  const known = estimate(pairJob(pair), { cell: 2 });
  const clearance = toResult(known).clearance ?? expect.fail('the two share their radii');
  return { known, clearance };
}
const even = (depth: number) => patch([60, 160], [0, 360], depth);
const setting = (tolerance: number) => ({ tolerances: { ...ASK.tolerances, setting: tolerance } });

/** 0.8 mm as new, 2 and 1 mm gone, filled flush, 2 x 0.25 mm of coat on both faces. */
const TRAP: MadePair = { onPlate: [even(2)], onTips: [evenly('vane-*/tip', 1)], ask: setting(0.1) };

describe('the headline', () => {
  test('says whether it fits, between what it lies, and what would bring it in', () => {
    const { lead, notes } = clearanceHeadline(made(TRAP).clearance);
    expect(lead).toBe('Clearance: too tight, -0.20 mm, band 0.40 to 1.20 mm');
    expect(notes).toEqual([
      'uncertain by up to 0.10 mm to either side',
      'tips and plate can touch: turn the rotor by hand before start',
      'to fit: Shim the parts 0.70 mm further apart',
    ]);
  });

  test('keeps still where all is well', () => {
    const { lead, notes } = clearanceHeadline(made({ repair: { coatedFaces: [] } }).clearance);
    expect(lead).toBe('Clearance: fits, 0.80 mm, band 0.40 to 1.20 mm');
    expect(notes).toEqual([]);
  });

  test('tells a likely fit from a certain one', () => {
    const tolerances = { setting: 0.15, film: 0.15, dressing: 0.15, runOut: 0 };
    const { notes } = clearanceHeadline(made({ repair: { coatedFaces: [] }, ask: { tolerances } }).clearance);
    expect(notes[0]).toBe('uncertain by up to 0.45 mm to either side; likely fits, 0.26 mm');
  });
});

describe('the sentences', () => {
  const { known, clearance } = made(TRAP);
  const lines = clearanceLines(known, clearance);

  test('the three states, the coats and the place', () => {
    expect(lines[0]).toBe(
      'As found 3.80 mm, filled 0.80 mm, filled and coated -0.20 mm, over the radii of 61.3 to 154 mm that plate and tips share.',
    );
    expect(lines[1]).toBe('The coats on both faces take 2 x 0.50 mm of it.');
    expect(lines[2]).toMatch(
      /^Tightest -0\.20 mm where vane-1\/tip \(along \d+ mm, across -?\d+ mm\) passes the plate at radius \d+ mm, angle \d+ deg\.$/,
    );
  });

  test('the change comes with what to mind', () => {
    expect(lines[3]).toBe(
      'The smallest change that fits: shim the parts 0.70 mm further apart. That makes 0.50 mm, 0.70 mm more in the mean.',
    );
    expect(lines[4]).toMatch(/^Shims move the whole rotor/);
  });

  test('no worth is put on parts that meet', () => {
    expect(lines[5]).toMatch(/^Square the tip edges .* about 25 % more/);
  });

  /** Shimmed 0.7 mm apart from 4.5 to 0.5 mm: 1 mm of it lies inside the published range, 8 points to the mm; 3 mm outside. */
  test('what the gap is worth is a bound, with what lies outside it', () => {
    const { known, clearance } = made({ ...TRAP, ask: { ...setting(0.1), shim: 0.7 } });
    const worth = clearanceLines(known, clearance).find((line) => line.includes('points of efficiency'));
    expect(worth).toMatch(
      /^Closing the mean gap from 4\.50 to 0\.50 mm may be worth up to 8\.0 points of efficiency, or next to nothing/,
    );
    expect(worth).toMatch(
      /3\.00 mm lies outside the published range of 0\.25 to 1\.5 mm; nothing is counted for it\.$/,
    );
  });

  test('references are told apart from this gap', () => {
    expect(lines[6]).toMatch(/0\.4 to 0\.5 mm on open impellers, 0\.25 to 0\.5 mm on waste-water pumps\.$/);
    expect(lines[7]).toBe(
      'Least radial ring clearance for D = 120 mm: 0.41 mm (0.016 in) on the diameter. Radial, between wear rings: it says nothing about this axial gap.',
    );
  });
});

describe('the tables', () => {
  test('before and after', () => {
    expect(stateRows(made(TRAP).clearance)).toEqual([
      ['as found', '3.80', '3.80', '3.80'],
      ['filled', '0.80', '0.80', '0.80'],
      ['filled and coated', '-0.20', '-0.20', '-0.20'],
      ['allowed', '0.40', '', '1.20'],
    ]);
  });

  test('vanes are listed where one is not like the others', () => {
    expect(vaneRows(made(TRAP).clearance)).toEqual([]);
    const rows = vaneRows(made({ onTips: [evenly('vane-2/tip', 0.4)] }).clearance);
    expect(rows.map(([vane, found]) => `${vane} ${found}`)).toEqual([
      'vane-1 0.80',
      'vane-2 1.20',
      'vane-3 0.80',
      'vane-4 0.80',
      'vane-5 0.80',
    ]);
  });

  test('radii are picked from one end to the other', () => {
    const { clearance } = made(TRAP);
    const rows = radiusRows(clearance);
    expect(rows.length).toBeLessThanOrEqual(12);
    expect(rows[0][0]).toBe(clearance.byRadius[0].radius.toFixed(1));
    expect(rows[rows.length - 1][0]).toBe(
      clearance.byRadius[clearance.byRadius.length - 1].radius.toFixed(1),
    );
  });

  test('levers that the job has pulled already are no rows', () => {
    const rows = leverRows(made(TRAP).clearance);
    expect(rows.map(([by, , , then]) => `${by} ${then}`)).toEqual([
      '+1.00 fits',
      '+0.50 too tight',
      '+0.50 too tight',
      '+1.00 fits',
      '+0.50 too tight',
      '+0.70 fits',
      '+0.70 fits',
    ]);
  });
});

test('how it was worked out adds up to the figure it explains', () => {
  const basis = clearanceBasis(made({ ...TRAP, ask: { ...setting(0.1), shim: 0.3 } }).clearance);
  expect(basis[0].how).toMatch(
    /^As new 0\.80 \+ shims 0\.30 \+ missing of plate and tip 0\.00 - coats 0\.50 and 0\.50 = 0\.10 mm where it is tightest/,
  );
  expect(basis.map(({ what }) => what)).toEqual([
    'Gap',
    'Gap by radius',
    'Fits or not',
    'Smallest change',
    'Worth of the gap',
    'Tip edges',
    'Ring clearance',
  ]);
  for (const { source } of basis) expect(source).not.toBe('');
});

describe('on the sheet', () => {
  const { known } = made(TRAP);

  test('in the terminal', () => {
    const text = sheetText(known);
    expect(text).toContain('\nClearance: too tight, -0.20 mm, band 0.40 to 1.20 mm\n');
    expect(text).toMatch(/\nClearance\n {2}- As found 3\.80 mm/);
    expect(text).toContain('Filled it would run free; the coats on both faces take');
  });

  test('on paper, with its drawing', () => {
    const page = sheetBody(known);
    expect(page).toContain('<h2>Clearance</h2>');
    expect(page).toContain('class="gap-chart"');
    expect(page).toContain('What each change alone would do, least work first');
  });

  test('a job that asks for none has none', () => {
    const none = estimate({ ...pairJob(), clearance: null }, { cell: 4 });
    expect(toResult(none).clearance).toBeNull();
    expect(sheetText(none)).not.toContain('Clearance');
    expect(sheetBody(none)).not.toContain('<h2>Clearance</h2>');
  });
});
