import { type Mm, toRadians } from '../units.ts';
import type { ImpellerFile, PartFile } from './job-file.ts';
import type { Readable } from './readable.ts';

/** The most metal there is behind a face as new, and the field that says so; null when it could not be read or has no one size. */
export function wallBehind(
  part: Readable<PartFile>,
  face: string,
): { readonly size: Mm; readonly words: string } | null {
  if (part.kind === 'wear-plate') {
    if (face === 'face') return wall(part.thickness, 'thickness');
    const { outerDiameter: outer, boreDiameter: bore } = part;
    if (outer == null || bore == null || bore >= outer) return null;
    return {
      size: (outer - bore) / 2,
      words: `${(outer - bore) / 2} between boreDiameter and outerDiameter`,
    };
  }
  if (part.kind !== 'impeller') return null;
  if (face.startsWith('shroud/')) return wall(part.shroudThickness, 'shroudThickness');
  const { vanes } = part;
  if (vanes == null) return null;
  if (face.endsWith('-edge')) return vaneLength(part);
  if (face.endsWith('/tip')) return larger(vanes, 'heightInlet', 'heightOutlet');
  if (face.endsWith('/pressure') || face.endsWith('/suction'))
    return larger(vanes, 'thicknessInlet', 'thicknessOutlet');
  return null;
}

/** No camber between two blade angles is longer than one that keeps to the flatter of them. */
function vaneLength({ outerDiameter, vanes }: Readable<ImpellerFile>) {
  const { inletDiameter, inletAngle, outletAngle } = vanes ?? {};
  if (outerDiameter == null || inletDiameter == null || inletAngle == null || outletAngle == null)
    return null;
  const flatter = toRadians(Math.min(inletAngle, outletAngle));
  const size = Math.max(0, (outerDiameter - inletDiameter) / 2) / Math.sin(flatter);
  return { size, words: `the length of a vane, ${size.toFixed(1)} at most` };
}

function wall(size: Mm | null | undefined, name: string) {
  return size == null ? null : { size, words: `${name} ${size}` };
}

function larger<Name extends string>(sizes: { readonly [K in Name]?: Mm | null }, inlet: Name, outlet: Name) {
  const [atInlet, atOutlet] = [sizes[inlet], sizes[outlet]];
  if (atInlet == null || atOutlet == null) return null;
  return atInlet > atOutlet ? wall(atInlet, inlet) : wall(atOutlet, outlet);
}
