import { describe, expect, test } from 'vitest';
import { polarPoint, ringStep } from '../../../../web/panels/balance/polar.ts';
import { pullBands } from '../../../../web/panels/balance/pull-bands.ts';

describe('the pull of more filler', () => {
  test('1 cm2 filled 1 mm more with putty of 2.3 at 100 mm along the pull makes 23 g.mm', () => {
    // 0.1 cm3 x 2.3 g/cm3 x 100 mm: mechanics.
    for (const { from, value } of pullBands(145, 2.3).slice(1))
      expect(value).toBeCloseTo(0.1 * 2.3 * from, 9);
  });
  test('it helps on the far side of the pull and hurts on the near one, alike', () => {
    const bands = pullBands(145, 2.3);
    expect(bands[0].from).toBe(-145);
    expect(bands.at(-1)?.to).toBe(145);
    for (const [i, { strength }] of bands.entries()) {
      expect(strength).toBeCloseTo(-bands[bands.length - 1 - i].strength, 12);
    }
    expect(bands.filter(({ strength }) => strength < 0)).toHaveLength(bands.length / 2);
  });
  test('steps are round numbers, whatever the rotor', () => {
    for (const [radius, density] of [
      [20, 1.2],
      [145, 2.3],
      [900, 7.8],
    ]) {
      const [, first, second] = pullBands(radius, density);
      expect([1, 2, 5]).toContain(Number((second.value - first.value).toExponential(6).split('e')[0]));
    }
  });
});

describe('a polar plot', () => {
  test('has 0 to the right and angles counter-clockwise, y down the page', () => {
    const [x, y] = polarPoint(10, 90, 2);
    expect(x).toBeCloseTo(0, 12);
    expect(y).toBeCloseTo(-20, 12);
  });
  test('has rings of round numbers that hold the longest vector', () => {
    expect(ringStep(975, 3)).toBe(500);
    expect(ringStep(589, 3)).toBe(200);
    expect(ringStep(1432, 3)).toBe(500);
    expect(ringStep(0.07, 3)).toBeCloseTo(0.05, 12);
  });
});
