import { type Mm, type Rad, TURN, type Vec3 } from '../../../geometry/units.ts';
import type { Shown } from '../camera.ts';
import { beyondCut } from './cut.ts';
import type { Facing } from './facing.ts';

const POINTS = 32;
const HAIR: Mm = 0.001;

/**
 * What a view of both parts has to show, the plate as far off as it is pulled, about the shaft.
 * @param cut  angle of the cut; what it takes away need not be shown
 */
export function assemblyBounds(facing: Facing, apart: Mm, cut: Rad | null): Shown {
  const { plate, rotor, standOff } = facing;
  const rings: readonly (readonly [radius: Mm, z: Mm])[] = [
    [rotor.shape.outerRadius, -rotor.shape.shroudThickness],
    [plateRadius(facing), apart + standOff - facing.bendAt(plateRadius(facing))],
    [plateRadius(facing), apart + standOff + plate.thickness],
  ];
  const heights = rings.map(([, z]) => z);
  return {
    middle: [0, 0, (Math.min(...heights) + Math.max(...heights)) / 2],
    points: rings.flatMap(([radius, z]) =>
      Array.from({ length: POINTS }, (_, i): Vec3 => {
        const angle = (cut ?? 0) + (TURN * i) / POINTS;
        return [radius * Math.cos(angle), radius * Math.sin(angle), z];
      }).filter((point) => cut === null || beyondCut(cut, point) < HAIR),
    ),
  };
}

/** How far the plate reaches from the shaft, mm. */
export function plateRadius({ plate }: Facing): Mm {
  return Math.max(
    ...plate.loops.map((loop) =>
      loop.kind === 'circle'
        ? Math.hypot(...loop.centre) + loop.radius
        : Math.max(...loop.corners.map(([x, y]) => Math.hypot(x, y))),
    ),
  );
}
