import type { Coat, Repair } from '../job/job.ts';
import type { Celsius, Density, Fraction, Gram, Minute, Mm, Mm2, Mm3 } from '../units.ts';
import { batchCount } from './batch.ts';
import { minutesAt, windowAt } from './minutes-at.ts';
import { mixedDensity, type Portion, portionsOf } from './mix.ts';
import { areSelfMixing, type PackCount, packsFor } from './pack.ts';
import { type WeighedOut, weighOut } from './weigh-out.ts';

/** A blast profile takes two thirds of its height in material. Common practice: 75 um takes 50 cm3/m2. */
const PROFILE_SHARE: Fraction = 2 / 3;

/** More mixes of one coat than anyone would make; then they are larger than the working time allows, and the estimate warns. */
const MOST_MIXES = 200;

export interface CoatDemand {
  /** Nominal area of the coated faces. */
  readonly area: Mm2;
  /** Wear that is left for the coat to fill. */
  readonly leftVolume: Mm3;
}

export interface CoatNeed {
  readonly area: Mm2;
  readonly leftVolume: Mm3;
  /** Films, left wear and profile, wet, all coats. */
  readonly netVolume: Mm3;
  /** With waste. */
  readonly volume: Mm3;
  readonly mass: Gram;
  /** Of the mix, from A, B and the ratio; the stated density when A and B are not given. */
  readonly density: Density;
  /** What to mix for each coat, waste included; adds up to `volume`. */
  readonly perCoat: readonly CoatLayer[];
  /** Wet film of one coat that dries to `dryFilm`. */
  readonly wetFilm: Mm;
  readonly partA: Portion;
  readonly partB: Portion;
  /** At the surface temperature. */
  readonly workingTime: Minute;
  /** When the next coat can go on, from the end of the last; null when the data sheet does not say. */
  readonly overcoat: { readonly from: Minute; readonly to: Minute } | null;
  readonly hard: Minute | null;
  /** Every pack to buy mixes itself: nothing to weigh. */
  readonly selfMixing: boolean;
  readonly packs: readonly PackCount[];
}

export interface CoatLayer {
  readonly number: number;
  readonly volume: Mm3;
  readonly partA: Portion;
  readonly partB: Portion;
  /** Equal mixes, each brushed out within the working time. */
  readonly mixes: readonly CoatMix[];
}

/** One mix of a coat. */
export interface CoatMix {
  readonly number: number;
  readonly volume: Mm3;
  readonly partA: Portion;
  readonly partB: Portion;
  /** How long it takes to brush out, mixing apart. */
  readonly placing: Minute;
  /** null when a cartridge mixes it, A or B has no density, or the scale is too coarse for so small a mix. */
  readonly weigh: WeighedOut | null;
}

/**
 * How much coat to mix and to buy: [coats x dry film x area + left wear + 2/3 profile x area] / solids, then waste on top.
 * The first coat fills the profile and the left wear, once; without a coat there is nothing to fill them with.
 * @param coatRate  what this person brushes, mm2/min: a mix is no larger than what the working time lets one brush
 * Source: film and solids by volume, ISO 3233 (what solids by volume means); tests/geometry/material/coat.test.ts
 */
export function coatNeed(
  demand: CoatDemand,
  coat: Coat,
  repair: Repair,
  surface: Celsius | null,
  coatRate: number,
): CoatNeed {
  const density = mixedDensity(coat);
  const film = (coat.dryFilm * demand.area) / coat.solidsByVolume;
  const once = (demand.leftVolume + PROFILE_SHARE * coat.profile * demand.area) / coat.solidsByVolume;
  const netVolume = coat.coats > 0 ? coat.coats * film + once : 0;
  const withWaste = 1 + repair.coatWaste;
  const volume = netVolume * withWaste;
  const { activationEnergy } = coat;
  const workingTime = minutesAt(coat.workingTime, activationEnergy, surface);
  const packs = packsFor(volume, coat.packs, density);
  const selfMixing = areSelfMixing(packs, coat.packs);
  const brushing = demand.area / coatRate;
  const perCoat = volume > 0 ? Array.from({ length: coat.coats }, (_, i) => layer(i)) : [];

  function layer(i: number): CoatLayer {
    const mixed = (i === 0 ? film + once : film) * withWaste;
    return { number: i + 1, volume: mixed, ...portionsOf(coat, mixed), mixes: mixesOf(mixed) };
  }

  function mixesOf(volume: Mm3): CoatMix[] {
    const count = Math.min(MOST_MIXES, batchCount(brushing, workingTime));
    const each = volume / count;
    const largest = (volume / brushing) * workingTime;
    return Array.from({ length: count }, (_, i) => ({
      number: i + 1,
      volume: each,
      ...portionsOf(coat, each),
      placing: brushing / count,
      weigh: selfMixing ? null : weighOut(coat, each, largest, coat.scaleStep),
    }));
  }

  return {
    area: demand.area,
    leftVolume: demand.leftVolume,
    netVolume,
    volume,
    mass: volume * density,
    density,
    perCoat,
    wetFilm: coat.dryFilm / coat.solidsByVolume,
    ...portionsOf(coat, volume),
    workingTime,
    overcoat: coat.overcoat && windowAt(coat.overcoat, activationEnergy, surface),
    hard: coat.hard && minutesAt(coat.hard, activationEnergy, surface),
    selfMixing,
    packs,
  };
}
