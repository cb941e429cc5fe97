import { USUAL_ACTIVATION_ENERGY, USUAL_SCALE_STEP } from './defaults.ts';
import type { Coat, Filler, Pack } from './job.ts';
import type { CoatFile, FillerFile } from './job-file.ts';

/** A filler in our units: g/mm3, mm3. A build or grain the file leaves out sets no limit: 0. */
export function measuredFiller(filler: FillerFile): Filler {
  const { minutes, at, mass } = filler.workingTime;
  return {
    name: filler.name ?? 'filler without a name',
    density: filler.density / 1000,
    ratioByVolume: filler.ratioByVolume,
    densityA: perCubicMillimetre(filler.densityA),
    densityB: perCubicMillimetre(filler.densityB),
    workingTime: { minutes, at, mass: mass ?? null },
    activationEnergy: energy(filler.activationEnergy),
    mixTime: filler.mixTime ?? null,
    firmsUp: filler.firmsUp ?? null,
    hard: filler.hard ?? null,
    leastBuild: filler.leastBuild ?? 0,
    mostBuild: filler.mostBuild,
    largestGrain: filler.largestGrain ?? 0,
    packs: (filler.packs ?? []).map(measuredPack),
    scaleStep: filler.scaleStep ?? USUAL_SCALE_STEP,
    surfaceRange: measuredRange(filler.surfaceRange),
  };
}

/** A coat in our units: films and profile in mm, solids as a share. */
export function measuredCoat(coat: CoatFile): Coat {
  const { minutes, at } = coat.workingTime;
  return {
    name: coat.name ?? 'coat without a name',
    density: coat.density / 1000,
    ratioByVolume: coat.ratioByVolume,
    densityA: perCubicMillimetre(coat.densityA),
    densityB: perCubicMillimetre(coat.densityB),
    solidsByVolume: coat.solidsByVolume / 100,
    dryFilm: coat.dryFilm / 1000,
    coats: coat.coats,
    workingTime: { minutes, at },
    mixTime: coat.mixTime ?? null,
    overcoat: coat.overcoat ?? null,
    hard: coat.hard ?? null,
    activationEnergy: energy(coat.activationEnergy),
    profile: coat.profile / 1000,
    packs: (coat.packs ?? []).map(measuredPack),
    scaleStep: coat.scaleStep ?? USUAL_SCALE_STEP,
    surfaceRange: measuredRange(coat.surfaceRange),
  };
}

function perCubicMillimetre(density: number | undefined): number | null {
  return density === undefined ? null : density / 1000;
}

function measuredRange(range: FillerFile['surfaceRange']): Filler['surfaceRange'] {
  return range === undefined ? null : [range.from, range.to];
}

/** null is an answer of its own: the workshop rule. */
function energy(given: number | null | undefined): number | null {
  return given === undefined ? USUAL_ACTIVATION_ENERGY : given;
}

function measuredPack(pack: NonNullable<FillerFile['packs']>[number]): Pack {
  return {
    label: pack.label,
    mass: pack.mass ?? null,
    volume: pack.volume === undefined ? null : pack.volume * 1000,
    selfMixing: pack.selfMixing ?? false,
  };
}
