import type { Face } from '../../geometry/part/face.ts';
import { vaneFaceOf } from '../../geometry/part/vane-mesh.ts';
import type { Fraction } from '../../geometry/units.ts';

/** A word beside the drawn picture of a face. */
export interface FlatEnd {
  readonly words: string;
  /** Where along the picture's box, shares to the right and down. */
  readonly across: Fraction;
  readonly down: Fraction;
  /** px away from there. */
  readonly offset: readonly [x: number, y: number];
  readonly anchor: 'start' | 'middle' | 'end';
}

/** px. */
const BESIDE = 10;
const BELOW = 18;

/** What a vane's face ends at: sides and tip lie with the leading edge on the left, edges stand with the tip on top. */
export function flatEnds(face: Face): readonly FlatEnd[] {
  const name = vaneFaceOf(face.name)?.name;
  if (name === undefined) return [];
  if (name === 'leading-edge' || name === 'trailing-edge') {
    return [
      { words: 'Tip', across: 0.5, down: 0, offset: [0, -BELOW], anchor: 'middle' },
      { words: 'Foot', across: 0.5, down: 1, offset: [0, BELOW], anchor: 'middle' },
      { words: 'Suction side', across: 0, down: 0.5, offset: [-BESIDE, 0], anchor: 'end' },
      { words: 'Pressure side', across: 1, down: 0.5, offset: [BESIDE, 0], anchor: 'start' },
    ];
  }
  const ends: readonly FlatEnd[] = [
    { words: 'Leading edge', across: 0, down: 1, offset: [0, BELOW], anchor: 'start' },
    { words: 'Trailing edge', across: 1, down: 1, offset: [0, BELOW], anchor: 'end' },
  ];
  if (name !== 'tip') return ends;
  return [
    ...ends,
    { words: 'Pressure side', across: 0.5, down: 0, offset: [0, -BELOW], anchor: 'middle' },
    { words: 'Suction side', across: 0.5, down: 1, offset: [0, BELOW], anchor: 'middle' },
  ];
}
