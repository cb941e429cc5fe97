/** Impellers on a rotor, made to order: worn, filled and weighed as the estimate does it, one worn face at a time. */
import type { BalanceInput } from '../../../geometry/balance/balance.ts';
import type { Shroud } from '../../../geometry/balance/shroud.ts';
import { replay } from '../../../geometry/depth/replay.ts';
import { decideFill } from '../../../geometry/fill/fill-map.ts';
import type { Impeller, Mark, Rotor } from '../../../geometry/job/job.ts';
import { added, lostMetal, metalOf } from '../../../geometry/moments/integrate.ts';
import { impeller } from '../../../geometry/part/impeller.ts';
import type { Metal } from '../../../geometry/part/metal.ts';
import { toRadians } from '../../../geometry/units.ts';
import { job, madeImpeller } from '../made.ts';

/** 14.2 kg at 1450 r/min, G 6.3: 589.159 g.mm are permitted. */
export const ROTOR: Rotor = {
  part: 'impeller',
  mass: 14_200,
  speed: 1450,
  grade: 6.3,
  planes: 1,
  planeSpacing: null,
  asFound: { amount: 0, angle: 0 },
  densityError: 0.02,
  corrections: [],
};

/** Coarse enough to be quick; fine enough for holes to 1 %. mm */
const CELL = 1;

export interface Made {
  readonly shape?: Impeller;
  readonly marks?: readonly Mark[];
  readonly rotor?: Partial<Rotor>;
  readonly leaveBelow?: number;
  readonly cell?: number;
}

/** A worn impeller as `balance` takes it. Corners are not sorted out: wear one face of a kind. */
export function rotorInput(made: Made = {}): BalanceInput {
  const { shape = madeImpeller({}, { leastThickness: 4 }), marks = [], leaveBelow = 0.1, cell = CELL } = made;
  const part = impeller(shape, cell);
  const { repair } = job([], {}, { leaveBelow });
  const faces = part.faces.map((face) => {
    const map = replay(face, marks);
    const fill = decideFill(part.id, face, map, repair);
    return { face, map, fill };
  });
  const named = (name: string) => faces.find(({ face }) => face.name === name);
  const [back, front] = [named('shroud/back'), named('shroud/front')];
  if (part.body.kind !== 'impeller') throw new Error('made: needs an impeller');
  return {
    rotor: { ...ROTOR, ...made.rotor },
    mass: made.rotor?.mass ?? 14_200,
    isMassEstimated: false,
    middle: 10,
    outerRadius: shape.outerRadius,
    lost: added(faces.map(({ face, map }) => lostMetal(face, map))),
    filled: added(faces.map(({ face, map, fill }) => metalOf(face, map, fill, 'fill'))),
    left: added(faces.map(({ face, map, fill }) => metalOf(face, map, fill, 'leave'))),
    metalDensity: shape.density,
    fillerDensity: 2.3e-3,
    coatDensity: 1.7e-3,
    readError: 0,
    vanes: part.body.vanes,
    shroud:
      back && front && part.rim ? { back, front, rim: part.rim, leastThickness: shape.leastThickness } : null,
  };
}

const NOTHING: Metal = { volume: 0, x: 0, y: 0, z: 0, xz: 0, yz: 0 };

/** The same, its wear only standing in the way: nothing lost, nothing filled, and this much heavy in a direction, deg. */
export function heavyAt(input: BalanceInput, amount: number, degrees: number): BalanceInput {
  return {
    ...input,
    lost: NOTHING,
    filled: NOTHING,
    left: NOTHING,
    rotor: { ...input.rotor, asFound: { amount, angle: toRadians(degrees) } },
  };
}

/** Its shroud, which it must have. */
export function shroudOf({ shroud, vanes }: BalanceInput): Shroud {
  if (shroud === null) throw new Error('made: needs a shroud');
  return { ...shroud, vanes };
}
