import { describe, expect, test } from 'vitest';
import { placedReadings, placesOf } from '../../../geometry/depth/reading-places.ts';
import { toRadians } from '../../../geometry/units.ts';
import { faceOf, impellerFace, madeImpeller } from '../made.ts';
import { readings } from './read-made.ts';

const face = faceOf('face');
const apart = (places: Float64Array) =>
  Math.hypot(places[0] - places[3], places[1] - places[4], places[2] - places[5]);

describe('distances between two readings', () => {
  test('across the 0/360 line they are as short as they are: 2 x 100 sin(5 deg)', () => {
    const places = placesOf(face, [
      [100, toRadians(355)],
      [100, toRadians(5)],
    ]);
    expect(apart(places)).toBeCloseTo(200 * Math.sin(toRadians(5)), 9);
  });
  test('on a cone along its slope: 40 mm of radius at 30 degrees are 40 / cos 30', () => {
    const dished = faceOf('face', { coneAngle: toRadians(30) });
    expect(
      apart(
        placesOf(dished, [
          [80, 1],
          [120, 1],
        ]),
      ),
    ).toBeCloseTo(40 / Math.cos(toRadians(30)), 9);
  });
  test('round the bore by the chord: 2 x 60 sin(5 deg), and straight down', () => {
    const bore = faceOf('bore');
    const round = placesOf(bore, [
      [4, toRadians(355)],
      [4, toRadians(365)],
    ]);
    expect(apart(round)).toBeCloseTo(120 * Math.sin(toRadians(5)), 9);
    expect(
      apart(
        placesOf(bore, [
          [4, 1],
          [9, 1],
        ]),
      ),
    ).toBeCloseTo(5, 9);
  });
  test('on the side of a vane along it and up, however it bends', () => {
    const side = impellerFace('vane-1/pressure', madeImpeller());
    expect(
      apart(
        placesOf(side, [
          [10, 4],
          [40, 44],
        ]),
      ),
    ).toBeCloseTo(50, 9);
  });
});

describe('what can be used', () => {
  test('a reading in a bolt hole or off the face is not, one a hair beyond the rim is', () => {
    const placed = placedReadings(
      face,
      readings('face', [
        [145, 0, 1],
        [200, 1, 1],
        [160.04, 1, 1],
        [100, 1, 1],
      ]),
    );
    expect(placed.off).toEqual([0, 1]);
    expect(placed.of).toEqual([[2], [3]]);
  });

  test('readings of one place become their mean, with the error the gauge leaves it', () => {
    const placed = placedReadings(
      face,
      readings('face', [
        [100, 1, 2],
        [100.2, 1, 2.2],
        [120, 1, 3],
      ]),
    );
    expect(placed.of).toEqual([[0, 1], [2]]);
    expect([...placed.observed.depth]).toEqual([expect.closeTo(2.1, 12), 3]);
    expect([...placed.observed.error]).toEqual([expect.closeTo(0.005, 12), expect.closeTo(0.01, 12)]);
    expect(placed.contradicting).toEqual([]);
  });

  test('where they contradict each other their own scatter is their error: 1 and 3 have a mean of variance 1', () => {
    for (const gaugeError of [0, 0.1]) {
      const placed = placedReadings(
        face,
        readings(
          'face',
          [
            [100, 1, 1],
            [100, 1, 3],
          ],
          { gaugeError },
        ),
      );
      expect(placed.contradicting).toEqual([[0, 1]]);
      expect([...placed.observed.depth]).toEqual([2]);
      // Sample variance 2 over two readings.
      expect([...placed.observed.error]).toEqual([1]);
    }
  });

  test('two places at either side of the 0/360 line are one', () => {
    const placed = placedReadings(
      face,
      readings('face', [
        [100, 1e-4, 1],
        [100, 2 * Math.PI - 1e-4, 1],
      ]),
    );
    expect(placed.of).toEqual([[0, 1]]);
  });
});
