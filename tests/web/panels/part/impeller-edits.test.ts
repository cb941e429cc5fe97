import { describe, expect, it } from 'vitest';
import { estimate } from '../../../../geometry/estimate.ts';
import { checkJob } from '../../../../geometry/job/check-job.ts';
import type { ImpellerFile, JobFile } from '../../../../geometry/job/job-file.ts';
import { measured } from '../../../../geometry/job/measured.ts';
import { newPlateJob } from '../../../../geometry/job/new-plate-job.ts';
import { drawnWraps, nearestCamber } from '../../../../web/panels/part/drawn-wrap.ts';
import {
  asOpen,
  asSemiOpen,
  withImpeller,
  withNewPart,
  withoutPart,
} from '../../../../web/panels/part/part-edits.ts';
import { IMPELLER, impellerJob } from '../../tools/impellers.ts';

const impellerOf = (job: JobFile, i = 0) => job.parts[i] as ImpellerFile;

describe('a new impeller', () => {
  it('is sound, and its figures can be worked out', () => {
    const { job, id } = withNewPart(newPlateJob(), 'impeller');
    expect(id).toBe('impeller');
    expect(checkJob(job)).toEqual([]);
    const { parts } = estimate(measured(job), { cell: 3 });
    expect(parts[1].faces).toHaveLength(2 + 5 * 5);
    expect(parts[1].lost.volume).toBe(0);
  });

  it('has a name of its own beside another', () => {
    expect(withNewPart(withNewPart(newPlateJob(), 'impeller').job, 'impeller').id).toBe('impeller-2');
  });

  it('goes with what the job says of it alone', () => {
    const { job } = withNewPart(newPlateJob(), 'impeller');
    const spun: JobFile = { ...job, rotor: { part: 'impeller', mass: 9, speed: 1450, grade: 6.3 } };
    expect(checkJob(spun)).toEqual([]);
    expect(withoutPart(spun, 0).rotor).toEqual(spun.rotor);
    const left = withoutPart(spun, 1);
    expect(left.rotor).toBeUndefined();
    expect(checkJob(left)).toEqual([]);
  });
});

describe('an impeller without its shroud', () => {
  const worn = impellerJob([
    { kind: 'pit', face: 'shroud/front', at: [100, 30], diameter: 10, depth: 2, form: 'bowl' },
    { kind: 'pit', face: 'vane-2/pressure', at: [60, 12], diameter: 10, depth: 2, form: 'bowl' },
  ]);

  it('keeps the marks of its vanes, and is sound; so is it with a shroud again', () => {
    const open = withImpeller(worn, 0, asOpen);
    expect(checkJob(open)).toEqual([]);
    expect(impellerOf(open).wear.map(({ face }) => face)).toEqual(['vane-2/pressure']);
    const closed = withImpeller(open, 0, asSemiOpen);
    expect(checkJob(closed)).toEqual([]);
    expect(impellerOf(closed).shroudThickness).toBe(10);
  });

  it('keeps the sections over its vanes', () => {
    const laid = withImpeller(worn, 0, (impeller) => ({
      ...impeller,
      sections: [
        { kind: 'along-second', face: 'shroud/front', at: 100 },
        { kind: 'along-first', face: 'vane-2/tip', at: 0 },
      ],
    }));
    const open = withImpeller(laid, 0, asOpen);
    expect(checkJob(open)).toEqual([]);
    expect(impellerOf(open).sections?.map(({ face }) => face)).toEqual(['vane-2/tip']);
  });
});

describe('the wrap that is drawn', () => {
  // Checks B2 and B3: 65 to 150 mm, 22 to 28 deg.
  it('is 105.26 deg for an even change of angle and 80.58 deg for a single arc', () => {
    const wraps = drawnWraps(IMPELLER);
    expect(wraps.linear).toBeCloseTo(105.256763, 4);
    expect(wraps.arc).toBeCloseTo(80.5844442, 4);
  });

  it('says which curve a rubbing belongs to', () => {
    const wraps = drawnWraps(IMPELLER);
    expect([100, 93, 92, 70].map((measured) => nearestCamber(wraps, measured))).toEqual([
      'linear',
      'linear',
      'arc',
      'arc',
    ]);
    expect(nearestCamber({ linear: 90, arc: null }, 20)).toBe('linear');
  });
});
