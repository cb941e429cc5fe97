import type { Face } from '../../geometry/part/face.ts';
import type { FaceMesh } from '../../geometry/part/face-mesh.ts';
import type { ImpellerBody, Part } from '../../geometry/part/part.ts';
import type { VaneShape } from '../../geometry/part/vane-shape.ts';
import { vaneStations } from '../../geometry/part/vane-stations.ts';
import { type Fraction, type Mm, TURN } from '../../geometry/units.ts';

/** Share of the light at the foot of a vane, and how far off, in heights of the vane, all of it is back. */
const FOOT: Fraction = 0.68;
const REACH = 1.1;

/** How much of the light about reaches each vertex of a face: all of it, but for the front of a shroud, which the vanes stand round. */
export function openShares({ body }: Part, face: Face, { position }: FaceMesh): Float32Array {
  const shares = new Float32Array(position.length / 3).fill(1);
  if (body.kind !== 'impeller' || face.name !== 'shroud/front') return shares;
  const between = shadeBetween(body);
  for (let i = 0; i < shares.length; i++) shares[i] = between(position[i * 3], position[i * 3 + 1]);
  return shares;
}

/** Samples each way over one pitch of the vanes: the shade is soft. */
const FINE = 48;

/** The vanes stand evenly: the shade of one pitch is that of all. */
function shadeBetween({ shape, vanes }: ImpellerBody): (x: Mm, y: Mm) => Fraction {
  const { hubRadius, outerRadius } = shape;
  const pitch = TURN / vanes.length;
  const step = (outerRadius - hubRadius) / (FINE - 1);
  const sides = vanes.flatMap(sidePoints);
  const table = new Float32Array(FINE * FINE);
  for (let i = 0; i < FINE; i++) {
    const r = hubRadius + i * step;
    for (let k = 0; k < FINE; k++) {
      const angle = vanes[0].angle + (k * pitch) / FINE;
      table[i * FINE + k] = shadeAt(sides, r * Math.cos(angle), r * Math.sin(angle));
    }
  }
  return (x, y) => {
    const row = Math.min(FINE - 1.001, Math.max(0, (Math.hypot(x, y) - hubRadius) / step));
    const turned = (((Math.atan2(y, x) - vanes[0].angle) / pitch) % 1) + 1;
    const column = (turned % 1) * FINE;
    const [i, k] = [Math.floor(row), Math.floor(column)];
    const at = (a: number, b: number) => table[(i + a) * FINE + ((k + b) % FINE)];
    const [fr, fc] = [row - i, column - k];
    return (1 - fr) * ((1 - fc) * at(0, 0) + fc * at(0, 1)) + fr * ((1 - fc) * at(1, 0) + fc * at(1, 1));
  };
}

interface SidePoint {
  readonly x: Mm;
  readonly y: Mm;
  readonly height: Mm;
}

function sidePoints(vane: VaneShape): readonly SidePoint[] {
  return vaneStations(vane)
    .along.filter((_, i) => i % 4 === 0)
    .flatMap(({ x, y, nx, ny, half, height }) =>
      [1, -1].map((side) => ({ x: x + side * half * nx, y: y + side * half * ny, height })),
    );
}

function shadeAt(sides: readonly SidePoint[], x: Mm, y: Mm): Fraction {
  let least = 1;
  for (const side of sides) {
    const off = Math.hypot(side.x - x, side.y - y) / (REACH * side.height);
    if (off < least) least = off;
  }
  const back = least * (2 - least);
  return FOOT + (1 - FOOT) * back;
}
