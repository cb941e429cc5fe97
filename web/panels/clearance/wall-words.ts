import type { WallResult } from '../../../geometry/sheet/wall-result.ts';
import { wallWords } from '../../../geometry/sheet/wall-text.ts';
import { formatQuantity } from '../../fields/format-quantity.ts';
import { type ScreenUnits, shownUnit } from '../../fields/quantity-units.ts';
import { sentenceCase } from '../sentence-case.ts';

/** `12.60 mm`, or in inches. */
export function lengthText(size: number, units: ScreenUnits): string {
  return `${formatQuantity(size, 'length', units)} ${shownUnit('length', units).symbol}`;
}

/** A wall by the name it is chosen by: `Vane 2`, `Shroud`, `Face`. */
export const wallTitle = (wall: Pick<WallResult, 'face'>): string => sentenceCase(wallWords(wall));

/** What is left of a wall, and what to make of it. */
export function wallState({ verdict, remaining, asNew, limit }: WallResult, units: ScreenUnits): string {
  const length = (size: number) => lengthText(size, units);
  if (verdict === 'through') return 'worn through';
  const left = `${formatQuantity(remaining, 'length', units)} of ${length(asNew)} left`;
  if (verdict === 'no limit' || limit === null) return left;
  return verdict === 'under' ? `${left}, under the least of ${length(limit)}` : `${left}, sound`;
}

/** The walls of a part, what is worst first: worn through, then by how far over or under the limit. */
export function worstFirst(walls: readonly WallResult[]): WallResult[] {
  const over = ({ remaining, limit }: WallResult): number => remaining - (limit ?? 0);
  return walls.toSorted((a, b) => over(a) - over(b));
}

/** The wall a face is a side of; the worst where it is a side of none. */
export function wallOfFace(walls: readonly WallResult[], face: string): WallResult | undefined {
  return walls.find((wall) => wall.face === face || wall.behind === face) ?? worstFirst(walls)[0];
}
