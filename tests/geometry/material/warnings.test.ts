import { describe, expect, it } from 'vitest';
import type { FillMap } from '../../../geometry/fill/fill-map.ts';
import type { Region } from '../../../geometry/fill/region.ts';
import type { Job } from '../../../geometry/job/job.ts';
import { cautions } from '../../../geometry/material/cautions.ts';
import { coatNeed } from '../../../geometry/material/coat.ts';
import { fillerNeed } from '../../../geometry/material/filler.ts';
import { materialWarnings } from '../../../geometry/material/warnings.ts';
import { COAT, FILLER, NOTHING_PLANNED, REPAIR } from './generic-materials.ts';

const JOB: Job = {
  title: '',
  notes: '',
  parts: [],
  filler: FILLER,
  coat: COAT,
  repair: REPAIR,
  rotor: null,
  surface: null,
  clearance: null,
  flowTest: null,
  history: { hours: null, repairs: [] },
  unsupported: [],
  ...NOTHING_PLANNED,
};
const NOTHING = { netVolume: 0, filledArea: 0, deepestFill: 0, runs: [] };

function warningsOf(job: Partial<Job>, regions: readonly Region[] = [], allowance = 0, netVolume = 0) {
  const whole = { ...JOB, ...job };
  const fill: FillMap = { label: new Int32Array(0), regions, allowance };
  return materialWarnings(
    whole,
    [fill],
    fillerNeed({ ...NOTHING, netVolume }, whole.filler, REPAIR, whole.surface),
    coatNeed({ area: 1e5, leftVolume: 0 }, whole.coat, REPAIR, whole.surface, whole.plan.coatRate),
  );
}

const codes = (job: Partial<Job>, netVolume = 0): string[] =>
  warningsOf(job, [], 0, netVolume).map(({ code }) => code);

const region = (id: string, deepest: number, action: 'fill' | 'leave' = 'fill'): Region => ({
  id,
  part: 'plate',
  face: 'face',
  at: [100, 0],
  area: 100,
  deepest,
  action,
  overruled: false,
});

