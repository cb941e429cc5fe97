import { expect, test } from 'vitest';
import { impeller } from '../../../geometry/part/impeller.ts';
import { middleOf, solidVolume } from '../../../geometry/part/solid.ts';
import { wearPlate } from '../../../geometry/part/wear-plate.ts';
import { madeImpeller, plate } from '../made.ts';

test('an impeller as new is its hub, its shroud and its vanes', () => {
  // Closed forms: rings pi (R^2 - r^2) h, and b t L = 48 497.395 mm3 a level vane (65 to 150 mm, 22 to 28 deg, 8 thick, 30 high).
  const shape = madeImpeller({}, { hubHeight: 50 });
  const rings = Math.PI * ((30 ** 2 - 15 ** 2) * 60 + (150 ** 2 - 30 ** 2) * 10);
  expect(solidVolume(impeller(shape, 4))).toBeCloseTo(rings + 5 * 48497.395, 1);
  expect(middleOf(impeller(shape, 4))).toBe(20);
});

test('a round nose takes 274.690 mm3 off a vane 8 thick and 40 high', () => {
  // t^2/2 (1 - pi/4) a mm of height: closed form.
  const volume = (nose: 'round' | 'square') =>
    solidVolume(impeller(madeImpeller({ nose, count: 1, heightInlet: 40, heightOutlet: 40 }), 4));
  expect(Math.abs(volume('square') - volume('round') - 274.69)).toBeLessThan(0.5);
});

test('a plate is its face times its thickness, holes taken out', () => {
  // Annulus 320/120 less six 14 mm holes: 68 191.4101 mm2, 18 mm thick; a dish is as much in plan.
  expect(solidVolume(wearPlate(plate(), 4))).toBeCloseTo(68191.4101 * 18, 1);
  expect(solidVolume(wearPlate(plate({ coneAngle: 0.1 }), 4))).toBeCloseTo(68191.4101 * 18, 1);
});
