import fc from 'fast-check';

/** A number between two ends, spread evenly: fast-check's own doubles crowd about 0. */
export function even(from: number, to: number): fc.Arbitrary<number> {
  return fc.integer({ min: 0, max: 1_000_000 }).map((step) => from + ((to - from) * step) / 1_000_000);
}
