import { describe, expect, test } from 'vitest';
import { estimate } from '../../../geometry/estimate.ts';
import { type GapChartOptions, gapChart } from '../../../geometry/sheet/gap-chart.ts';
import { GAP_CHART_STYLE } from '../../../geometry/sheet/gap-chart-style.ts';
import { toResult } from '../../../geometry/sheet/result.ts';
import { MILLIMETRES } from '../../../geometry/sheet/section-svg.ts';
import { ASK, type MadePair, pairJob } from '../clearance/made-gap.ts';
import { evenly, patch } from '../made.ts';
import { pointsOf } from './path-points.ts';
import { xmlFaults } from './xml-faults.ts';

const OPTIONS: GapChartOptions = {
  title: 'Gap',
  description: 'a "gap" & more',
  id: 'gap',
  width: 660,
  text: 11,
  high: 0.4,
  unit: MILLIMETRES,
};
const INCHES = { size: 25.4, symbol: 'in', depth: (depth: number) => `${(depth / 25.4).toFixed(4)} in` };

function drawn(pair: MadePair, options: Partial<GapChartOptions> = {}) {
  const gap = toResult(estimate(pairJob(pair), { cell: 2 })).clearance ?? expect.fail('a gap');
  return { gap, svg: gapChart(gap, { ...OPTIONS, ...options }).markup };
}
const pathOf = (svg: string, name: string): string =>
  new RegExp(`class="[^"]*${name}" d="([^"]+)"`).exec(svg)?.[1] ?? expect.fail(`a path ${name}`);
const pointsIn = (path: string) => pointsOf(path).flat();
const textsOf = (svg: string): string[] =>
  [...svg.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map(([, words]) => words);

/** Sound, bare: 0.8 mm everywhere in a band of 0.4 to 1.2 mm. */
const EVEN: MadePair = { repair: { coatedFaces: [] } };
const WORN: MadePair = {
  onPlate: [patch([80, 120], [0, 90], 2)],
  onTips: [evenly('vane-*/tip', 0.4)],
  ask: { tolerances: { setting: 0.03, film: 0.04, dressing: 0, runOut: 0 } },
};

test('is one well-formed element without style attributes, and everything it is drawn with has a look', () => {
  const { svg } = drawn(WORN);
  expect(xmlFaults(svg)).toEqual([]);
  expect(svg).not.toMatch(/ style=/);
  expect(svg).toContain('a &quot;gap&quot; &amp; more');
  const names = new Set([...svg.matchAll(/class="([^"]+)"/g)].flatMap(([, names]) => names.split(' ')));
  for (const name of names) expect(GAP_CHART_STYLE, name).toContain(`.${name}`);
});

describe('heights', () => {
  /** The middle of the band is drawn in the middle of its box, and a gap of 0.8 mm is that middle. */
  test('a gap in the middle of the band is drawn there', () => {
    const { svg } = drawn(EVEN);
    const box = /class="gap-chart-band" [^>]*y="([\d.]+)" width="[\d.]+" height="([\d.]+)"/.exec(svg);
    const middle = Number(box?.[1]) + Number(box?.[2]) / 2;
    const line = pointsIn(pathOf(svg, 'gap-chart-coated-mean'));
    expect(line.length).toBeGreaterThan(10);
    for (const [, y] of line) expect(Math.abs(y - middle)).toBeLessThan(0.02);
  });

  test('least, mean and most of a state lie in that order, and its shape is closed over them', () => {
    const { svg, gap } = drawn(WORN);
    const area = pointsIn(pathOf(svg, 'gap-chart-area gap-chart-coated'));
    const mean = pointsIn(pathOf(svg, 'gap-chart-coated-mean'));
    expect(mean).toHaveLength(gap.byRadius.length + 2);
    expect(area).toHaveLength(2 * mean.length);
    mean.forEach(([x, y], i) => {
      const [most, least] = [area[i], area[area.length - 1 - i]];
      expect(most[0]).toBeCloseTo(x, 6);
      expect(least[0]).toBeCloseTo(x, 6);
      // Down the page: the larger gap has the smaller y.
      expect(most[1]).toBeLessThanOrEqual(y + 0.011);
      expect(least[1]).toBeGreaterThanOrEqual(y - 0.011);
    });
  });

  test('wear far beyond the rest is cut off at the top and said in words', () => {
    const { svg, gap } = drawn({ ...EVEN, onPlate: [patch([60, 160], [0, 90], 9)] });
    expect(gap.asFound.most).toBeCloseTo(9.8, 6);
    expect(textsOf(svg)).toContain('as found up to 9.80 mm');
    const top = Number(/class="gap-chart-paper" x="[\d.]+" y="([\d.]+)"/.exec(svg)?.[1]);
    for (const [, y] of pointsIn(pathOf(svg, 'gap-chart-area gap-chart-found')))
      expect(y).toBeGreaterThanOrEqual(top);
    expect(textsOf(drawn(EVEN).svg).join()).not.toContain('as found up to');
  });
});

describe('words', () => {
  test('name the states, the band and both tolerances', () => {
    const words = textsOf(drawn(WORN).svg);
    for (const each of [
      'as found, least to most and mean',
      'filled',
      'filled and coated',
      'allowed',
      'tightest',
    ])
      expect(words).toContain(each);
    expect(words).toContain('allowed less 0.07 mm, off at worst');
    expect(words).toContain('allowed less 0.05 mm, off as is likely');
  });

  test('what is not there is not named', () => {
    const words = textsOf(drawn(EVEN).svg).join('; ');
    expect(words).toContain('filled, not coated');
    expect(words).not.toMatch(/allowed less|likely|meet/);
    const one = textsOf(
      drawn({ ...EVEN, ask: { tolerances: { ...ASK.tolerances, setting: 0.1 } } }).svg,
    ).join('; ');
    expect(one).toContain('allowed less 0.10 mm, off at worst');
    expect(one).not.toContain('likely');
  });

  test('a gap below nought says that the parts meet', () => {
    expect(textsOf(drawn({}).svg)).toContain('the parts meet');
    expect(textsOf(drawn({}).svg)).toContain('-0.20 mm');
  });

  test('axes in the unit of the screen', () => {
    const words = textsOf(drawn(EVEN, { unit: INCHES }).svg);
    expect(words).toContain('gap, in');
    expect(words).toContain('radius, in');
    expect(words).toContain('0.0315 in');
  });
});
