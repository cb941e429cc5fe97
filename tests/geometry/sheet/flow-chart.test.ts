import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { roundAxis } from '../../../geometry/sheet/flow-axis.ts';
import { flowChart } from '../../../geometry/sheet/flow-chart.ts';
import { runLooks } from '../../../geometry/sheet/flow-runs.ts';
import { run } from '../flow-test/made-test.ts';
import { flowTestOver, THREE_RUNS } from './flow-made.ts';
import { xmlFaults } from './xml-faults.ts';

const OPTIONS = { title: 'Curves', description: 'of <three> runs', id: 'x', width: 660, text: 12, high: 0.3 };
const drawn = (over: Parameters<typeof flowTestOver>[0] = {}) =>
  flowChart(flowTestOver(over), OPTIONS).markup;
const count = (text: string, piece: RegExp) => [...text.matchAll(piece)].length;
const GUARANTEE = { flow: 90, head: 13.5, efficiency: null, power: null, grade: '2B' } as const;

describe('the axis', () => {
  test('holds every value between round numbers', () => {
    const values = fc.array(fc.double({ min: 0, max: 1e6, noNaN: true }), { minLength: 1, maxLength: 20 });
    fc.assert(
      fc.property(values, fc.integer({ min: 2, max: 12 }), (some, most) => {
        const { from, to, ticks } = roundAxis(some, most);
        const dust = 1e-6 * Math.max(...some, 1);
        expect(from).toBeLessThanOrEqual(Math.min(...some) + dust);
        expect(to).toBeGreaterThanOrEqual(Math.max(...some) - dust);
        expect(to).toBeGreaterThan(from);
        expect(ticks.length).toBeLessThanOrEqual(most + 3);
      }),
    );
  });

  test('values that are all alike stand in the middle of a scale that a gauge can tell', () => {
    const { from, to, ticks } = roundAxis([14, 14], 4);
    expect([from, to]).toEqual([13, 15]);
    expect(ticks).toEqual([13, 13.5, 14, 14.5, 15]);
    expect(roundAxis([0], 4).from).toBe(0);
  });

  test('38 to 112 runs from 20 to 120 by 20; small values begin at nought', () => {
    expect(roundAxis([38, 112], 5).ticks).toEqual([20, 40, 60, 80, 100, 120]);
    expect(roundAxis([1, 9], 5).ticks).toEqual([0, 2, 4, 6, 8, 10]);
  });
});

describe('the drawing', () => {
  test('is one element of sound SVG without style attributes or addresses', () => {
    const picture = drawn({ guarantee: GUARANTEE });
    expect(xmlFaults(picture)).toEqual([]);
    expect(picture).not.toMatch(/style=|href|<script/);
    expect(picture).toContain('of &lt;three&gt; runs');
    expect(picture).not.toContain('NaN');
  });

  test('has three plots, a curve and its marks for each run, a bar of error in each plot, and the cross once', () => {
    const picture = drawn({ guarantee: GUARANTEE });
    expect(count(picture, /class="flow-paper"/g)).toBe(3);
    // Three plots and the legend.
    expect(count(picture, /class="flow-line flow-line-before"/g)).toBe(4);
    // Three points in three plots, and the legend.
    expect(count(picture, /class="flow-mark flow-mark-after"/g)).toBe(10);
    expect(count(picture, /class="flow-error"/g)).toBe(10);
    expect(count(picture, /class="flow-cross"/g)).toBe(2);
    expect(count(drawn(), /class="flow-cross"/g)).toBe(0);
    for (const words of ['head, m', 'efficiency, %', 'power, kW', 'flow, m³/h', 'works test'])
      expect(picture).toContain(`>${words}<`);
  });

  test('curves begin and end at their points: two points are a straight line with its control points on thirds', () => {
    const picture = drawn({
      runs: [
        run('after', [
          [60, 16, 4],
          [90, 13, 5],
        ]),
      ],
    });
    const [, ...numbers] =
      /flow-line-after" d="M([\d.]+) ([\d.]+)C([\d.]+) ([\d.]+) ([\d.]+) ([\d.]+) ([\d.]+) ([\d.]+)"/.exec(
        picture,
      ) ?? [];
    const [x0, y0, x1, y1, x2, y2, x3, y3] = numbers.map(Number);
    // Geometry of a cubic of Bezier; printed to a hundredth of a pixel.
    expect(x1).toBeCloseTo(x0 + (x3 - x0) / 3, 1);
    expect(y2).toBeCloseTo(y0 + ((y3 - y0) * 2) / 3, 1);
    expect(y1).toBeCloseTo(y0 + (y3 - y0) / 3, 1);
    expect(x2).toBeCloseTo(x0 + ((x3 - x0) * 2) / 3, 1);
  });

  test('without power anywhere there is no plot of efficiency; without runs no drawing', () => {
    const picture = drawn({ runs: [run('after', [[90, 13, 0]])] });
    expect(picture).not.toContain('efficiency, %');
    expect(picture).toContain('head, m');
    expect(xmlFaults(picture)).toEqual([]);
    expect(drawn({ runs: [] })).toBe('');
  });

  test('odd runs are drawn too', () => {
    for (const point of [
      [0, 0, 0],
      [0, 17, 2],
      [1e6, 1e5, 1e6],
      [0.001, 0.01, 0.001],
      [5e-324, 5e-324, 5e-324],
    ] as const) {
      const picture = drawn({ runs: [run('before', [point])] });
      expect(xmlFaults(picture)).toEqual([]);
      expect(picture).not.toMatch(/NaN|Infinity/);
    }
  });
});

test('compared runs keep their looks, the others differ from them and from each other', () => {
  const runs = [
    run('spring', [[90, 13, 5]]),
    run('before', [[90, 13, 6]]),
    ...THREE_RUNS,
    run('autumn', [[90, 12, 5]]),
  ];
  const looks = runLooks(flowTestOver({ runs }));
  expect(new Set(looks.map(({ line, mark }) => `${line} ${mark}`)).size).toBe(runs.length);
  expect(looks[4].line).toBe('after');
  // The last run as found is the one that is compared.
  expect(looks[3].line).toBe('before');
  expect(looks[1].line).not.toBe('before');
});
