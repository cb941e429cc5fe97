import { describe, expect, test } from 'vitest';
import { arcPath, bandArcs, bandOf } from '../../../../web/panels/clearance/gap-bands.ts';

const BAND = { least: 0.3, most: 0.6 };

test('a gap on its limit keeps it, one at nothing meets', () => {
  expect([-0.2, 0, 0.29, 0.3, 0.6, 0.61].map((gap) => bandOf(gap, BAND))).toEqual([
    'meets',
    'meets',
    'tight',
    'fits',
    'fits',
    'wide',
  ]);
});

describe('arcs', () => {
  test('sectors of one meaning become one arc, places without a gap none', () => {
    expect(bandArcs([[0.4, 0.5, 0.1, null, null, 0.9]], BAND)).toEqual([
      { band: 'fits', ring: 0, from: 0, to: 2 },
      { band: 'tight', ring: 0, from: 2, to: 3 },
      { band: 'wide', ring: 0, from: 5, to: 6 },
    ]);
  });

  test('together they cover each sector that has a gap exactly once', () => {
    const rings = [
      [0.1, 0.2, 0.7, 0.7, null, 0.4],
      [null, -1, -1, 0.4, 0.4, 0.4],
    ];
    const covered = bandArcs(rings, BAND).flatMap(({ ring, from, to, band }) =>
      Array.from({ length: to - from }, (_, i) => `${ring}:${from + i}:${band}`),
    );
    const each = rings.flatMap((gaps, ring) =>
      gaps.flatMap((gap, sector) => (gap === null ? [] : [`${ring}:${sector}:${bandOf(gap, BAND)}`])),
    );
    expect(covered).toEqual(each);
  });

  test('a path runs round and back, in two halves so that a whole turn is no point', () => {
    expect(arcPath(1, 2, 0, 2 * Math.PI).replaceAll('-0.00', '0.00')).toBe(
      'M2.00 0.00A2.00 2.00 0 0 0 -2.00 0.00A2.00 2.00 0 0 0 2.00 0.00L1.00 0.00A1.00 1.00 0 0 1 -1.00 0.00A1.00 1.00 0 0 1 1.00 0.00Z',
    );
  });
});
