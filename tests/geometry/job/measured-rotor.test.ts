import { expect, test } from 'vitest';
import { measuredRotor } from '../../../geometry/job/measured-rotor.ts';

const DEG = Math.PI / 180;

test('a rotor in our units', () => {
  const rotor = measuredRotor({
    part: 'impeller',
    mass: 14.2,
    speed: 1450,
    grade: 6.3,
    planes: 2,
    planeSpacing: 60,
    asFound: { amount: 12, angle: -30 },
    densityError: 3,
    corrections: [
      {
        kind: 'holes',
        face: 'shroud/back',
        at: [
          [130, 113],
          [130, 127],
        ],
        diameter: 10,
        depth: 6,
      },
      { kind: 'holes', face: 'shroud/rim', at: [[113, 5]], diameter: 5, depth: 12 },
      { kind: 'skim', face: 'shroud/back', first: [110, 150], second: [350, 20], depth: 1 },
      { kind: 'putty', face: 'shroud/front', first: [120, 145], second: [10, 40], height: 4, density: 2.5 },
    ],
  });
  expect(rotor).toEqual({
    part: 'impeller',
    mass: 14_200,
    speed: 1450,
    grade: 6.3,
    planes: 2,
    planeSpacing: 60,
    asFound: { amount: 12, angle: expect.closeTo(330 * DEG, 12) },
    densityError: 0.03,
    corrections: [
      {
        kind: 'holes',
        face: 'shroud/back',
        at: [
          [130, 113 * DEG],
          [130, 127 * DEG],
        ],
        radius: 5,
        depth: 6,
      },
      { kind: 'holes', face: 'shroud/rim', at: [[113 * DEG, 5]], radius: 2.5, depth: 12 },
      {
        kind: 'skim',
        face: 'shroud/back',
        first: [110, 150],
        second: [350 * DEG, expect.closeTo(380 * DEG, 12)],
        depth: 1,
      },
      {
        kind: 'putty',
        face: 'shroud/front',
        first: [120, 145],
        second: [10 * DEG, expect.closeTo(40 * DEG, 12)],
        height: 4,
        density: 0.0025,
      },
    ],
  });
});

test('what is left out: one plane, no mass, nothing as found, 2 % on the density, no corrections', () => {
  expect(measuredRotor({ part: 'impeller', speed: 1450, grade: 6.3 })).toEqual({
    part: 'impeller',
    mass: null,
    speed: 1450,
    grade: 6.3,
    planes: 1,
    planeSpacing: null,
    asFound: { amount: 0, angle: 0 },
    densityError: 0.02,
    corrections: [],
  });
});

test('a sweep that ends where it began is the whole turn', () => {
  const { corrections } = measuredRotor({
    part: 'impeller',
    speed: 1450,
    grade: 6.3,
    corrections: [{ kind: 'skim', face: 'shroud/back', first: [110, 150], second: [30, 390], depth: 1 }],
  });
  expect(corrections[0]).toMatchObject({ second: [30 * DEG, expect.closeTo(390 * DEG, 12)] });
});
