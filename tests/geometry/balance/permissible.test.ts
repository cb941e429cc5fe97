import { describe, expect, test } from 'vitest';
import { permissible, sharedPermissible } from '../../../geometry/balance/permissible.ts';

// ISO 21940-11:2016, 6.3.3: U = 1000 G m / w, w = 2 pi n / 60. Worked out by other code to the digits given.
describe('permissible residual unbalance', () => {
  test.each([
    [14.2, 1450, 6.3, 589.159, 41.49],
    [10, 3000, 6.3, 200.535, 20.0535],
    [10, 3000, 2.5, 79.5775, 7.95775],
    [6.5, 2900, 6.3, 134.843, 20.745],
    [45, 980, 6.3, 2762.48, 61.3883],
    [2, 3000, 2.5, 15.9155, 7.95775],
  ])('%f kg at %f r/min, G %f: %f g.mm, %f um', (kilograms, speed, grade, unbalance, micrometres) => {
    const limit = permissible(grade, speed, kilograms * 1000);
    expect(limit.unbalance / unbalance).toBeCloseTo(1, 5);
    expect((limit.eccentricity * 1000) / micrometres).toBeCloseTo(1, 5);
    // The workshop's 9549 G m / n rounds 30000/pi: 3.1e-5 low.
    expect((9549 * grade * kilograms) / speed / limit.unbalance).toBeCloseTo(1, 4);
  });
});

// Lever rule by moments about the mass centre; limits of ISO 21940-11:2016, 7.2.2 and 7.2.3 (from memory).
describe('sharing it between two planes', () => {
  const shared = (whole: number, toA: number, toB: number) =>
    sharedPermissible(whole, { planeA: 0, planeB: toA + toB, massCentre: toA });

  test('3600 kg at 3000 r/min, G 2.5, 1500 and 900 mm: 10 743.0 and 17 904.9 g.mm', () => {
    const whole = permissible(2.5, 3000, 3_600_000).unbalance;
    expect(whole).toBeCloseTo(28647.9, 1);
    const [a, b] = shared(whole, 1500, 900);
    expect(a).toBeCloseTo(10743.0, 1);
    expect(b).toBeCloseTo(17904.9, 1);
  });

  test('60 and 140 mm stand right on 0.7 and 0.3', () => {
    const [a, b] = shared(589.159, 60, 140);
    expect(a).toBeCloseTo(412.411, 3);
    expect(b).toBeCloseTo(176.748, 3);
  });

  test('50 and 250 mm are held to them', () => {
    // 490.966 and 98.1931 by the lever rule alone.
    const [a, b] = shared(589.159, 50, 250);
    expect(a).toBeCloseTo(412.411, 3);
    expect(b).toBeCloseTo(176.748, 3);
  });

  test('an overhung rotor may have up to 1.3 in the plane beside it, and no less than 0.3 in the other', () => {
    // 30 mm outside plane B, planes 100 mm apart: 1.3 at B by moments, 0.3 at A.
    const near = sharedPermissible(1000, { planeA: 0, planeB: 100, massCentre: 130 });
    expect(near[0]).toBeCloseTo(300, 9);
    expect(near[1]).toBeCloseTo(1300, 9);
    const far = sharedPermissible(1000, { planeA: 0, planeB: 100, massCentre: 200 });
    expect(far[0]).toBeCloseTo(1000, 9);
    expect(far[1]).toBeCloseTo(1300, 9);
  });
});
