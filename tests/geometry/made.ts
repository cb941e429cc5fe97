/** Plates, jobs and marks made to order for the tests, in the engine's own units. */
import type {
  Impeller,
  Job,
  Mark,
  Patch,
  Pit,
  RoundPlate,
  Vanes,
  WearPlate,
} from '../../geometry/job/job.ts';
import type { Face } from '../../geometry/part/face.ts';
import { impeller } from '../../geometry/part/impeller.ts';
import { wearPlate } from '../../geometry/part/wear-plate.ts';
import { TURN, toRadians } from '../../geometry/units.ts';
import { COAT, FILLER, NOTHING_PLANNED } from './material/generic-materials.ts';

/** A usual plate: 320 / 120 mm, six holes of 14 mm on 290 mm. */
export const ROUND: RoundPlate = {
  kind: 'round',
  outerRadius: 160,
  boreRadius: 60,
  coneAngle: 0,
  holes: Array.from({ length: 6 }, (_, k) => ({
    x: 145 * Math.cos((TURN * k) / 6),
    y: 145 * Math.sin((TURN * k) / 6),
    radius: 7,
  })),
};

export function plate(shape: Partial<RoundPlate> = {}, marks: readonly Mark[] = []): WearPlate {
  return {
    id: 'plate',
    kind: 'wear-plate',
    density: 0.0072,
    shape: { ...ROUND, ...shape },
    thickness: 18,
    leastThickness: 10,
    marks,
    sections: [],
  };
}

/** One face of a round plate. */
export function faceOf(
  name: 'face' | 'bore',
  shape: Partial<RoundPlate> = {},
  cell: number | null = null,
): Face {
  const face = wearPlate(plate(shape), cell).faces.find((known) => known.name === name);
  if (!face) throw new Error(`no face ${name}`);
  return face;
}

/** A usual vane: 65 to 150 mm, 22 to 28 deg, 8 mm thick, level at 30 mm, square nose; turns counter-clockwise. */
export const VANES: Vanes = {
  count: 5,
  firstAngle: 0,
  inletRadius: 65,
  inletAngle: toRadians(22),
  outletAngle: toRadians(28),
  camber: 'linear',
  wrap: null,
  thicknessInlet: 8,
  thicknessOutlet: 8,
  heightInlet: 30,
  heightOutlet: 30,
  nose: 'square',
};

export function madeImpeller(
  vanes: Partial<Vanes> = {},
  shape: Partial<Impeller> = {},
  marks: readonly Mark[] = [],
): Impeller {
  return {
    id: 'impeller',
    kind: 'impeller',
    density: 0.0072,
    rotation: 'counter-clockwise',
    outerRadius: 150,
    hubRadius: 30,
    hubHeight: 30,
    boreRadius: 15,
    shroudThickness: 10,
    leastThickness: null,
    sections: [],
    ...shape,
    vanes: { ...VANES, ...vanes },
    marks,
  };
}

/** One face of an impeller; `shroud/rim` too. */
export function impellerFace(name: string, shape: Impeller, cell: number | null = null): Face {
  const { faces, rim } = impeller(shape, cell);
  const face = [...faces, rim].find((known) => known?.name === name);
  if (!face) throw new Error(`no face ${name}`);
  return face;
}

/** A whole face worn evenly, whatever its coordinates. */
export const evenly = (face: string, depth: number): Patch => ({
  kind: 'patch',
  face,
  blend: 'deepest',
  first: [-1000, 1000],
  second: face.startsWith('shroud/') ? [0, TURN] : [-1000, 1000],
  depth: [depth, depth],
});

/** A point on an annular face from radius and degrees. */
export const polar = (radius: number, degrees: number) => [radius, toRadians(degrees)] as const;

export function job(
  marks: readonly Mark[],
  shape: Partial<RoundPlate> = {},
  repair: Partial<Job['repair']> = {},
): Job {
  return {
    title: '',
    notes: '',
    parts: [plate(shape, marks)],
    filler: FILLER,
    coat: COAT,
    repair: {
      leaveBelow: 1,
      coatAllowance: 0,
      allowanceFaces: ['plate:face'],
      coatedFaces: ['*'],
      overbuild: 0,
      fillerWaste: 0.1,
      coatWaste: 0.2,
      applicationRate: 20_000,
      overrules: [],
      readingWorth: null,
      ...repair,
    },
    rotor: null,
    surface: null,
    clearance: null,
    flowTest: null,
    history: { hours: null, repairs: [] },
    unsupported: [],
    ...NOTHING_PLANNED,
  };
}

export const patch = (
  first: [number, number],
  degrees: [number, number],
  depth: number | [number, number],
): Patch => ({
  kind: 'patch',
  face: 'face',
  blend: 'deepest',
  first,
  second: [toRadians(degrees[0]), toRadians(degrees[1])],
  depth: typeof depth === 'number' ? [depth, depth] : depth,
});

export const pit = (
  radius: number,
  degrees: number,
  diameter: number,
  depth: number,
  form: 'cone' | 'bowl' | 'flat',
): Pit => ({
  kind: 'pit',
  face: 'face',
  blend: 'deepest',
  at: polar(radius, degrees),
  radius: diameter / 2,
  depth,
  form,
});
