import { angleCoordinate, hasFace } from '../../../geometry/job/face-names.ts';
import type { ImpellerFile, PartFile, WearPlateFile } from '../../../geometry/job/job-file.ts';
import { measuredImpeller } from '../../../geometry/job/measured-impeller.ts';
import { camberLine } from '../../../geometry/part/camber.ts';
import { formatQuantity } from '../../fields/format-quantity.ts';
import { type Quantity, type ScreenUnits, shownUnit } from '../../fields/quantity-units.ts';
import { firstFace } from '../chosen-part.ts';

/** One of the two numbers that place a point on a face, as the person reads it. */
export interface FaceNumber {
  readonly label: string;
  readonly quantity: Quantity;
}

/** What the two numbers of a face are. */
export function faceNumbers(part: PartFile, face: string): readonly [FaceNumber, FaceNumber] {
  const angle: FaceNumber = { label: 'angle', quantity: 'angle' };
  const length = (label: string): FaceNumber => ({ label, quantity: 'length' });
  switch (angleCoordinate(part, face)) {
    case 0:
      return [angle, length('below the face')];
    case 1:
      return [length('radius'), angle];
    default:
      if (part.kind === 'wear-plate') return [length('x'), length('y')];
      if (isEdge(face)) return [length('height'), length('across')];
      return [length('along'), length(face.endsWith('/tip') ? 'across' : 'height')];
  }
}

/** True for the leading and the trailing edge of a vane. */
const isEdge = (face: string): boolean => face.endsWith('-edge');

/** True for the faces that an edge mark may eat back: the edges and the tip of a vane. */
export function isEdgeOrTip(face: string): boolean {
  return face.startsWith('vane-') && (isEdge(face) || face.endsWith('/tip'));
}

/** The faces of a plate that can be marked. */
export function plateFaces(
  plate: WearPlateFile,
): readonly { readonly value: string; readonly label: string }[] {
  const face = { value: 'face', label: 'Face' };
  return plate.outline === undefined ? [face, { value: 'bore', label: 'Bore' }] : [face];
}

/** The face that is in hand: the chosen one, or the part's first where it has no such face. */
export function faceInUse(part: PartFile, chosen: string): string {
  return hasFace(part, chosen) && !chosen.includes('*') ? chosen : firstFace(part);
}

type Range = readonly [from: number, to: number];
type Ranges = readonly [first: Range, second: Range];

/** Where the two numbers of a face run from and to, in the file's units. */
export function faceRanges(part: PartFile, face: string): Ranges {
  if (part.kind === 'impeller') return impellerRanges(part, face);
  if (part.outline !== undefined) {
    const ends = (i: 0 | 1): Range => {
      const values = part.outline?.edge.map((corner) => corner[i]) ?? [0];
      return [Math.min(...values), Math.max(...values)];
    };
    return [ends(0), ends(1)];
  }
  if (face === 'bore')
    return [
      [0, 360],
      [0, part.thickness],
    ];
  return [
    [(part.boreDiameter ?? 0) / 2, (part.outerDiameter ?? 0) / 2],
    [0, 360],
  ];
}

function impellerRanges(impeller: ImpellerFile, face: string): Ranges {
  const { vanes, hubDiameter, outerDiameter } = impeller;
  if (face.startsWith('shroud/'))
    return [
      [hubDiameter / 2, outerDiameter / 2],
      [0, 360],
    ];
  const across = (thickness: number): Range => [-thickness / 2, thickness / 2];
  if (face.endsWith('/leading-edge')) return [[0, vanes.heightInlet], across(vanes.thicknessInlet)];
  if (face.endsWith('/trailing-edge')) return [[0, vanes.heightOutlet], across(vanes.thicknessOutlet)];
  const { vanes: own, outerRadius } = measuredImpeller(impeller, []);
  const along: Range = [0, camberLine(own, outerRadius).length];
  if (face.endsWith('/tip')) return [along, across(Math.max(vanes.thicknessInlet, vanes.thicknessOutlet))];
  return [along, [0, Math.max(vanes.heightInlet, vanes.heightOutlet)]];
}

/** A value with its unit as short as it can be read: `90 mm`, `20°`. */
export function valueText(value: number, quantity: Quantity, units: ScreenUnits): string {
  const { symbol } = shownUnit(quantity, units);
  return `${formatQuantity(value, quantity, units, { as: 'typed' })}${symbol === '°' ? '' : ' '}${symbol}`;
}

/** One of the two numbers of a place; an angle needs no name beside its sign. */
export function numberText({ label, quantity }: FaceNumber, value: number, units: ScreenUnits): string {
  return `${quantity === 'angle' ? '' : `${label} `}${valueText(value, quantity, units)}`;
}

/** A place found on a face, to the whole mm (or 0.05 in) and degree: `radius 118 mm, 40°`. */
export function placeText(
  part: PartFile,
  face: string,
  at: readonly [number, number],
  units: ScreenUnits,
): string {
  const step = (quantity: Quantity) => (quantity === 'length' && units === 'in' ? 25.4 / 20 : 1);
  return faceNumbers(part, face)
    .map((number, i) => {
      const size = step(number.quantity);
      return numberText(number, Math.round(at[i] / size) * size, units);
    })
    .join(', ');
}
