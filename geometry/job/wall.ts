import type { Mm } from '../units.ts';
import type { PartFile } from './job-file.ts';
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
  if (face.endsWith('/tip')) return larger(vanes, 'heightInlet', 'heightOutlet');
  if (face.endsWith('/pressure') || face.endsWith('/suction'))
    return larger(vanes, 'thicknessInlet', 'thicknessOutlet');
  return null;
}

function wall(size: Mm | null | undefined, name: string) {
  return size == null ? null : { size, words: `${name} ${size}` };
}

function larger<Name extends string>(sizes: { readonly [K in Name]?: Mm | null }, inlet: Name, outlet: Name) {
  const [atInlet, atOutlet] = [sizes[inlet], sizes[outlet]];
  if (atInlet == null || atOutlet == null) return null;
  return atInlet > atOutlet ? wall(atInlet, inlet) : wall(atOutlet, outlet);
}
