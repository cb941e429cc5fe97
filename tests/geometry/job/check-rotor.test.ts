import { describe, expect, test } from 'vitest';
import { sentences } from './sentences.ts';
import { wholeJob } from './whole-job.ts';

const holes = { kind: 'holes', face: 'shroud/back', at: [[130, 113]], diameter: 10, depth: 6 };
const rim = { kind: 'holes', face: 'shroud/rim', at: [[113, 5]], diameter: 5, depth: 12 };
const skim = { kind: 'skim', face: 'shroud/back', first: [110, 150], second: [93, 133], depth: 1 };
const putty = {
  kind: 'putty',
  face: 'shroud/front',
  first: [120, 145],
  second: [350, 10],
  height: 4,
  density: 2.5,
};

/** The faults of a job whose rotor is bent. Its impeller: 300 mm, hub 60, shroud 10, vanes 40 to 26 high. */
const rotor = (over: object) => {
  const job = wholeJob();
  job.rotor = { ...job.rotor, ...over };
  return sentences(job);
};
const correction = (...corrections: object[]) => rotor({ corrections });

describe('what a rotor holds', () => {
  test('speed and mass are above 0; the mass may be left out', () => {
    expect(rotor({ speed: 0 })).toEqual([
      'rotor.speed: 0 is not a speed in r/min, more than 0 and at most 100000',
    ]);
    expect(rotor({ mass: 0 })).toEqual(['rotor.mass: 0 is not a mass in kg, more than 0 and at most 100000']);
    expect(rotor({ mass: undefined })).toEqual([]);
  });

  test('the density error is a percentage up to 50', () => {
    expect(rotor({ densityError: 0 })).toEqual([]);
    expect(rotor({ densityError: 51 })).toEqual([
      'rotor.densityError: 51 is not a percentage, at least 0 and at most 50',
    ]);
  });

  test('it may carry any part, but only an impeller with a shroud can be corrected', () => {
    expect(rotor({ part: 'plate' })).toEqual([]);
    expect(rotor({ part: 'plate', corrections: [] })).toEqual([]);
    expect(rotor({ part: 'plate', corrections: [holes] })).toEqual([
      'rotor.corrections: a list of 1 is to be left out on a wear plate: they go on the shroud of an impeller',
    ]);
    const job = wholeJob();
    job.parts[2].shroudThickness = 0;
    job.parts[2].wear = [];
    job.rotor.corrections = [holes];
    expect(sentences(job)).toContain(
      'rotor.corrections: a list of 1 is to be left out on an open impeller: they go on the shroud of an impeller',
    );
  });

  test('two planes stand apart', () => {
    expect(rotor({ planes: 2, planeSpacing: undefined })).toEqual([
      'rotor.planeSpacing: missing, needs the distance between the two planes in mm',
    ]);
  });
});

describe('corrections', () => {
  test('of every kind that fits are no fault', () => {
    expect(correction(holes, rim, skim, putty)).toEqual([]);
  });

  test('a hole in the back stays on the shroud and blind', () => {
    expect(
      correction({
        ...holes,
        at: [
          [30, 0],
          [140, 0],
          [146, 0],
        ],
        depth: 10,
      }),
    ).toEqual([
      'rotor.corrections[0].at[0][0]: 30 is not a radius from 35 to 145, where a hole of 10 stays on the shroud',
      'rotor.corrections[0].at[2][0]: 146 is not a radius from 35 to 145, where a hole of 10 stays on the shroud',
      'rotor.corrections[0].depth: 10 is not less than shroudThickness 10',
    ]);
  });

  test('a hole in the rim stays in the rim and short of the hub', () => {
    expect(correction({ ...rim, at: [[113, 8]] })).toEqual([
      'rotor.corrections[0].at[0][1]: 8 is not from 2.5 to 7.5 below the vane side, where a hole of 5 stays in the rim',
    ]);
    expect(correction({ ...rim, diameter: 10, depth: 120 })).toEqual([
      'rotor.corrections[0].diameter: 10 is not less than shroudThickness 10, the width of the rim',
      'rotor.corrections[0].depth: 120 is not less than 120, from the rim to the hub',
    ]);
  });

  test('a skim lies on the back between hub and rim, thinner than the shroud', () => {
    expect(correction({ ...skim, first: [20, 151], depth: 11 })).toEqual([
      'rotor.corrections[0].first[0]: 20 is not a radius on the shroud, from 30 to 150',
      'rotor.corrections[0].first[1]: 151 is not a radius on the shroud, from 30 to 150',
      'rotor.corrections[0].depth: 11 is not less than shroudThickness 10',
    ]);
    expect(correction({ ...skim, first: [120, 110], second: [360, 0] })).toEqual([
      'rotor.corrections[0].first: [120,110] is not from the smaller radius to the larger',
      'rotor.corrections[0].second: [360,0] is not two different angles; the whole turn is [0, 360]',
    ]);
  });

  test('putty stands on the vane side, no higher than the vanes', () => {
    expect(correction(skim, { ...putty, height: 27 })).toEqual([
      'rotor.corrections[1].height: 27 is not at most vanes.heightOutlet 26',
    ]);
  });

  test('each names its kind and a face it can be on, and has a size', () => {
    expect(correction({ kind: 'weight' })).toEqual([
      'rotor.corrections[0].kind: "weight" is not "holes", "skim" or "putty"',
    ]);
    expect(correction({ ...skim, face: 'shroud/front' })).toEqual([
      'rotor.corrections[0].face: "shroud/front" is not "shroud/back", the face that is skimmed',
    ]);
    expect(correction({ ...putty, face: 'shroud/back' })).toEqual([
      'rotor.corrections[0].face: "shroud/back" is not "shroud/front", the face that putty is built up on',
    ]);
    expect(correction({ ...holes, face: 'vane-1/tip' })).toEqual([
      'rotor.corrections[0].face: "vane-1/tip" is not "shroud/back" or "shroud/rim"',
    ]);
    expect(correction({ ...holes, depth: 0 })).toEqual([
      'rotor.corrections[0].depth: 0 is not a depth in mm, more than 0 and at most 1000',
    ]);
    expect(correction({ ...holes, at: [] })).toEqual([
      'rotor.corrections[0].at: [] is not a list of 1 to 100 holes',
    ]);
  });
});
