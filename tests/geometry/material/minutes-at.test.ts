import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { minutesAt } from '../../../geometry/material/minutes-at.ts';

// Arrhenius with R = 8.314462618 J/(mol K); computed independently in double precision, Python `math.exp`.
const ARRHENIUS = [
  { minutes: 20, at: 25, surface: 35, energy: 55, want: 9.73506 },
  { minutes: 20, at: 25, surface: 15, energy: 55, want: 43.1941 },
  { minutes: 20, at: 25, surface: 5, energy: 55, want: 98.597 },
  // 58.6 kJ/mol: epoxy with ethylenediamine, autocatalytic path, 14 kcal/mol (J. Appl. Polym. Sci. 29, 1984).
  { minutes: 480, at: 25, surface: 12, energy: 58.6, want: 1410.2 },
  { minutes: 20, at: 25, surface: 20, energy: 50, want: 28.2121 },
];

// The workshop rule, a factor 2 every 10 degC (van 't Hoff), for the same cases.
const DOUBLING = [
  { minutes: 20, at: 25, surface: 35, want: 10 },
  { minutes: 20, at: 25, surface: 15, want: 40 },
  { minutes: 20, at: 25, surface: 5, want: 80 },
  { minutes: 480, at: 25, surface: 12, want: 1181.9 },
  { minutes: 20, at: 25, surface: 20, want: 28.2843 },
];

describe('minutesAt', () => {
  it.each(ARRHENIUS)(
    'is $want min at $surface degC with $energy kJ/mol',
    ({ energy, surface, want, ...quoted }) => {
      expect(minutesAt(quoted, energy, surface)).toBeCloseTo(want, want > 1000 ? 2 : 3);
    },
  );

  it.each(DOUBLING)('is $want min at $surface degC by the workshop rule', ({ surface, want, ...quoted }) => {
    expect(minutesAt(quoted, null, surface)).toBeCloseTo(want, want > 1000 ? 1 : 3);
  });

  it('agrees with the workshop rule only at 52.949 kJ/mol between 25 and 35 degC', () => {
    // Ea = R ln 2 T1 T2 / 10: Leenson, J. Chem. Educ. 76, 1459, 1999.
    const quoted = { minutes: 20, at: 25 };
    expect(minutesAt(quoted, 52.9489, 35)).toBeCloseTo(10, 4);
    expect(minutesAt(quoted, 55, 35)).toBeLessThan(10);
  });

  it('is the quoted time when the surface temperature is not known or is the quoted one', () => {
    expect(minutesAt({ minutes: 20, at: 23 }, 55, null)).toBe(20);
    expect(minutesAt({ minutes: 20, at: 23 }, 55, 23)).toBe(20);
    expect(minutesAt({ minutes: 20, at: 23 }, null, 23)).toBe(20);
  });

  it('never grows with the temperature', () => {
    const temperature = fc.double({ min: -10, max: 60, noNaN: true });
    const energy = fc.option(fc.double({ min: 10, max: 120, noNaN: true }));
    fc.assert(
      fc.property(temperature, temperature, energy, (a, b, activation) => {
        const quoted = { minutes: 20, at: 25 };
        const [cold, warm] = [Math.min(a, b), Math.max(a, b)];
        expect(minutesAt(quoted, activation, warm)).toBeLessThanOrEqual(minutesAt(quoted, activation, cold));
      }),
    );
  });
});
