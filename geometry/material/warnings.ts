import type { FillMap } from '../fill/fill-map.ts';
import type { Region } from '../fill/region.ts';
import type { Coat, Filler, Job } from '../job/job.ts';
import type { Warning } from '../job/warning.ts';
import type { Density, Fraction, Minute, Mm, Mm3 } from '../units.ts';
import { batchCount, MOST_BATCHES } from './batch.ts';
import type { CoatNeed } from './coat.ts';
import { type FillerNeed, passesFor } from './filler.ts';
import { densityMismatch, type Mix, mixedDensity } from './mix.ts';
import { RATIO_LIMIT, type WeighedOut } from './weigh-out.ts';

/** A stated density further than this from the one of A, B and the ratio means that one of the four numbers is wrong. */
const DENSITY_TOLERANCE: Fraction = 0.03;
/** An allowance over the coats' film by less than this is nothing that a depth gauge would show. */
const SAME_THICKNESS: Mm = 0.02;

/**
 * What should worry someone about the materials: densities that contradict each other or are missing, filler that sets before it is
 * mixed, fill too thin or too deep for the filler, more left free for the coat than it builds, and more mixes than can be listed.
 * @param fills  of every face, for the depth of each filled region
 */
export function materialWarnings(
  job: Job,
  fills: readonly FillMap[],
  need: FillerNeed,
  coat: CoatNeed,
): Warning[] {
  return [
    ...densityWarning('filler', job.filler),
    ...densityWarning('coat', job.coat),
    ...partMassWarning('filler', job.filler, need.volume),
    ...partMassWarning('coat', job.coat, coat.volume),
    ...mixTimeWarning(job, need),
    ...scaleWarning('filler', job.filler, need.selfMixing ? [] : need.batches),
    ...scaleWarning('coat', job.coat, coat.selfMixing ? [] : coat.perCoat.flatMap(({ mixes }) => mixes)),
    ...brushWarning(coat),
    ...hardWarning('filler', need.volume, need.hard),
    ...hardWarning('coat', coat.volume, coat.hard),
    ...buildWarnings(job.filler, fills),
    ...allowanceWarning(job.coat, fills),
    ...batchWarning(need),
  ];
}

function densityWarning(material: 'filler' | 'coat', mix: Mix): Warning[] {
  const mismatch = densityMismatch(mix);
  if (mismatch === null || Math.abs(mismatch) <= DENSITY_TOLERANCE) return [];
  const percent = (Math.abs(mismatch) * 100).toFixed(0);
  return [
    {
      code: `${material}-density`,
      field: `${material}.density`,
      text:
        `The stated density of the ${material}, ${perCm3(mix.density)}, is ${percent} % ${mismatch > 0 ? 'more' : 'less'} than ` +
        `A, B and the ratio give, ${perCm3(mixedDensity(mix))}. Masses follow A and B. Check the four numbers against the data sheet.`,
    },
  ];
}

/** Without the densities of A and B their masses can only be taken from the mix, which is true of neither. */
function partMassWarning(material: 'filler' | 'coat', mix: Mix, volume: Mm3): Warning[] {
  if (volume === 0 || densityMismatch(mix) !== null) return [];
  return [
    {
      code: `${material}-part-masses`,
      field: `${material}.densityA`,
      text:
        `The densities of A and B of the ${material} are not given, so their masses are worked out as if both had that of the mix, ` +
        `${perCm3(mix.density)}. Measure A and B out by volume, or enter both densities from the data sheet.`,
    },
  ];
}

/** A mix that sets while it is being mixed cannot be placed. */
function mixTimeWarning({ filler, surface }: Job, need: FillerNeed): Warning[] {
  if (filler.mixTime === null || need.volume === 0) return [];
  if (need.workingTime > filler.mixTime) return tightWarning(need, filler.mixTime);
  const warmth = surface ?? filler.workingTime.at;
  return [
    {
      code: 'mix-time',
      field: 'filler.mixTime',
      text:
        `The filler stays workable for ${minutes(need.workingTime)} at ${Number(warmth.toFixed(1))} degC and takes ${minutes(filler.mixTime)} to mix, ` +
        'so it sets before it is in place. Cool the part, or take a slower filler.',
    },
  ];
}

/** The mix is sized by the working time alone; where mixing takes its share of that, the last of it comes late. */
function tightWarning({ batches, workingTime }: FillerNeed, mixTime: Minute): Warning[] {
  const placing = Math.max(0, ...batches.map((batch) => batch.placing));
  const over = mixTime + placing - workingTime;
  if (over <= 0.05) return [];
  return [
    {
      code: 'mix-tight',
      field: 'repair.applicationRate',
      text:
        `Mixing takes ${minutes(mixTime)} and filling ${minutes(placing)} of the ${minutes(workingTime)} a mix stays workable: ` +
        `the last of each mix would go on ${minutes(over)} late. Enter a slower rate to get smaller mixes, or have someone else mix.`,
    },
  ];
}

