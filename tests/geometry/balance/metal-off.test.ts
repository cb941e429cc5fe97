import { describe, expect, test } from 'vitest';
import {
  axialHole,
  depthOfAxialHole,
  depthOfRadialHole,
  depthOfSector,
  drillPoint,
  radialHole,
  sector,
  sectorMass,
  tipDepth,
} from '../../../geometry/balance/metal-off.ts';
import { toRadians } from '../../../geometry/units.ts';

const IRON = 7.2e-3;

// All derived by integration; worked out by other code to the digits given.
describe('an axial hole', () => {
  test('10 mm, 8 deep at 135 mm: 610.726 g.mm; 12 mm, 5 deep at 120 mm: 488.580 g.mm', () => {
    expect(axialHole(IRON, 5, 8, 135)).toBeCloseTo(610.726, 3);
    expect(axialHole(IRON, 6, 5, 120)).toBeCloseTo(488.58, 3);
    // 4.52389 and 4.07150 g.
    expect(axialHole(IRON, 5, 8, 135) / 135).toBeCloseTo(4.52389, 5);
    expect(axialHole(IRON, 6, 5, 120) / 120).toBeCloseTo(4.0715, 4);
  });
  test('7.71751 mm deep for 589.16 g.mm', () => {
    expect(depthOfAxialHole(589.16, IRON, 5, 135)).toBeCloseTo(7.71751, 4);
  });
});

test('the point of a 118 deg drill of 10 mm takes 78.6525 mm3, an eighth of a hole 8 mm deep', () => {
  expect(drillPoint(10)).toBeCloseTo(78.6525, 4);
  expect(drillPoint(10) / (Math.PI * 25 * 8)).toBeCloseTo(0.125, 3);
});

test('with its point a drill goes deeper for the same metal; a hole shallower than the point has no such depth', () => {
  const tip = tipDepth(10, 8) ?? 0;
  const pointHeight = 5 / Math.tan(toRadians(59));
  expect(Math.PI * 25 * (tip - pointHeight) + drillPoint(10)).toBeCloseTo(Math.PI * 25 * 8, 9);
  expect(tipDepth(10, 0.9)).toBeNull();
});

describe('a radial hole', () => {
  test('10 mm, 8 deep from a rim of 150 mm: 660.488 g.mm', () => {
    expect(radialHole(IRON, 5, 8, 150)).toBeCloseTo(660.488, 3);
  });
  test('its depth is found again, and none where a hole to the shaft takes less', () => {
    expect(depthOfRadialHole(radialHole(IRON, 5, 8, 150), IRON, 5, 150)).toBeCloseTo(8, 9);
    expect(depthOfRadialHole(radialHole(IRON, 5, 150, 150) * 1.01, IRON, 5, 150)).toBeNull();
  });
});

describe('a skimmed sector', () => {
  const shape = { inner: 110, outer: 150, halfAngle: toRadians(20) };
  test('110 to 150 mm, 20 deg to either side, 1 mm: 26.1381 g, 3355.63 g.mm', () => {
    expect(sectorMass(IRON, shape, 1)).toBeCloseTo(26.1381, 4);
    expect(sector(IRON, shape, 1)).toBeCloseTo(3355.63, 2);
    expect(depthOfSector(3355.63, IRON, shape)).toBeCloseTo(1, 5);
  });
});
