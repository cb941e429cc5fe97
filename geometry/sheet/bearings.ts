import type { Coordinate, Face } from '../part/face.ts';
import { type Mm, TURN, toDegrees } from '../units.ts';
import { widthOf } from './flat-drawing.ts';
import type { FlatFrame } from './flat-frame.ts';
import type { FlatMark } from './flat-marks.ts';

/**
 * The words round the picture of a face that say how it lies: the reference mark and every quarter turn, or both ends of x and y.
 * @param away  mm that they stand off the face
 * @param text  height of their letters, mm
 */
export function bearingsOf(face: Face, frame: FlatFrame, away: Mm, text: Mm): FlatMark[] {
  const { grid } = face;
  const columns = face.coordinates[face.columnsAre === 'first' ? 0 : 1];
  const rows = face.coordinates[face.columnsAre === 'first' ? 1 : 0];
  const uEnd = grid.u0 + grid.rows * grid.du;
  if (face.picture.kind === 'polar') {
    return quarters(columns).map((angle) => ({
      at: frame.toFlat(uEnd + away, angle),
      text: degreesText(angle),
    }));
  }
  const { x, y, width, height } = frame.box;
  if (columns.isAngle) {
    return [...quarters(columns), columns.to].map((angle) => ({
      at: [frame.toFlat(grid.u0, angle)[0], y - away],
      text: degreesText(angle),
    }));
  }
  // Sides and tips of vanes lie on their side: what runs along their rows runs to the right.
  const [right, up] = rows.label === 'along' ? [rows, columns] : [columns, rows];
  const half = (word: string): Mm => widthOf(word, text) / 2;
  const [start, end] = [lengthText(right, right.from), lengthText(right, right.to)];
  // Below a narrow face the two words part, so that neither lies on the other.
  const apart = Math.max(0, (half(start) + half(end) + text - width) / 2);
  const beside = (at: Mm, word: string): FlatMark => ({ at: [x - away - half(word), at], text: word });
  return [
    { at: [x - apart, y + height + away], text: start },
    { at: [x + width + apart, y + height + away], text: end },
    beside(y + height, lengthText(up, up.from)),
    beside(y, lengthText(up, up.to)),
  ];
}

const quarters = ({ from }: Coordinate): number[] =>
  [0, 1, 2, 3].map((quarter) => from + (quarter * TURN) / 4);
const degreesText = (angle: number): string => `${Math.round(toDegrees(angle))}°`;
const lengthText = ({ label }: Coordinate, length: Mm): string => `${label} ${Math.round(length)}`;
