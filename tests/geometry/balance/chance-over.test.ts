import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chanceOver } from '../../../geometry/balance/chance-over.ts';

/** The same law another way: a Poisson mix of central chi-square tails, each a Poisson sum itself. Good for small arguments. */
function byPoissonSums(a: number, b: number): number {
  const [mix, cut] = [(a * a) / 2, (b * b) / 2];
  let weight = Math.exp(-mix);
  let term = Math.exp(-cut);
  let tail = term;
  let sum = 0;
  for (let k = 0; k < 2000; k++) {
    sum += weight * tail;
    weight *= mix / (k + 1);
    term *= cut / (k + 1);
    tail += term;
  }
  return sum;
}

// 1 - F_ncx2((U/s)^2; 2, (u/s)^2), derived; worked out by other code to the digits given.
describe('the chance of being over', () => {
  test('u 400, s 100, U 589.159: 0.0368451', () => {
    expect(chanceOver(400, 589.159, 100)).toBeCloseTo(0.0368451, 7);
  });
  test('u 0, s 240: exp(-U^2 / 2 s^2) = 0.0491394', () => {
    expect(chanceOver(0, 589.159, 240)).toBeCloseTo(0.0491394, 7);
    expect(chanceOver(0, 589.159, 240)).toBeCloseTo(Math.exp(-(589.159 ** 2) / (2 * 240 ** 2)), 12);
  });
  test('right on the limit it is 0.533981, not a half', () => {
    expect(chanceOver(589.159, 589.159, 100)).toBeCloseTo(0.533981, 6);
  });

  // Integral of Rice's density x exp(-(x^2 + a^2)/2) I0(a x) from b on, by mpmath 1.3 with 40 digits.
  test.each([
    [4, 5.89159, 0.03684507844899602],
    [5.89159, 5.89159, 0.5339808911419657],
    [1, 1, 0.7328798037968202],
    [0.5, 3, 0.01784367338648221],
    [3, 0.5, 0.9983002327055394],
    [2, 0.01, 0.9999932330666719],
    [0, 6, 1.522997974471263e-8],
    [0.001, 5, 3.726676463691567e-6],
    [11, 11.9, 0.1959286285328388],
    [11, 12.1, 0.1453417510950713],
    [13, 12, 0.8508450742419233],
    [12, 12, 0.5166370811293997],
    [20, 23, 0.001456854125386194],
    [30, 25, 0.9999997392599443],
    [100, 103, 0.001371893794436174],
    [1000, 1000, 0.5001994711651346],
    [1e6, 1e6, 0.5000001994711402],
  ])('u/s %f, U/s %f: %f', (a, b, chance) => {
    expect(Math.abs(chanceOver(a, b, 1) - chance)).toBeLessThan(1e-11);
  });

  test('agrees with sums of another kind', () => {
    const size = fc.double({ min: 0, max: 15, noNaN: true });
    fc.assert(
      fc.property(size, fc.double({ min: 0.001, max: 15, noNaN: true }), (a, b) => {
        expect(Math.abs(chanceOver(a, b, 1) - byPoissonSums(a, b))).toBeLessThan(1e-11);
      }),
    );
  });

  test('sure of everything, it is 0 or 1', () => {
    expect(chanceOver(589, 589.159, 0)).toBe(0);
    expect(chanceOver(589.159, 589.159, 0)).toBe(0);
    expect(chanceOver(590, 589.159, 0)).toBe(1);
  });

  test('arguments without measure stay a chance, and grow with what is there', () => {
    const wide = fc.double({ min: -12, max: 12, noNaN: true }).map((power) => 10 ** power);
    fc.assert(
      fc.property(wide, wide, wide, (net, limit, error) => {
        const chance = chanceOver(net, limit, error);
        expect(chance).toBeGreaterThanOrEqual(0);
        expect(chance).toBeLessThanOrEqual(1);
        expect(chanceOver(net * 1.1, limit, error)).toBeGreaterThanOrEqual(chance - 1e-12);
        expect(chanceOver(net, limit * 1.1, error)).toBeLessThanOrEqual(chance + 1e-12);
      }),
    );
    expect(chanceOver(1, 2, 5e-324)).toBe(0);
    expect(chanceOver(2, 1, 5e-324)).toBe(1);
  });
});
