import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Pack } from '../../../geometry/job/job.ts';
import { packsFor } from '../../../geometry/material/pack.ts';

const byMass = (mass: number): Pack => ({ label: `${mass} g`, mass, volume: null, selfMixing: false });
const byVolume = (volume: number): Pack => ({
  label: `${volume} mL`,
  mass: null,
  volume: volume * 1000,
  selfMixing: false,
});
const DENSITY = 2.3e-3;

describe('packsFor', () => {
  it('buys what leaves least over, then the fewest packs', () => {
    const packs = [byVolume(1000), byVolume(250), byVolume(500)];
    // 1200 mL: 1250 is the least total that holds it; 1000 + 250 are two packs, 500 + 500 + 250 three.
    expect(packsFor(1_200_000, packs, DENSITY)).toEqual([
      { label: '1000 mL', count: 1 },
      { label: '250 mL', count: 1 },
    ]);
    // 1800 mL: 2000 at 250 mL steps would be 1750 < 1800 <= 2000.
    expect(packsFor(1_800_000, packs, DENSITY)).toEqual([{ label: '1000 mL', count: 2 }]);
  });

  it('prefers an exact fit of small packs to one large one', () => {
    expect(packsFor(900_000, [byVolume(1000), byVolume(300)], DENSITY)).toEqual([
      { label: '300 mL', count: 3 },
    ]);
  });

  it('turns masses into volumes with the density of the mix', () => {
    // 1000 g at 2.3 g/mL hold 434.78 mL: 434 mL take one kit, 435 mL two.
    expect(packsFor(434_000, [byMass(1000)], DENSITY)).toEqual([{ label: '1000 g', count: 1 }]);
    expect(packsFor(435_000, [byMass(1000)], DENSITY)).toEqual([{ label: '1000 g', count: 2 }]);
    // 430 mL: 450 mL by volume leave 20 over, the kit by mass only 4.78.
    expect(packsFor(430_000, [byVolume(450), byMass(1000)], DENSITY)).toEqual([
      { label: '1000 g', count: 1 },
    ]);
  });

  it('is not fooled by float dust where the need is a whole number of packs', () => {
    expect(packsFor(3 * (1000 / DENSITY), [byMass(1000)], DENSITY)).toEqual([{ label: '1000 g', count: 3 }]);
    expect(packsFor(0.1 * 3 * 1e6, [byVolume(100)], DENSITY)).toEqual([{ label: '100 mL', count: 3 }]);
  });

  it('buys nothing when nothing is needed or no pack is known', () => {
    expect(packsFor(0, [byMass(1000)], DENSITY)).toEqual([]);
    expect(packsFor(5000, [], DENSITY)).toEqual([]);
  });

  it('takes the first of two packs that hold the same', () => {
    const packs = [
      { ...byVolume(500), label: 'tin' },
      { ...byVolume(500), label: 'tub' },
    ];
    expect(packsFor(900_000, packs, DENSITY)).toEqual([{ label: 'tin', count: 2 }]);
  });

  it('finds what trying every set finds', () => {
    const sizes = fc.uniqueArray(fc.integer({ min: 30, max: 400 }), { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(sizes, fc.integer({ min: 1, max: 1500 }), (held, need) => {
        const bought = packsFor(need * 1000, held.map(byVolume), DENSITY);
        const total = bought.reduce((sum, { label, count }) => sum + Number.parseInt(label, 10) * count, 0);
        const count = bought.reduce((sum, pack) => sum + pack.count, 0);
        expect([total, count]).toEqual(bestOf(held, need));
      }),
      { numRuns: 300 },
    );
  });

  it('stays quick and holds the need for large needs and odd sizes', () => {
    const odd = [
      byMass(5000),
      byMass(1000),
      byMass(453.59237),
      byVolume(237),
      byVolume(99.7),
      byVolume(1001),
    ];
    const started = performance.now();
    for (const need of [37.2e6, 1.2345e9]) {
      const bought = packsFor(need, odd, DENSITY);
      const total = bought.reduce((sum, { label, count }) => {
        const pack = odd.find((known) => known.label === label);
        return sum + count * (pack?.volume ?? (pack?.mass ?? 0) / DENSITY);
      }, 0);
      expect(total).toBeGreaterThanOrEqual(need * (1 - 1e-9));
      expect(total - need).toBeLessThan(1000);
    }
    // A screen refreshes the sheet with every stroke; it took 30 ms when written.
    expect(performance.now() - started).toBeLessThan(2000);
  });
});

/** Least total that holds the need, and the fewest packs that make it: by counting up every total that can be made. */
function bestOf(sizes: readonly number[], need: number): [total: number, packs: number] {
  const fewest = new Map<number, number>([[0, 0]]);
  for (let total = 1; ; total++) {
    let packs = Infinity;
    for (const size of sizes) packs = Math.min(packs, (fewest.get(total - size) ?? Infinity) + 1);
    if (packs < Infinity) fewest.set(total, packs);
    if (total >= need && packs < Infinity) return [total, packs];
  }
}
