import { describe, expect, test } from 'vitest';
import { replay } from '../../../geometry/depth/replay.ts';
import { decideFill } from '../../../geometry/fill/fill-map.ts';
import { fillWarnings } from '../../../geometry/fill/fill-warnings.ts';
import type { Overrule, Repair } from '../../../geometry/job/job.ts';
import { wearPlate } from '../../../geometry/part/wear-plate.ts';
import { job, patch, plate, polar } from '../made.ts';

/** Worn from 80 to 120 mm, 0 to 90 degrees; a hole of 14 mm stands at 145 mm, 0 degrees. */
const warningsOf = (chosen: Partial<Repair>) => {
  const { repair } = job([], {}, chosen);
  const worn = patch([80, 120], [0, 90], 2);
  const faces = wearPlate(plate(), 2).faces.map((face) => ({
    part: 'plate',
    face,
    fill: decideFill('plate', face, replay(face, [worn]), repair),
  }));
  return fillWarnings(repair, faces);
};
const overrule = (radius: number, degrees: number, action: Overrule['action'] = 'leave'): Overrule => ({
  part: 'plate',
  face: 'face',
  point: polar(radius, degrees),
  action,
});

test('an overrule on a worn patch, and patterns that name a face, leave nothing to say', () => {
  const said = warningsOf({
    overrules: [overrule(100, 45)],
    coatedFaces: ['plate:*', '*:bore'],
    allowanceFaces: [],
  });
  expect(said).toEqual([]);
});

test('a job of which no face is worked out leaves nothing to say', () => {
  const { repair } = job([], {}, { overrules: [overrule(100, 45)], coatedFaces: ['plat:*'] });
  expect(fillWarnings(repair, [])).toEqual([]);
});

describe('an overrule that meets no worn patch', () => {
  test('on sound metal', () => {
    expect(warningsOf({ overrules: [overrule(100, 45), overrule(100, 200)] })).toEqual([
      {
        code: 'overrule-unmet',
        field: 'repair.overrule[1]',
        text: 'The point on plate:face lies on sound metal, so the choice to leave it changes nothing. Move the point onto the worn patch it is meant for, or take the choice out.',
      },
    ]);
  });
  test('off the face: in the bore or in a bolt hole', () => {
    for (const off of [overrule(30, 45, 'fill'), overrule(145, 0, 'fill')]) {
      expect(warningsOf({ overrules: [off] }).map(({ text }) => text)).toEqual([
        'The point on plate:face lies off that face, so the choice to fill it changes nothing. Move the point onto the worn patch it is meant for, or take the choice out.',
      ]);
    }
  });
});

describe('a pattern that names no face', () => {
  test('of coatedFaces or of allowanceFaces', () => {
    expect(warningsOf({ coatedFaces: ['plate:face', 'plat:*'], allowanceFaces: ['plate:tip'] })).toEqual([
      {
        code: 'pattern-unmet',
        field: 'repair.coatedFaces[1]',
        text: '"plat:*" names no face of this job, so it coats nothing. Give part and face, such as plate:face, * for any.',
      },
      {
        code: 'pattern-unmet',
        field: 'repair.allowanceFaces[0]',
        text: '"plate:tip" names no face of this job, so it leaves room for the coat on nothing. Give part and face, such as plate:face, * for any.',
      },
    ]);
  });
  test('the usual patterns may: they stand in every job', () => {
    expect(warningsOf({ coatedFaces: ['*:*'], allowanceFaces: ['*:face', '*:vane-*/tip'] })).toEqual([]);
  });
});
