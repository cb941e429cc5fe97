import { type FacePoint, TURN, toRadians, wrapTurn } from '../units.ts';
import type { Correction, Rotor } from './job.ts';
import type { JobFile } from './job-file.ts';

export type RotorFile = NonNullable<JobFile['rotor']>;
export type CorrectionFile = NonNullable<RotorFile['corrections']>[number];

/** One standard deviation of the mixed density where the job gives none, %. From memory: common practice, hand mixing. */
const USUAL_DENSITY_ERROR = 2;

/** A rotor in our units: kg to g, deg to rad, g/cm3 to g/mm3, % to a share, diameters to radii; what was left out at its usual value. */
export function measuredRotor(file: RotorFile): Rotor {
  return {
    part: file.part,
    mass: file.mass === undefined ? null : file.mass * 1000,
    speed: file.speed,
    grade: file.grade,
    planes: file.planes === 2 ? 2 : 1,
    planeSpacing: file.planeSpacing ?? null,
    asFound:
      file.asFound === undefined
        ? { amount: 0, angle: 0 }
        : { amount: file.asFound.amount, angle: wrapTurn(toRadians(file.asFound.angle)) },
    densityError: (file.densityError ?? USUAL_DENSITY_ERROR) / 100,
    corrections: (file.corrections ?? []).map(measuredCorrection),
  };
}

function measuredCorrection(file: CorrectionFile): Correction {
  if (file.kind === 'holes') {
    const { face, at, diameter, depth } = file;
    // On the back the second number is the angle, on the rim the first.
    const point = ([first, second]: FacePoint): FacePoint =>
      face === 'shroud/back' ? [first, toRadians(second)] : [toRadians(first), second];
    return { kind: 'holes', face, at: at.map(point), radius: diameter / 2, depth };
  }
  const { first } = file;
  const second = sweep(file.second);
  if (file.kind === 'skim') return { kind: 'skim', face: file.face, first, second, depth: file.depth };
  return { kind: 'putty', face: file.face, first, second, height: file.height, density: file.density / 1000 };
}

/** Counter-clockwise from the first to the second, at most a turn: [350, 20] deg runs from 350 to 380. */
function sweep([from, to]: FacePoint): FacePoint {
  const start = toRadians(from);
  const span = to - from >= 360 ? 360 : (((to - from) % 360) + 360) % 360 || 360;
  return [start, span === 360 ? start + TURN : start + toRadians(span)];
}
