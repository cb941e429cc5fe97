import { angleCoordinate } from '../../../geometry/job/face-names.ts';
import type { PartFile, WearPlateFile } from '../../../geometry/job/job-file.ts';
import { formatQuantity } from '../../fields/format-quantity.ts';
import { type Quantity, type ScreenUnits, shownUnit } from '../../fields/quantity-units.ts';

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
      return part.kind === 'wear-plate' ? [length('x'), length('y')] : [length('along'), length('across')];
  }
}

/** The faces of a plate that can be marked. */
export function plateFaces(
  plate: WearPlateFile,
): readonly { readonly value: string; readonly label: string }[] {
  const face = { value: 'face', label: 'Face' };
  return plate.outline === undefined ? [face, { value: 'bore', label: 'Bore' }] : [face];
}

/** Where the two numbers of a face run from and to, in the file's units. */
export function faceRanges(
  plate: WearPlateFile,
  face: string,
): readonly [readonly [number, number], readonly [number, number]] {
  if (plate.outline !== undefined) {
    const ends = (i: 0 | 1): [number, number] => {
      const values = plate.outline?.edge.map((corner) => corner[i]) ?? [0];
      return [Math.min(...values), Math.max(...values)];
    };
    return [ends(0), ends(1)];
  }
  if (face === 'bore')
    return [
      [0, 360],
      [0, plate.thickness],
    ];
  return [
    [(plate.boreDiameter ?? 0) / 2, (plate.outerDiameter ?? 0) / 2],
    [0, 360],
  ];
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
