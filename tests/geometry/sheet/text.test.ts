import { beforeAll, describe, expect, it } from 'vitest';
import type { Estimate } from '../../../geometry/estimate.ts';
import { figure } from '../../../geometry/sheet/figure.ts';
import { type Result, toResult } from '../../../geometry/sheet/result.ts';
import { sheetText } from '../../../geometry/sheet/text.ts';
import { unworn, worn } from './worn-plate.ts';

let estimate: Estimate;
let result: Result;
let lines: string[];
beforeAll(() => {
  estimate = worn();
  result = toResult(estimate);
  lines = sheetText(estimate).split('\n');
});

describe('sheetText', () => {
  it('says first how much to mix, in how many mixes', () => {
    expect(lines[2]).toBe(`Mix ${figure(result.filler.volume)} mL of putty in 1 mix`);
    const { partA, partB } = result.filler;
    expect(lines[3].trim()).toBe(
      `A ${figure(partA.volume)} mL or ${figure(partA.mass)} g, B ${figure(partB.volume)} mL or ${figure(partB.mass)} g`,
    );
  });

  it('stays about 100 columns wide', () => {
    for (const line of lines) expect(line.length, line).toBeLessThanOrEqual(100);
  });

  it('lists the regions deepest first with what is done to each', () => {
    const from = lines.indexOf('Regions of plate, deepest first');
    const rows = lines.slice(from + 2, from + 6);
    const depths = rows.map((row) => Number(/\b(\d+\.\d\d)\b/.exec(row)?.[1]));
    expect(depths).toEqual([...depths].sort((a, b) => b - a));
    expect(rows[3]).toContain('fill (chosen)');
    expect(rows[0]).toMatch(/radius 12\d mm, angle \d+ deg/);
  });

  it('has a section for every part of the sheet, in the order of the work', () => {
    const titles = lines.filter((line) => /^[A-Z]/.test(line)).map((line) => line.split(/,| of /)[0]);
    const wanted = [
      'Faces',
      'Regions',
      'Regions',
      'Mixes',
      'Coats',
      'Warnings',
      'Take care',
      'How it was worked out',
    ];
    expect(titles.filter((title) => wanted.includes(title))).toEqual(wanted);
  });

  it('says plainly when nothing is worn', () => {
    const text = sheetText(unworn());
    expect(text).toMatch(/^Repair sheet\n\nNothing to fill\n/);
    expect(text).not.toContain('Mixes');
    expect(text).not.toContain('NaN');
  });
});

describe('figure', () => {
  it.each([
    [142.3, '142'],
    [99.96, '100'],
    [99.94, '99.9'],
    [47.31, '47.3'],
    [9.996, '10.0'],
    [9.99, '9.99'],
    [0.853, '0.85'],
    [0, '0.00'],
    [1234.5, '1235'],
  ])('prints %f as %s', (value, text) => {
    expect(figure(value)).toBe(text);
  });
});
