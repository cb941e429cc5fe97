import { describe, expect, test } from 'vitest';
import { amissWords, putRight, weighTarget } from '../../../web/bench/weigh-target.ts';
import { MIX } from './bench-results.ts';

// 100 mL of 2.4 g/cm3 and 50 mL of 2.1 g/cm3: 240 g and 105 g, 43.75 g of B to 100 g of A (the same mix stands in tests/geometry/material).
const WEIGHED = { mix: MIX, selfMixing: false, hasDensities: true, step: 1 };

describe('what the scale shows', () => {
  test('A first, then B on top of it', () => {
    expect(weighTarget(WEIGHED, undefined, undefined)).toEqual({
      kind: 'weigh',
      scaleA: 240,
      partB: 105,
      scaleAB: 345,
      amiss: null,
    });
  });
  test('goes by the A that really went in: 250 g want 109.375 g', () => {
    expect(weighTarget(WEIGHED, 250, undefined)).toMatchObject({ partB: 109, scaleAB: 359 });
    expect(weighTarget({ ...WEIGHED, step: 0.1 }, 250, undefined)).toMatchObject({
      partB: 109.4,
      scaleAB: 359.4,
    });
  });
  test('a cartridge and a sheet without densities weigh nothing, and say which', () => {
    expect(weighTarget({ ...WEIGHED, selfMixing: true }, undefined, undefined)).toEqual({
      kind: 'cartridge',
    });
    expect(weighTarget({ ...WEIGHED, hasDensities: false }, undefined, undefined)).toEqual({
      kind: 'measure',
      why: 'no-densities',
    });
    expect(weighTarget({ ...WEIGHED, mix: { ...MIX, weigh: null } }, undefined, undefined)).toEqual({
      kind: 'measure',
      why: 'too-coarse',
    });
  });
  test('10 g of A want 4.375 g of B, which a scale of 1 g cannot show', () => {
    expect(weighTarget(WEIGHED, 10, undefined)).toEqual({ kind: 'too-coarse', scaleA: 10 });
  });
});

describe('a mix that went wrong', () => {
  test('2 : 1 on the scale is named as the ratio by volume, 14 % too much B', () => {
    const target = weighTarget(WEIGHED, 240, 120);
    expect(target.kind === 'weigh' && target.amiss && amissWords(target.amiss)).toMatch(
      /^14 % too much B: that is the ratio by volume/,
    );
  });
  test('is put right with A where there is too much B: 120 g of B want 274.3 g of A', () => {
    expect(putRight(WEIGHED, 240, 120)).toEqual({ part: 'A', mass: 34, scale: 394 });
  });
  test('is put right with B where there is too little', () => {
    expect(putRight(WEIGHED, 240, 90)).toEqual({ part: 'B', mass: 15, scale: 345 });
  });
  test('needs nothing when it is within 2 %', () => {
    expect(putRight(WEIGHED, 240, 106)).toBeNull();
  });
});
