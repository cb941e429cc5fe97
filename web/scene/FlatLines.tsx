import { useId, useRef } from 'react';
import type { Face } from '../../geometry/part/face.ts';
import { flatFrame } from '../../geometry/sheet/flat-frame.ts';
import type { FlatOutline } from '../../geometry/sheet/flat-outline.ts';
import { toRadians } from '../../geometry/units.ts';
import type { LiveFace } from '../wear/live-faces.ts';
import type { FlatView } from './flat-view.ts';
import { isBrushDown, onDraft } from './marking.ts';
import { useContours } from './use-contours.ts';
import { useOverlay } from './use-overlay.ts';

interface FlatLinesProps {
  readonly live: LiveFace;
  readonly outline: FlatOutline;
  readonly view: FlatView;
  /** Depth the scale is made for, mm. */
  readonly most: number;
}

/** Edges and contour lines of the face. While a brush is down the lines are of yesterday and step back. */
export function FlatLines({ live, outline, view, most }: FlatLinesProps) {
  const drawn = useContours(live, most);
  const group = useRef<SVGGElement>(null);
  const contours = useRef<SVGPathElement>(null);
  useOverlay(() => {
    const { scale, x, y } = view.lay();
    group.current?.setAttribute('transform', `matrix(${scale} 0 0 ${scale} ${x} ${y})`);
    contours.current?.classList.toggle('flat-stale', isBrushDown());
  }, [view.onChange, onDraft]);
  const edges = [...outline.edges, ...outline.holes].join('');
  // Bands and lines run on past the edges of the face.
  const clip = useId();
  return (
    <g className="flat-lines" ref={group}>
      <clipPath id={clip}>
        <path d={edges} clipRule="evenodd" />
      </clipPath>
      <path
        className="flat-contours"
        ref={contours}
        clipPath={`url(#${clip})`}
        d={drawn?.lines.map(({ path }) => path).join('') ?? ''}
      />
      <path className="flat-edges" d={edges} />
    </g>
  );
}

/** The angles round a round face, or along the top of an unrolled bore. */
export function FlatAngles({ face, view }: { readonly face: Face; readonly view: FlatView }) {
  const ticks = useRef<SVGPathElement>(null);
  const numbers = useRef<SVGGElement>(null);
  const marks = angleMarks(face);
  useOverlay(() => {
    const path = marks.map(({ from, out }) => {
      const [x, y] = view.toScreen(from);
      return `M${(x + 4 * out[0]).toFixed(1)} ${(y + 4 * out[1]).toFixed(1)}l${(6 * out[0]).toFixed(1)} ${(6 * out[1]).toFixed(1)}`;
    });
    ticks.current?.setAttribute('d', path.join(''));
    const numbered = marks.filter(({ isNumbered }) => isNumbered);
    for (const [i, text] of [...(numbers.current?.children ?? [])].entries()) {
      const { from, out } = numbered[i];
      const [x, y] = view.toScreen(from);
      text.setAttribute('x', (x + 24 * out[0]).toFixed(1));
      text.setAttribute('y', (y + 20 * out[1]).toFixed(1));
    }
  }, [view.onChange]);
  return (
    <g className="flat-angles">
      <path ref={ticks} />
      <g ref={numbers}>
        {marks
          .filter(({ isNumbered }) => isNumbered)
          .map(({ degrees }) => (
            <text key={degrees}>{degrees}°</text>
          ))}
      </g>
    </g>
  );
}

interface AngleMark {
  readonly degrees: number;
  readonly isNumbered: boolean;
  readonly from: readonly [x: number, y: number];
  /** Away from the face. */
  readonly out: readonly [x: number, y: number];
}

function angleMarks(face: Face): readonly AngleMark[] {
  const { grid, picture, coordinates } = face;
  if (!coordinates.some(({ isAngle }) => isAngle)) return [];
  const frame = flatFrame(face);
  const polar = picture.kind === 'polar';
  const u = polar ? grid.u0 + grid.rows * grid.du : grid.u0;
  return Array.from({ length: polar ? 12 : 13 }, (_, i): AngleMark => {
    const degrees = i * 30;
    const v = toRadians(degrees);
    const out = polar ? ([Math.cos(v), -Math.sin(v)] as const) : ([0, -1] as const);
    return { degrees, isNumbered: degrees % (polar ? 90 : 30) === 0, from: frame.toFlat(u, v), out };
  });
}
