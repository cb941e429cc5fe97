/**
 * What holds when a job file leaves it out. The two materials are nobody's product: values such as data sheets of their kind
 * commonly show (common practice, no source), and their names say that they are to be replaced.
 */
import type { CoatFile, FillerFile, RepairFile } from './job-file.ts';

export const GENERIC_FILLER: FillerFile = {
  name: 'generic fine ceramic-filled putty - replace with your data sheet',
  density: 2.3,
  ratioByVolume: [2, 1],
  densityA: 2.4,
  densityB: 2.1,
  workingTime: { minutes: 20, at: 25, mass: 300 },
  activationEnergy: 55,
  mixTime: 2,
  firmsUp: { from: 30, to: 45, at: 25 },
  hard: { minutes: 480, at: 25 },
  leastBuild: 0.5,
  mostBuild: 10,
  largestGrain: 0.1,
  packs: [{ label: 'kit', mass: 1000 }],
  scaleStep: 1,
};

export const GENERIC_COAT: CoatFile = {
  name: 'generic brushable ceramic coat - replace with your data sheet',
  density: 1.7,
  ratioByVolume: [2, 1],
  densityA: 1.75,
  densityB: 1.6,
  solidsByVolume: 100,
  dryFilm: 250,
  coats: 2,
  workingTime: { minutes: 25, at: 25 },
  overcoat: { from: 60, to: 240, at: 25 },
  hard: { minutes: 960, at: 25 },
  activationEnergy: 55,
  profile: 75,
  packs: [{ label: 'cartridge', volume: 400 }],
  scaleStep: 1,
};

/** One standard deviation of a depth gauge held over a blasted surface, mm (common practice, no source). */
export const USUAL_GAUGE_ERROR = 0.1;

/** A repair with nothing left open, in the file's units. */
export type WholeRepair = {
  readonly [K in keyof Omit<RepairFile, 'readingWorth'>]-?: NonNullable<RepairFile[K]>;
};

export const USUAL_REPAIR: WholeRepair = {
  leaveBelow: 1,
  coatAllowance: 0,
  allowanceFaces: ['*:face', '*:vane-*/tip'],
  coatedFaces: ['*:*'],
  overbuild: 0,
  fillerWaste: 10,
  coatWaste: 20,
  applicationRate: 20,
  overrule: [],
};

/** Of a kitchen scale, g. */
export const USUAL_SCALE_STEP = 1;

/** What one fitter brushes, cm2/min (from memory, no source). */
export const USUAL_COAT_RATE = 400;

/**
 * Work of the hands, min: what a bench takes that does it now and then (from memory, no source; every shop enters its own).
 * wash to wipe and dressing hard edges are for one part, dress for one mix.
 */
export const USUAL_STEP_TIMES = {
  wash: 20,
  blast: 30,
  blowDown: 5,
  wipe: 5,
  flashOff: 10,
  dress: 8,
  touchTest: 2,
  dressHard: 15,
  check: 20,
  assemble: 60,
  test: 30,
};

/** Of both materials, kJ/mol, where the file gives none (sources: tests/geometry/material/minutes-at.test.ts). */
export const USUAL_ACTIVATION_ENERGY = 55;

/** `given` with the usual value wherever it leaves a field out. */
export function wholeRepair(given: RepairFile | undefined): WholeRepair {
  return {
    leaveBelow: given?.leaveBelow ?? USUAL_REPAIR.leaveBelow,
    coatAllowance: given?.coatAllowance ?? USUAL_REPAIR.coatAllowance,
    allowanceFaces: given?.allowanceFaces ?? USUAL_REPAIR.allowanceFaces,
    coatedFaces: given?.coatedFaces ?? USUAL_REPAIR.coatedFaces,
    overbuild: given?.overbuild ?? USUAL_REPAIR.overbuild,
    fillerWaste: given?.fillerWaste ?? USUAL_REPAIR.fillerWaste,
    coatWaste: given?.coatWaste ?? USUAL_REPAIR.coatWaste,
    applicationRate: given?.applicationRate ?? USUAL_REPAIR.applicationRate,
    overrule: given?.overrule ?? USUAL_REPAIR.overrule,
  };
}
