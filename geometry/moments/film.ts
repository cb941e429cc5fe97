import type { Face, Moment, Polynomial } from '../part/face.ts';
import type { Mm } from '../units.ts';
import type { Metal } from './metal.ts';
import { upTo } from './row-sums.ts';

/** A film of even thickness on the nominal face, and where it sits: mm3, mm4, mm5. Exact: it is the metal at a depth below zero. */
export function filmOn(face: Face, thickness: Mm): Metal {
  const { rows, columns } = face.grid;
  const total = { volume: 0, x: 0, y: 0, z: 0, xz: 0, yz: 0 };
  for (let row = 0; row < rows; row++) {
    let [plain, first, second] = [0, 0, 0];
    for (let column = 0; column < columns; column++) {
      const share = face.cover === null ? 1 : face.cover[row * columns + column];
      plain += share;
      first += share * face.columnFirst[column];
      second += share * face.columnSecond[column];
    }
    const metal = face.metal(row);
    const layer = (p: Polynomial | null): number => (p === null ? 0 : -upTo(p, -thickness));
    const moment = (m: Moment): number =>
      layer(m.plain) * plain + layer(m.first) * first + layer(m.second) * second;
    total.volume += layer(metal.volume) * plain;
    total.x += moment(metal.x);
    total.y += moment(metal.y);
    total.z += moment(metal.z);
    total.xz += moment(metal.xz);
    total.yz += moment(metal.yz);
  }
  return total;
}
