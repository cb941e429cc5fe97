import { flatFrame } from '../../geometry/sheet/flat-frame.ts';
import type { LiveFace } from '../wear/live-faces.ts';
import type { GridPlace } from './face-ring.ts';
import type { FlatView } from './flat-view.ts';
import { linePath, type SeenPlace } from './surface-path.ts';

/** SVG path data of lines on a face as they lie on the flat picture; where an unrolled face is torn they are torn. */
export function flatSheetPath(
  { face }: LiveFace,
  view: FlatView,
  lines: readonly (readonly GridPlace[])[],
  isClosed: boolean,
): string {
  const frame = flatFrame(face);
  const { grid, picture } = face;
  const turn = grid.columns * grid.dv;
  const isTorn = grid.wraps && picture.kind === 'plane';
  return lines
    .map((line) => {
      const rounds = line.map(([, v]) => (isTorn ? Math.floor((v - grid.v0) / turn) : 0));
      const places = line.map(([u, v], i): SeenPlace => {
        const [x, y] = view.toScreen(frame.toFlat(u, v - rounds[i] * turn));
        return { x, y, faces: true };
      });
      const isWhole = rounds.every((round) => round === rounds[0]);
      if (isWhole) return linePath(places, isClosed);
      const pieces: SeenPlace[][] = [];
      places.forEach((place, i) => {
        if (i === 0 || rounds[i] !== rounds[i - 1]) pieces.push([]);
        pieces[pieces.length - 1].push(place);
      });
      return pieces.map((piece) => linePath(piece, false)).join('');
    })
    .join('');
}
