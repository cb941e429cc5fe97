/** The generic filler, coat and repair that the material tests start from, in our own units. */
import type { Coat, Filler, Repair } from '../../../geometry/job/job.ts';

export const FILLER: Filler = {
  name: 'fine ceramic-filled paste',
  density: 2.3e-3,
  ratioByVolume: [2, 1],
  densityA: 2.4e-3,
  densityB: 2.1e-3,
  workingTime: { minutes: 20, at: 25, mass: 300 },
  activationEnergy: 55,
  mixTime: 2,
  leastBuild: 0.5,
  mostBuild: 10,
  largestGrain: 0.1,
  packs: [{ label: 'kit', mass: 1000, volume: null }],
};

export const COAT: Coat = {
  name: 'brushable ceramic',
  density: 1.7e-3,
  ratioByVolume: [2, 1],
  densityA: 1.75e-3,
  densityB: 1.6e-3,
  solidsByVolume: 1,
  dryFilm: 0.25,
  coats: 2,
  workingTime: { minutes: 25, at: 25 },
  activationEnergy: 55,
  profile: 0.075,
  packs: [{ label: 'cartridge', mass: null, volume: 400_000 }],
};

export const REPAIR: Repair = {
  leaveBelow: 1,
  coatAllowance: 0,
  allowanceFaces: ['*:face'],
  coatedFaces: ['*'],
  overbuild: 0,
  fillerWaste: 0.1,
  coatWaste: 0.2,
  applicationRate: 20_000,
  overrules: [],
  readingWorth: null,
};