function scaleWarning(
  material: 'filler' | 'coat',
  mix: Filler | Coat,
  mixes: readonly { readonly weigh: WeighedOut | null }[],
): Warning[] {
  const count = mixes.filter(({ weigh }) => weigh === null).length;
  if (count === 0 || densityMismatch(mix) === null) return [];
  return [
    {
      code: 'scale-too-coarse',
      field: `${material}.scaleStep`,
      text:
        `A scale that shows ${mix.scaleStep} g is too coarse for ${count === 1 ? 'one mix' : `${count} mixes`} of the ${material}: no weights that it can show ` +
        `keep the ratio within ${RATIO_LIMIT * 100} %. Measure A and B out by volume, or weigh on a finer scale.`,
    },
  ];
}

/** Without it the plan would seem to be done before anything may be touched. */
function hardWarning(material: 'filler' | 'coat', volume: Mm3, hard: Minute | null): Warning[] {
  if (volume === 0 || hard !== null) return [];
  return [
    {
      code: 'hard-unknown',
      field: `${material}.hard`,
      text: `When the ${material} is hard is not given, so the plan does not wait for it. Enter the time from the data sheet.`,
    },
  ];
}

/** A mix of coat that cannot be brushed out before it sets. */
function brushWarning({ perCoat, workingTime }: CoatNeed): Warning[] {
  const slowest = Math.max(0, ...perCoat.flatMap(({ mixes }) => mixes.map(({ placing }) => placing)));
  if (slowest <= workingTime * (1 + 1e-6)) return [];
  return [
    {
      code: 'coat-too-slow',
      field: 'plan.coatRate',
      text: `Brushing out a mix of coat takes ${minutes(slowest)} and it stays workable for ${minutes(workingTime)}. Check the rate and the working time.`,
    },
  ];
}

function buildWarnings(filler: Filler, fills: readonly FillMap[]): Warning[] {
  const filled = fills.flatMap(({ regions, allowance }) =>
    regions
      .filter((region) => region.action === 'fill' && region.deepest > allowance)
      .map((region) => ({ region, depth: region.deepest - allowance })),
  );
  const shallower = (limit: Mm) => filled.filter(({ depth }) => depth < limit).map(({ region }) => region);
  const thin = shallower(filler.leastBuild);
  const coarse = shallower(filler.largestGrain);
  const deepest = filled.reduce((most, { depth }) => Math.max(most, depth), 0);
  const warnings: Warning[] = [];
  if (thin.length > 0) {
    warnings.push({
      code: 'fill-too-thin',
      field: 'filler.leastBuild',
      text: `The filler needs ${mm(filler.leastBuild)} at least, and the fill is thinner at its deepest in ${listed(thin)}. Leave these to the coat, or undercut them.`,
    });
  }
  if (coarse.length > 0) {
    warnings.push({
      code: 'grain-too-coarse',
      field: 'filler.largestGrain',
      text: `The largest grain, ${mm(filler.largestGrain)}, is coarser than the fill is deep in ${listed(coarse)}. Use a finer filler there, or leave these to the coat.`,
    });
  }
  if (deepest > filler.mostBuild) {
    warnings.push({
      code: 'several-passes',
      field: 'filler.mostBuild',
      text: `The deepest fill is ${mm(deepest)} and the filler builds ${mm(filler.mostBuild)} in one pass. Fill in ${passesFor(deepest, filler.mostBuild)} passes.`,
    });
  }
  return warnings;
}

/** The coat adds its film and no more: what is left free beyond that stays low, and is in neither material. */
function allowanceWarning(coat: Coat, fills: readonly FillMap[]): Warning[] {
  const film = coat.coats * coat.dryFilm;
  const low = fills.filter(
    ({ regions, allowance }) =>
      allowance > film + SAME_THICKNESS && regions.some(({ action }) => action === 'fill'),
  );
  if (low.length === 0) return [];
  const allowance = Math.max(...low.map((fill) => fill.allowance));
  return [
    {
      code: 'allowance-too-thick',
      field: 'repair.coatAllowance',
      text: `The filler stops ${mm(allowance)} under the surface and the coats build ${mm(film)}: filled places stay ${mm(allowance - film)} low, and wear shallower than the allowance gets no filler. Make the two agree.`,
    },
  ];
}

function batchWarning(need: FillerNeed): Warning[] {
  const count = batchCount(need.volume, need.largestBatch);
  if (count <= MOST_BATCHES) return [];
  return [
    {
      code: 'too-many-batches',
      field: 'repair.applicationRate',
      text: `Filling would take ${count > 1e6 ? 'more than a million' : count} mixes; more than ${MOST_BATCHES} are not listed. Check the working time, its mass and the application rate.`,
    },
  ];
}

/** Names the first few regions and counts the rest: a face full of pits stays one sentence. */
function listed(regions: readonly Region[]): string {
  const named = regions.slice(0, 3).map(({ part, id }) => `${part}: ${id}`);
  const rest = regions.length - named.length;
  return named.join(', ') + (rest > 0 ? ` and ${rest} more` : '');
}

const perCm3 = (density: Density): string => `${(density * 1000).toFixed(2)} g/cm3`;
const minutes = (time: Minute): string => `${Number(time.toPrecision(time < 100 ? 2 : 3))} min`;
const mm = (length: Mm): string => `${Number(length.toFixed(2))} mm`;
