import { describe, expect, it } from 'vitest';
import { estimate } from '../../../../geometry/estimate.ts';
import { checkJob } from '../../../../geometry/job/check-job.ts';
import type { JobFile, WearPlateFile } from '../../../../geometry/job/job-file.ts';
import { measured } from '../../../../geometry/job/measured.ts';
import { newPlateJob } from '../../../../geometry/job/new-plate-job.ts';
import {
  asOutline,
  asRound,
  boltCircleChoices,
  withNewPart,
  withoutPart,
  withPartRenamed,
  withPlate,
} from '../../../../web/panels/part/part-edits.ts';

const fresh = newPlateJob();
const plateOf = (job: JobFile, i = 0) => job.parts[i] as WearPlateFile;
const worn: JobFile = {
  ...fresh,
  parts: [
    {
      ...plateOf(fresh),
      wear: [
        { kind: 'patch', face: 'face', first: [90, 120], second: [0, 90], depth: 3 },
        { kind: 'pit', face: 'face', at: [80, 200], diameter: 10, depth: 0.6, form: 'flat' },
      ],
    },
  ],
  repair: {
    allowanceFaces: ['plate:face'],
    coatedFaces: ['plate:face', '*:bore'],
    overrule: [{ at: 'plate:face', point: [80, 200], action: 'fill' }],
  },
};

describe('a part under another name', () => {
  it('keeps its overrules, allowances and coats: the figures are the same', () => {
    const renamed = withPartRenamed(worn, 0, 'front plate');
    expect(checkJob(renamed)).toEqual([]);
    const [before, after] = [worn, renamed].map((job) => estimate(measured(job)));
    expect(after.filler.volume).toBe(before.filler.volume);
    expect(after.coat.volume).toBe(before.coat.volume);
    // The overrule counts at all: without it the pit of 0.6 mm would be left.
    expect(after.parts[0].regions.map(({ action }) => action)).toEqual(['fill', 'fill']);
  });

  it('leaves patterns for every part as they are', () => {
    expect(withPartRenamed(worn, 0, 'x').repair?.coatedFaces).toEqual(['x:face', '*:bore']);
  });
});

describe('one plate more and one less', () => {
  it('adds a sound plate under a name of its own, again and again', () => {
    const twice = withNewPart(withNewPart(worn, 'wear-plate').job, 'wear-plate');
    expect(twice.id).toBe('plate-3');
    expect(twice.job.parts.map(({ id }) => id)).toEqual(['plate', 'plate-2', 'plate-3']);
    expect(checkJob(twice.job)).toEqual([]);
  });

  it('takes the overrules of a removed part along', () => {
    const two = withNewPart(worn, 'wear-plate').job;
    const left = withoutPart(two, 0);
    expect(left.parts.map(({ id }) => id)).toEqual(['plate-2']);
    expect(left.repair?.overrule).toEqual([]);
    expect(checkJob(left)).toEqual([]);
  });
});

describe('the shape of a plate', () => {
  it('is sound after each change, and back', () => {
    const outlined = withPlate(worn, 0, asOutline);
    expect(checkJob(outlined)).toEqual([]);
    expect(plateOf(outlined).wear).toEqual([]);
    const round = withPlate(outlined, 0, asRound);
    expect(checkJob(round)).toEqual([]);
    expect(plateOf(round).outerDiameter).toBeGreaterThanOrEqual(300);
  });

  it('takes the sections along: their numbers would mean other places', () => {
    const laid = withPlate(worn, 0, (plate) => ({
      ...plate,
      sections: [{ kind: 'along-second', face: 'bore', at: 90 }],
    }));
    expect(checkJob(laid)).toEqual([]);
    const outlined = withPlate(laid, 0, asOutline);
    expect(checkJob(outlined)).toEqual([]);
    expect(plateOf(outlined).sections).toBeUndefined();
  });

  it.each([
    ['a common plate', plateOf(fresh)],
    ['a narrow ring', { ...plateOf(fresh), outerDiameter: 300, boreDiameter: 250 }],
    ['an outline', asOutline(plateOf(fresh))],
  ])('has room for one of the bolt circles offered: %s', (_, plate) => {
    const sound = boltCircleChoices(plate).filter(
      (circle) => checkJob({ ...fresh, parts: [{ ...plate, boltHoles: [circle] }] }).length === 0,
    );
    expect(sound.length).toBeGreaterThan(0);
  });
});
