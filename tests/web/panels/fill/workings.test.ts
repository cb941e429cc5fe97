import { describe, expect, it } from 'vitest';
import { estimate } from '../../../../geometry/estimate.ts';
import { GENERIC_COAT, GENERIC_FILLER, wholeRepair } from '../../../../geometry/job/defaults.ts';
import type { JobFile } from '../../../../geometry/job/job-file.ts';
import { measured } from '../../../../geometry/job/measured.ts';
import { newPlateJob } from '../../../../geometry/job/new-plate-job.ts';
import { toResult } from '../../../../geometry/sheet/result.ts';
import {
  coatWasteWorking,
  coatWorking,
  mixesWorking,
  packsWorking,
  partsWorking,
  puttyWorking,
  scaleWorking,
  wetFilmWorking,
} from '../../../../web/panels/fill/workings.ts';

const fresh = newPlateJob();
const job: JobFile = {
  ...fresh,
  parts: fresh.parts.map((part) => ({
    ...part,
    wear: [
      { kind: 'patch', face: 'face', first: [90, 130], second: [0, 360], depth: 4 },
      { kind: 'pit', face: 'face', at: [75, 30], diameter: 14, depth: 0.7, form: 'flat' },
    ],
  })),
  repair: { overbuild: 0.5, fillerWaste: 12, coatWaste: 25, applicationRate: 15 },
  climate: { surface: 14 },
};
const { filler, coat } = toResult(estimate(measured(job)));
const repair = wholeRepair(job.repair);

/** Works a shown line out as someone with a calculator would. */
function calculated(line: string): { readonly left: number; readonly right: number } {
  const sums = line
    .replace(/^[^:=]*: /, '')
    .replace(/ (?:mL\/min|g\/cm³|mL|min|g)(?![a-z])/g, '')
    .replace(/ at .*$/, '')
    .replaceAll('×', '*')
    .replaceAll('−', '-')
    .split('=');
  const value = (text: string): number => {
    if (!/^[\d\s.()+*/-]+$/.test(text)) throw new Error(`not a sum: ${text}`);
    return Number(new Function(`return ${text}`)());
  };
  return { left: value(sums[0]), right: value(sums[1]) };
}

/** Figures are shown to three digits or more, so a line made of a few of them adds up to 1 %. */
function expectTrue(line: string): void {
  const { left, right } = calculated(line);
  expect(Math.abs(left / right - 1), line).toBeLessThan(0.01);
}

describe('the numbers of a working add up as written', () => {
  it('putty', () => {
    const [line] = puttyWorking(filler, repair).numbers;
    expectTrue(line);
    expect(line).toContain('× 1.12');
  });

  it('A and B of putty and of coat: each by its own share and density', () => {
    for (const [need, sheet] of [
      [filler, GENERIC_FILLER],
      [coat, GENERIC_COAT],
    ] as const) {
      const lines = partsWorking(need, sheet).numbers;
      expect(lines).toHaveLength(2);
      for (const line of lines) {
        const [volume, , mass] = line.replace(/^.: /, '').split('=');
        expectTrue(`${volume} = ${line.split('=')[1].split(',')[0]}`);
        expectTrue(`${line.split('=')[1].replace(',', '')} = ${mass ?? line.split('=').at(-1)}`);
      }
    }
  });

  it('mixes: what can be placed in time, what the quoted mass is, and how many', () => {
    const [, placed, quoted, count] = mixesWorking(filler, GENERIC_FILLER, repair, 14).numbers;
    expectTrue(placed);
    expectTrue(quoted);
    expect(count).toContain(`${filler.batches.length} mixes`);
  });

  it('working time: the Arrhenius line gives the minutes it shows', () => {
    const [line] = mixesWorking(filler, GENERIC_FILLER, repair, 14).numbers;
    const [, quoted, energy, gas, warm, at, minutes] =
      /^Working time (\S+) min × exp\[\((\S+) \/ (\S+)\) \(1 \/ (\S+) − 1 \/ (\S+)\)\] = (\S+) min/
        .exec(line)
        ?.map(Number) ?? [];
    expect(quoted * Math.exp((energy / gas) * (1 / warm - 1 / at))).toBeCloseTo(minutes, 0);
  });

  it('says that the time stands as quoted while the temperature is not known', () => {
    expect(mixesWorking(filler, GENERIC_FILLER, repair, undefined).numbers[0]).toBe(
      'Working time 20 min, as quoted at 25 °C',
    );
  });

  it('coat', () => {
    expectTrue(coatWorking(coat, GENERIC_COAT, repair).numbers[0]);
  });

  it('wet film: of 80 % solids it is a quarter more than the dry one', () => {
    const { coat: thinned } = toResult(
      estimate(measured({ ...job, coat: { ...GENERIC_COAT, solidsByVolume: 80 } })),
    );
    const [line] = wetFilmWorking(thinned, { ...GENERIC_COAT, solidsByVolume: 80 }).numbers;
    // 250 / 0.8, by hand.
    expect(line).toBe('250 µm / 0.8 = 313 µm');
  });

  it('waste of coat: 25 % on top is a fifth of the mix', () => {
    const [line] = coatWasteWorking(repair).numbers;
    expect(line).toBe('25 / (100 + 25) = 20.0 %');
  });

  it('scale: the ratio weighed against the ratio wanted', () => {
    const mixes = [...filler.batches, ...coat.layers.flatMap((layer) => layer.mixes)];
    for (const mix of mixes) {
      const [working] = scaleWorking([mix]);
      const [, sum] = working.numbers;
      expectTrue(sum.replace(/:.*$/, ''));
      expect(Number(/= ([\d.]+):/.exec(sum)?.[1])).toBeCloseTo(1 + (mix.weigh?.ratioError ?? Number.NaN), 3);
    }
    expect(scaleWorking(mixes.map((mix) => ({ ...mix, weigh: null })))).toEqual([]);
  });

  it('packs hold at least the need', () => {
    const [need, buy] = packsWorking(filler).numbers;
    const mass = Number(/, (\S+) g/.exec(need)?.[1]);
    const kits = Number(/Buy (\d+) × kit/.exec(buy)?.[1]);
    expect(kits * 1000).toBeGreaterThanOrEqual(mass);
  });
});
