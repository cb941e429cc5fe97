import type { Observed, Places } from './kriging.ts';

/**
 * Readings in blocks of neighbours, each of at most `most`: halved across their widest direction until they are small enough.
 * All in one block when they are few.
 */
export function blocksOf(observed: Observed, most: number): readonly Observed[] {
  const all = Array.from(observed.depth, (_, i) => i);
  return halved(observed.places, all, most).map((those) => ({
    places: Float64Array.from(those.flatMap((i) => [0, 1, 2].map((axis) => observed.places[3 * i + axis]))),
    depth: Float64Array.from(those, (i) => observed.depth[i]),
    error: Float64Array.from(those, (i) => observed.error[i]),
  }));
}

function halved(places: Places, those: readonly number[], most: number): readonly (readonly number[])[] {
  if (those.length <= most) return [those];
  const axis = widest(places, those);
  const along = [...those].sort((a, b) => places[3 * a + axis] - places[3 * b + axis] || a - b);
  const middle = Math.floor(along.length / 2);
  return [...halved(places, along.slice(0, middle), most), ...halved(places, along.slice(middle), most)];
}

function widest(places: Places, those: readonly number[]): number {
  const extents = [0, 1, 2].map((axis) => {
    const [least, greatest] = those.reduce(
      ([low, high], i) => [Math.min(low, places[3 * i + axis]), Math.max(high, places[3 * i + axis])],
      [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY],
    );
    return greatest - least;
  });
  return extents.indexOf(Math.max(...extents));
}
