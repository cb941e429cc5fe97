import { type Mm, type Mm3, TURN } from '../units.ts';
import type { Part } from './part.ts';
import { overRow } from './vane-face.ts';
import type { VaneShape } from './vane-shape.ts';

/** Pieces a vane is added up in. */
const PIECES = 64;

/**
 * Volume of a part as new, from its own sizes: hub, shroud and vanes of an impeller; face times thickness of a plate. Fillets, keyways
 * and balance holes are not known: an estimate of the casting, within some per cent.
 */
export function solidVolume({ body, faces }: Part): Mm3 {
  if (body.kind === 'plate') {
    const [face] = faces;
    const slant = face.picture.kind === 'polar' ? face.picture.slant : 1;
    return face.area * slant * body.thickness;
  }
  const { hubRadius, boreRadius, hubHeight, outerRadius, shroudThickness } = body.shape;
  const hub = (TURN / 2) * (hubRadius ** 2 - boreRadius ** 2) * (hubHeight + shroudThickness);
  const shroud = (TURN / 2) * (outerRadius ** 2 - hubRadius ** 2) * shroudThickness;
  return hub + shroud + body.vanes.reduce((sum, vane) => sum + vaneVolume(vane), 0);
}

/** Across the thickness what bends out on one side bends in on the other. */
function vaneVolume(vane: VaneShape): Mm3 {
  let volume = 0;
  const noseEnd = vane.nose === 'round' ? vane.noseThickness / 2 : 0;
  const pieces = Array.from({ length: PIECES + 1 }, (_, i) => i / PIECES);
  // Closer together where the round begins and its width grows fastest.
  const nose = pieces.slice(0, -1).map((part) => noseEnd * (1 - Math.cos((TURN / 4) * part)));
  const ends = [...nose, ...pieces.map((part) => noseEnd + (vane.length - noseEnd) * part)];
  for (let i = 0; i + 1 < ends.length; i++) {
    if (ends[i + 1] <= ends[i]) continue;
    overRow(ends[i], ends[i + 1], (s, weight) => {
      volume += weight * 2 * vane.halfThickness(s) * vane.height(s);
    });
  }
  return volume;
}

/** z halfway between the lowest and the highest of a part: where its mass centre is taken to lie. */
export function middleOf({ body }: Part): Mm {
  if (body.kind === 'plate') return -body.thickness / 2;
  const { hubHeight, shroudThickness, vanes } = body.shape;
  return (Math.max(hubHeight, vanes.heightInlet, vanes.heightOutlet) - shroudThickness) / 2;
}
