/** The faces a part has and what the two coordinates of each are: the geometry definitions' table of faces. */
import type { PartFile } from './job-file.ts';
import type { Readable } from './readable.ts';

type Part = Readable<PartFile>;

const VANE_FACES = ['pressure', 'suction', 'tip', 'leading-edge', 'trailing-edge'];
const VANE_FACE = new RegExp(`^vane-(\\*|[1-9]\\d*)/(${VANE_FACES.join('|')})$`);
const SHROUD_FACES = ['shroud/front', 'shroud/back'];
const EVERY_VANE = 'vane-*/';

/** True when the part has the face; `vane-*` stands for every vane. A part whose kind is unknown has every face. */
export function hasFace(part: Part, face: string): boolean {
  if (part.kind === 'wear-plate') return face === 'face' || (face === 'bore' && isRound(part));
  if (part.kind !== 'impeller') return true;
  if (SHROUD_FACES.includes(face)) return part.shroudThickness !== 0;
  const vane = VANE_FACE.exec(face)?.[1];
  const vanes = part.vanes?.count;
  return vane !== undefined && (vane === '*' || typeof vanes !== 'number' || Number(vane) <= vanes);
}

/** True when a face named in the job, perhaps with `vane-*` for every vane, is this one. */
export function standsFor(named: string, face: string): boolean {
  if (!named.startsWith(EVERY_VANE)) return named === face;
  return VANE_FACE.test(face) && face.slice(face.indexOf('/') + 1) === named.slice(EVERY_VANE.length);
}

/** The faces there are, as a phrase for a message. */
export function faceChoices(part: Part): string {
  if (part.kind !== 'impeller')
    return isRound(part) ? '"face" or "bore"' : '"face", the one face of an outline plate';
  const vanes = part.vanes?.count;
  const numbers = typeof vanes === 'number' && vanes > 1 ? `vane-1 to vane-${vanes}` : 'vane-1';
  const shroud =
    part.shroudThickness === 0 ? '' : `${SHROUD_FACES.map((face) => `"${face}"`).join(', ')}, or `;
  return `${shroud}${numbers} (vane-* for all) with ${VANE_FACES.map((face) => `/${face}`).join(', ')}`;
}

/** Which of the face's coordinates is an angle, in degrees in the file. */
export function angleCoordinate(part: Part, face: string): 0 | 1 | null {
  if (part.kind === 'impeller') return SHROUD_FACES.includes(face) ? 1 : null;
  if (face === 'bore') return 0;
  return isRound(part) ? 1 : null;
}

/** Which of the face's coordinates is a radius, which cannot be below 0. */
export function radiusCoordinate(part: Part, face: string): 0 | null {
  return angleCoordinate(part, face) === 1 ? 0 : null;
}

/** True for the plate with a rim and a bore, false for the one given by an outline; unread, the diameters beside it tell. */
function isRound(part: Part): boolean {
  if (part.kind !== 'wear-plate' || part.outline === undefined) return true;
  return part.outline === null && part.outerDiameter !== undefined;
}
