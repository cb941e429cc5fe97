import type { Coordinate, Face } from '../part/face.ts';
import { type Mm, TURN, toDegrees } from '../units.ts';
import type { FlatFrame } from './flat-frame.ts';
import type { FlatMark } from './flat-svg.ts';

/**
 * The words round the picture of a face that say how it lies: the reference mark and every quarter turn, or both ends of x and y.
 * @param away  mm that they stand off the face
 */
export function bearingsOf(face: Face, frame: FlatFrame, away: Mm): FlatMark[] {
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
  const beside = ({ label }: Coordinate, to: Mm): Mm =>
    x - away - 0.006 * Math.max(width, height) * `${label} ${Math.round(to)}`.length;
  return [
    { at: [x, y + height + away], text: lengthText(right, right.from) },
    { at: [x + width, y + height + away], text: lengthText(right, right.to) },
    { at: [beside(up, up.from), y + height], text: lengthText(up, up.from) },
    { at: [beside(up, up.to), y], text: lengthText(up, up.to) },
  ];
}

const quarters = ({ from }: Coordinate): number[] =>
  [0, 1, 2, 3].map((quarter) => from + (quarter * TURN) / 4);
const degreesText = (angle: number): string => `${Math.round(toDegrees(angle))}°`;
const lengthText = ({ label }: Coordinate, length: Mm): string => `${label} ${Math.round(length)}`;
