import type { Filler, Repair } from '../job/job.ts';
import type { Celsius, Density, Gram, Minute, Mm, Mm2, Mm3 } from '../units.ts';
import { type Batch, equalBatches } from './batch.ts';
import { minutesAt, windowAt } from './minutes-at.ts';
import { mixedDensity, type Portion, portionsOf } from './mix.ts';
import { areSelfMixing, type PackCount, packsFor } from './pack.ts';
import { type WeighedOut, weighOut } from './weigh-out.ts';

/** How filler is shared out along a face: equal-width bins along one coordinate with the fill volume in each. */
export interface FillRun {
  readonly part: string;
  readonly face: string;
  /** 1 = laid first; what a second layer needs stands in a run of its own, after all of the first. */
  readonly pass: number;
  /** The coordinate the bins run along; `closed` when it is an angle that runs the whole turn. */
  readonly along: 'first' | 'second';
  readonly closed: boolean;
  /** Bin i spans start + i step .. + step, mm or rad. */
  readonly start: number;
  readonly step: number;
  /** mm3 in each bin. */
  readonly volume: Float64Array;
  /** Extent of the fill along the other coordinate in each bin, NaN where the bin is empty. */
  readonly from: Float64Array;
  readonly to: Float64Array;
}

export interface FillDemand {
  readonly netVolume: Mm3;
  readonly filledArea: Mm2;
  readonly deepestFill: Mm;
  /** In the order passes, parts, faces. */
  readonly runs: readonly FillRun[];
}

/** A batch as it comes off the scale. */
export interface WeighedBatch extends Batch {
  /** How long it takes to fill and level, mixing apart. */
  readonly placing: Minute;
  /** null when a cartridge mixes it, A or B has no density, or the scale is too coarse for so small a mix. */
  readonly weigh: WeighedOut | null;
}

export interface FillerNeed {
  readonly netVolume: Mm3;
  /** With overbuild and waste. */
  readonly volume: Mm3;
  readonly mass: Gram;
  /** Of the mix, from A, B and the ratio; the stated density when A and B are not given. */
  readonly density: Density;
  readonly partA: Portion;
  readonly partB: Portion;
  readonly passes: number;
  /** At the surface temperature. */
  readonly workingTime: Minute;
  /** When a layer can be dressed, from its end on; null when the data sheet does not say. */
  readonly firmsUp: { readonly from: Minute; readonly to: Minute } | null;
  readonly hard: Minute | null;
  /** Every pack to buy mixes itself: nothing to weigh. */
  readonly selfMixing: boolean;
  /** The most to mix at once. */
  readonly largestBatch: Mm3;
  readonly batches: readonly WeighedBatch[];
  readonly packs: readonly PackCount[];
}

/** A fill as deep as a whole number of passes takes that many, float dust aside. */
const DUST = 1e-9;

/**
 * How much filler to mix and to buy, and in which batches:
 * volume = (net + overbuild x filled area) x (1 + waste), passes = ceil(deepest fill / most build).
 * The largest batch is what can be placed within the working time, and no more than the mass that time was quoted for:
 * a bigger mass heats itself and sets early.
 * @param surface  degC; null takes the times of the reference temperature
 * Source: tests/geometry/material/filler.test.ts
 */
export function fillerNeed(
  demand: FillDemand,
  filler: Filler,
  repair: Repair,
  surface: Celsius | null,
): FillerNeed {
  const density = mixedDensity(filler);
  const volume = (demand.netVolume + repair.overbuild * demand.filledArea) * (1 + repair.fillerWaste);
  const workingTime = minutesAt(filler.workingTime, filler.activationEnergy, surface);
  const placed = workingTime * repair.applicationRate;
  const { activationEnergy } = filler;
  const packs = packsFor(volume, filler.packs, density);
  const selfMixing = areSelfMixing(packs, filler.packs);
  const quotedMass = filler.workingTime.mass;
  const largestBatch = quotedMass === null ? placed : Math.min(placed, quotedMass / density);
  return {
    netVolume: demand.netVolume,
    volume,
    mass: volume * density,
    density,
    ...portionsOf(filler, volume),
    passes: volume > 0 ? passesFor(demand.deepestFill, filler.mostBuild) : 0,
    workingTime,
    largestBatch,
    firmsUp: filler.firmsUp && windowAt(filler.firmsUp, activationEnergy, surface),
    hard: filler.hard && minutesAt(filler.hard, activationEnergy, surface),
    selfMixing,
    batches: equalBatches(volume, largestBatch, workingTime, filler, demand.runs).map((batch) => ({
      ...batch,
      placing: batch.volume / repair.applicationRate,
      weigh: selfMixing ? null : weighOut(filler, batch.volume, largestBatch, filler.scaleStep),
    })),
    packs,
  };
}

/** In how many layers a depth is built when one layer can be `mostBuild` mm. */
export function passesFor(depth: Mm, mostBuild: Mm): number {
  return Math.ceil((depth / mostBuild) * (1 - DUST));
}
