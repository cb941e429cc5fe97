import { describe, expect, test } from 'vitest';
import { replay } from '../../../geometry/depth/replay.ts';
import { decideFill } from '../../../geometry/fill/fill-map.ts';
import { lostMetal } from '../../../geometry/moments/integrate.ts';
import { toRadians } from '../../../geometry/units.ts';
import { faceOf, job, pit } from '../made.ts';

const face = faceOf('face', { holes: [] });

// Closed forms: cone pi R^2 d / 3, bowl pi R^2 d / 2, flat pi R^2 d. 0.1 % allows for the rim falling anywhere between samples.
const EXACT: readonly ['cone' | 'bowl' | 'flat', number, number, number][] = [
  ['cone', 12, 2.5, 94.2478],
  ['bowl', 12, 2.5, 141.372],
  ['flat', 12, 2.5, 282.743],
  ['cone', 20, 4, 418.879],
  ['bowl', 20, 4, 628.319],
  ['flat', 20, 4, 1256.64],
];

describe('pits', () => {
  for (const [form, diameter, depth, exact] of EXACT) {
    test(`a ${form} ${diameter} x ${depth} mm is ${exact} mm3 wherever it sits, and as deep as it says`, () => {
      for (const [radius, degrees] of [
        [95, 210],
        [110.13, 17.7],
        [101.9, 359.9],
      ]) {
        const map = replay(face, [pit(radius, degrees, diameter, depth, form)]);
        expect(Math.abs(lostMetal(face, map).volume / exact - 1)).toBeLessThan(1e-3);
        const [region] = decideFill('plate', face, map, job([]).repair).regions;
        expect(region.deepest).toBeCloseTo(depth, 5);
      }
    });
  }
  test('on a dished face the rim is a circle on the slope, so the pit holds what it would on a flat one', () => {
    const dish = faceOf('face', { holes: [], coneAngle: toRadians(15) });
    const { volume } = lostMetal(dish, replay(dish, [pit(110, 40, 20, 0.5, 'flat')]));
    // pi R^2 d; the normals of a dish spread by (d/2) sin a / r = 0.06 % at half a millimetre.
    expect(
      Math.abs(volume / (Math.PI * 100 * 0.5 * (1 + (0.25 * Math.sin(toRadians(15))) / 110)) - 1),
    ).toBeLessThan(1e-3);
  });
  test('a pit as deep as the limit is filled, one a shade shallower is left', () => {
    const action = (depth: number) =>
      decideFill('plate', face, replay(face, [pit(100.07, 33.3, 9, depth, 'bowl')]), job([]).repair)
        .regions[0].action;
    expect(action(1)).toBe('fill');
    expect(action(0.99)).toBe('leave');
  });
  test('a pit smaller than a cell is still its own volume', () => {
    const map = replay(face, [pit(100.07, 33.3, 1, 1, 'flat')]);
    expect(Math.abs(lostMetal(face, map).volume / (Math.PI / 4) - 1)).toBeLessThan(0.05);
  });
});
