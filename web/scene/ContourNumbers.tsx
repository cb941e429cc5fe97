import { useRef } from 'react';
import { flatFrame } from '../../geometry/sheet/flat-frame.ts';
import { useView } from '../view/view-store.ts';
import type { LiveFace } from '../wear/live-faces.ts';
import { depthLabel } from './depth-label.ts';
import type { GridPlace } from './face-ring.ts';
import { useContours } from './use-contours.ts';
import { useOverlay, type Watch } from './use-overlay.ts';
import './contour-numbers.css';

interface ContourNumbersProps {
  readonly live: LiveFace;
  /** Depth the scale is made for, mm. */
  readonly most: number;
  /** px from the top left; null where it is hidden. */
  readonly pointOf: (live: LiveFace, place: GridPlace) => readonly [x: number, y: number] | null;
  readonly onView: Watch;
}

/** The depth of each contour line of a face, standing on its line wherever the line is seen. */
export function ContourNumbers({ live, most, pointOf, onView }: ContourNumbersProps) {
  const group = useRef<SVGGElement>(null);
  const contours = useContours(live, most);
  const units = useView((view) => view.units);
  const frame = flatFrame(live.face);
  // One a line: each asks the whole part whether it is hidden.
  const numbers = (contours?.lines ?? []).flatMap(({ depth, labels }) =>
    labels.slice(0, 1).map(({ x, y }) => ({ depth, place: frame.toGrid(x, y) })),
  );
  useOverlay(() => {
    const taken: (readonly [number, number])[] = [];
    // The deepest first: that is the one that is looked for.
    for (const [i, text] of [...(group.current?.children ?? [])].entries()) {
      const { place } = numbers[numbers.length - 1 - i];
      const point = pointOf(live, place);
      const isFree =
        point !== null && taken.every(([x, y]) => Math.hypot(x - point[0], y - point[1]) > APART);
      text.toggleAttribute('hidden', !isFree);
      if (!isFree) continue;
      taken.push(point);
      text.setAttribute('x', point[0].toFixed(1));
      text.setAttribute('y', point[1].toFixed(1));
    }
  }, [onView]);
  return (
    <g className="contour-numbers" ref={group}>
      {numbers.toReversed().map(({ depth }) => (
        <text key={depth}>{depthLabel(depth, units)}</text>
      ))}
    </g>
  );
}

/** Numbers nearer to each other than this, px, cannot be read. */
const APART = 30;
