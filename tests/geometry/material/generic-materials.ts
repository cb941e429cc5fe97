/** The generic filler, coat and repair that the material tests start from, in our own units. */
import { USUAL_STEP_TIMES } from '../../../geometry/job/defaults.ts';
import type { Coat, Filler, Job, Repair } from '../../../geometry/job/job.ts';

export const FILLER: Filler = {
  name: 'fine ceramic-filled paste',
  density: 2.3e-3,
  ratioByVolume: [2, 1],
  densityA: 2.4e-3,
  densityB: 2.1e-3,
  workingTime: { minutes: 20, at: 25, mass: 300 },
  activationEnergy: 55,
  mixTime: 2,
  firmsUp: { from: 30, to: 45, at: 25 },
  hard: { minutes: 480, at: 25 },
  leastBuild: 0.5,
  mostBuild: 10,
  largestGrain: 0.1,
  packs: [{ label: 'kit', mass: 1000, volume: null, selfMixing: false }],
  scaleStep: 1,
  surfaceRange: null,
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
  mixTime: null,
  overcoat: { from: 60, to: 240, at: 25 },
  hard: { minutes: 960, at: 25 },
  activationEnergy: 55,
  profile: 0.075,
  packs: [{ label: 'cartridge', mass: null, volume: 400_000, selfMixing: false }],
  scaleStep: 1,
  surfaceRange: null,
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

/** What a job holds that says nothing of the weather, the service or the day. */
export const NOTHING_PLANNED: Pick<Job, 'climate' | 'service' | 'plan' | 'log'> = {
  climate: null,
  service: null,
  plan: { start: null, shift: null, breaks: [], coatRate: 40_000, minutes: USUAL_STEP_TIMES },
  log: [],
};
