import type { Pack } from '../job/job.ts';
import type { Density, Mm3 } from '../units.ts';

export interface PackCount {
  readonly label: string;
  readonly count: number;
}

/** Totals closer than this share of the need are the same amount: float dust, far below what a pack is filled to. */
const SAME = 1e-9;
/** Combinations tried at most; a few milliseconds. */
const MOST_TRIED = 400_000;

/**
 * The packs to buy: of all sets that hold at least the need the ones with the least left over, of those the fewest packs.
 * @param need     mm3 of the mix
 * @param packs    sizes on sale, by mass or by volume, any number of each
 * @param density  of the mix, g/mm3: turns masses into volumes
 * @returns in the order of `packs`, only those to buy; empty when nothing is needed or no pack is known
 * Accuracy: exact, except when more than MOST_TRIED combinations of the smaller packs would have to be tried, which takes
 * four or more sizes that have no common measure and a need of dozens of packs: then the set holds the need and leaves less
 * than one of the largest pack.
 */
export function packsFor(need: Mm3, packs: readonly Pack[], density: Density): PackCount[] {
  const sizes = packSizes(packs, density);
  if (!(need > 0) || sizes.length === 0) return [];
  const counts = leastLeftOver(
    need,
    sizes.map(({ size }) => size),
  );
  return sizes
    .map(({ index, label }, i) => ({ index, label, count: counts[i] }))
    .filter(({ count }) => count > 0)
    .sort((a, b) => a.index - b.index)
    .map(({ label, count }) => ({ label, count }));
}

/** Whether all of the packs to buy mix A and B by themselves. */
export function areSelfMixing(toBuy: readonly PackCount[], packs: readonly Pack[]): boolean {
  const mixes = (label: string) => packs.find((pack) => pack.label === label)?.selfMixing === true;
  return toBuy.length > 0 && toBuy.every(({ label }) => mixes(label));
}

/** Distinct sizes, largest first; of two packs that hold the same the first one listed counts. */
function packSizes(packs: readonly Pack[], density: Density) {
  const sizes: { readonly index: number; readonly label: string; readonly size: Mm3 }[] = [];
  for (const [index, pack] of packs.entries()) {
    const size = pack.volume ?? (pack.mass ?? 0) / density;
    if (size > 0 && !sizes.some((known) => Math.abs(known.size / size - 1) < SAME)) {
      sizes.push({ index, label: pack.label, size });
    }
  }
  return sizes.sort((a, b) => b.size - a.size);
}

/** Tries every count of the smaller packs that can be part of a best set; the largest pack makes up the rest. */
function leastLeftOver(need: Mm3, sizes: readonly Mm3[]): readonly number[] {
  const limits = countLimits(need, sizes);
  const counts = sizes.map(() => 0);
  let best: readonly number[] = [];
  let bestOver = Infinity;
  let bestPacks = Infinity;
  const same = SAME * Math.max(need, sizes[0]);

  const choose = (i: number, missing: Mm3, packs: number): void => {
    if (i === 0) {
      const largest = Math.max(0, Math.ceil((missing - same) / sizes[0]));
      const over = Math.max(0, largest * sizes[0] - missing);
      const total = packs + largest;
      if (over < bestOver - same || (over < bestOver + same && total < bestPacks)) {
        best = [largest, ...counts.slice(1)];
        bestOver = over;
        bestPacks = total;
      }
      return;
    }
    for (let count = 0; count <= limits[i]; count++) {
      const left = missing - count * sizes[i];
      counts[i] = count;
      choose(i - 1, left, packs + count);
      if (left <= same) break;
    }
    counts[i] = 0;
  };
  choose(sizes.length - 1, need, 0);
  return best;
}

/**
 * How many of each smaller pack a best set can hold. When q of them hold just what p of a larger pack hold, q or more are never
 * best: the larger ones do it with fewer packs. That keeps the search small however much is needed.
 */
function countLimits(need: Mm3, sizes: readonly Mm3[]): number[] {
  const limits = sizes.map((size, i) => {
    let limit = Math.ceil(need / size);
    for (let larger = 0; larger < i; larger++) {
      limit = Math.min(limit, timesToMeet(size, sizes[larger], limit + 1) - 1);
    }
    return limit;
  });
  limits[0] = 0;
  const tried = () => limits.reduce((product, limit) => product * (limit + 1), 1);
  while (tried() > MOST_TRIED) {
    const most = limits.indexOf(Math.max(...limits));
    limits[most] = Math.floor(limits[most] * 0.9);
  }
  return limits;
}

/** The smallest q up to `most` for which q small packs hold a whole number of large ones; `most` when there is none. */
function timesToMeet(small: Mm3, large: Mm3, most: number): number {
  for (let q = 2; q < Math.min(most, MOST_TRIED); q++) {
    const p = (q * small) / large;
    if (p > 0.5 && Math.abs(p - Math.round(p)) < SAME * q) return q;
  }
  return most;
}