describe('materialWarnings', () => {
  it('has nothing to say about the generic materials, whose densities agree', () => {
    // (2 x 2.4 + 2.1) / 3 = 2.3 and (2 x 1.75 + 1.6) / 3 = 1.7 g/cm3.
    expect(warningsOf({}, [region('face-1', 4)])).toEqual([]);
  });

  it('warns when stated and computed density differ by more than 3 %', () => {
    const stated = (density: number) =>
      warningsOf({ filler: { ...FILLER, density } }).map(({ code }) => code);
    // 3 % of 2.3 is 0.069.
    expect(stated(2.368e-3)).toEqual([]);
    expect(stated(2.37e-3)).toEqual(['filler-density']);
    expect(stated(2.23e-3)).toEqual(['filler-density']);
    const [coat] = warningsOf({ coat: { ...COAT, density: 1.9e-3 } });
    expect(coat).toMatchObject({ code: 'coat-density', field: 'coat.density' });
    expect(coat.text).toContain('1.90 g/cm3, is 12 % more than A, B and the ratio give, 1.70 g/cm3');
  });

  it('says by what density the masses of A and B go when neither has its own', () => {
    const filler = { ...FILLER, densityA: null, densityB: null };
    expect(warningsOf({ filler }, [], 0, 1000)).toEqual([
      {
        code: 'filler-part-masses',
        field: 'filler.densityA',
        text: 'The densities of A and B of the filler are not given, so their masses are worked out as if both had that of the mix, 2.30 g/cm3. Measure A and B out by volume, or enter both densities from the data sheet.',
      },
    ]);
    const coat = { ...COAT, densityA: null, densityB: null };
    expect(warningsOf({ coat }).map(({ code, field }) => [code, field])).toEqual([
      ['coat-part-masses', 'coat.densityA'],
    ]);
    // Nothing to mix, nothing to weigh.
    expect(warningsOf({ filler })).toEqual([]);
    expect(warningsOf({ coat: { ...coat, coats: 0 } })).toEqual([]);
  });

  it('warns when mixing and filling together outlast the working time', () => {
    // 220 mL at 20 mL/min in one mix of 11 min: with 2 min of mixing that is 1 min more than 12 min, and none more than 13.
    const filler = (minutes: number) => ({ ...FILLER, workingTime: { minutes, at: 25, mass: null } });
    const tight = warningsOf({ filler: filler(12) }, [], 0, 200_000);
    expect(tight.map(({ code }) => code)).toEqual(['mix-tight']);
    expect(tight[0].text).toContain('1 min late');
    expect(codes({ filler: filler(13) }, 200_000)).toEqual([]);
  });

  it('warns when the scale is too coarse for the mixes, and not of a cartridge that mixes itself', () => {
    const coarse = { ...FILLER, scaleStep: 50 };
    expect(codes({ filler: coarse }, 20_000)).toEqual(['scale-too-coarse']);
    const cartridge = { label: 'cartridge', mass: null, volume: 50_000, selfMixing: true };
    expect(codes({ filler: { ...coarse, packs: [cartridge] } }, 20_000)).toEqual([]);
  });

  it('warns when a coat sets faster than it can be brushed out in any number of mixes one would make', () => {
    const slow = { ...COAT, workingTime: { minutes: 0.01, at: 25 }, scaleStep: 0.001 };
    expect(codes({ coat: slow })).toEqual(['coat-too-slow']);
  });

  it('warns when the filler sets before it is mixed', () => {
    // Workshop rule: 16 min at 25 degC are 16 / 2^3 = 2 min at 55 degC, as long as mixing takes.
    const quick = {
      ...FILLER,
      activationEnergy: null,
      workingTime: { minutes: 16, at: 25, mass: null },
      mixTime: 2,
    };
    expect(warningsOf({ filler: quick, surface: 55 }, [], 0, 100_000)).toEqual([
      {
        code: 'mix-time',
        field: 'filler.mixTime',
        text: 'The filler stays workable for 2 min at 55 degC and takes 2 min to mix, so it sets before it is in place. Cool the part, or take a slower filler.',
      },
    ]);
    expect(codes({ filler: quick, surface: 54 }, 100_000)).not.toContain('mix-time');
    expect(codes({ filler: { ...quick, mixTime: null }, surface: 60 }, 100_000)).toEqual([]);
    expect(warningsOf({ filler: quick, surface: 60 })).toEqual([]);
    const [quoted] = warningsOf({ filler: { ...quick, mixTime: 20 } }, [], 0, 1000);
    expect(quoted.text).toContain('16 min at 25 degC and takes 20 min to mix');
  });

  it('warns of fill thinner than the filler can be, counted from where the filler ends', () => {
    expect(warningsOf({}, [region('face-1', 0.6)])).toEqual([]);
    expect(warningsOf({}, [region('face-1', 0.6)], 0.2).map(({ code }) => code)).toEqual(['fill-too-thin']);
    expect(warningsOf({}, [region('face-1', 0.4, 'leave')])).toEqual([]);
    const many = [1, 2, 3, 4, 5].map((n) => region(`face-${n}`, 0.3));
    expect(warningsOf({}, many)[0].text).toContain('plate: face-1, plate: face-2, plate: face-3 and 2 more');
  });

  it('warns of grain coarser than the fill is deep', () => {
    const coarse = { ...FILLER, largestGrain: 2, leastBuild: 0.5 };
    expect(warningsOf({ filler: coarse }, [region('face-1', 1.5)]).map(({ code }) => code)).toEqual([
      'grain-too-coarse',
    ]);
  });

  it('warns when more is left free for the coat than it builds: 2 coats of 250 um are 0.5 mm', () => {
    const codes = (allowance: number, action: 'fill' | 'leave' = 'fill') =>
      warningsOf({}, [region('face-1', 8, action)], allowance).map(({ code }) => code);
    expect(codes(0.5)).toEqual([]);
    expect(codes(5)).toEqual(['allowance-too-thick']);
    expect(codes(5, 'leave')).toEqual([]);
    // Deeper than the fill itself: neither material would take this wear.
    const told = warningsOf({}, [region('face-1', 3)], 5);
    expect(told.map(({ code }) => code)).toEqual(['allowance-too-thick']);
    expect(told[0].text).toContain('filled places stay 4.5 mm low');
  });

  it('asks for passes when the fill is deeper than the most build', () => {
    const [deep] = warningsOf({}, [region('face-1', 12)]);
    expect(deep.code).toBe('several-passes');
    expect(deep.text).toContain('12 mm and the filler builds 10 mm in one pass. Fill in 2 passes');
  });

  it('says when the mixes are too many to list', () => {
    // 300 g / 2.3 g/mL = 130.43 mL a mix; 400 L x 1.1 / 130.43 mL = 3373.3, so 3374.
    expect(warningsOf({}, [], 0, 400e6).map(({ text }) => text)[0]).toContain('3374 mixes');
  });
});

describe('cautions', () => {
  it('have a source each, and send the reader to the local rules', () => {
    for (const caution of cautions({ mixes: true, fills: true })) {
      expect(caution.source).not.toBe('');
      expect(caution.text).toMatch(/Follow your local rules and the product's own safety sheet\.$/);
    }
  });

  it('follow what the job does: nothing to mix leaves isolation and restart', () => {
    expect(cautions({ mixes: false, fills: false }).map(({ code }) => code)).toEqual(['isolate', 'restart']);
    expect(cautions({ mixes: true, fills: false }).map(({ code }) => code)).not.toContain('batch-heat');
  });
});
