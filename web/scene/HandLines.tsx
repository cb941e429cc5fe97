import { useRef } from 'react';
import { toGridPoint } from '../../geometry/part/face.ts';
import type { FacePoint } from '../../geometry/units.ts';
import { useView, viewStore } from '../view/view-store.ts';
import type { LiveFace } from '../wear/live-faces.ts';
import { divided, faceRing, type GridPlace } from './face-ring.ts';
import type { Hover } from './hover.ts';
import { draft, isMarking, onDraft } from './marking.ts';
import { useOverlay, type Watch } from './use-overlay.ts';
import './hand-lines.css';

interface HandLinesProps {
  readonly hover: Hover;
  /** SVG path data of lines along a face as this picture shows them. */
  readonly pathOf: (live: LiveFace, lines: readonly (readonly GridPlace[])[], isClosed: boolean) => string;
  /** px from the top left; null where it is not seen. */
  readonly pointOf: (live: LiveFace, place: GridPlace) => readonly [x: number, y: number] | null;
  readonly onView: Watch;
}

/** The ring of the brush at its true size, and what is being drawn and is no mark yet. */
export function HandLines({ hover, pathOf, pointOf, onView }: HandLinesProps) {
  const halo = useRef<SVGPathElement>(null);
  const ring = useRef<SVGPathElement>(null);
  const shape = useRef<SVGPathElement>(null);
  const corners = useRef<SVGPathElement>(null);
  // Another radius or tool is another ring.
  useView((view) => view.brush.radius);
  useView((view) => view.tool);
  useView((view) => view.step);
  useOverlay(() => {
    const path = ringPath(hover, pathOf);
    halo.current?.setAttribute('d', path);
    ring.current?.setAttribute('d', path);
    const { line, corners: set } = draftPaths(hover, pathOf, pointOf);
    shape.current?.setAttribute('d', line);
    corners.current?.setAttribute('d', set);
  }, [hover.onChange, onDraft, onView]);
  return (
    <g className="hand-lines">
      <path className="hand-halo" ref={halo} />
      <path className="hand-ring" ref={ring} />
      <path className="hand-shape" ref={shape} />
      <path className="hand-corners" ref={corners} />
    </g>
  );
}

function ringPath(hover: Hover, pathOf: HandLinesProps['pathOf']): string {
  const hovered = hover.now();
  const { tool, brush } = viewStore.getState();
  if (hovered === null || !isMarking() || (tool !== 'brush' && tool !== 'pit')) return '';
  const [u, v] = hovered.place;
  return pathOf(hovered.live, [faceRing(hovered.live.face, u, v, brush.radius)], true);
}

function draftPaths(
  hover: Hover,
  pathOf: HandLinesProps['pathOf'],
  pointOf: HandLinesProps['pointOf'],
): { readonly line: string; readonly corners: string } {
  const drawn = draft();
  if (drawn === null) return { line: '', corners: '' };
  const placesOf = (points: readonly FacePoint[]) =>
    points.map((point) => toGridPoint(drawn.live.face, point));
  if (drawn.kind === 'box') return { line: pathOf(drawn.live, drawn.lines.map(placesOf), true), corners: '' };
  if (drawn.kind === 'place') {
    return { line: '', corners: ringedDot(pointOf(drawn.live, toGridPoint(drawn.live.face, drawn.at))) };
  }
  const places = placesOf(drawn.corners);
  // The next side of an area follows the pointer.
  const hovered = hover.now();
  const next = hovered?.live.face === drawn.live.face ? [hovered.place] : [];
  return {
    line: pathOf(drawn.live, [divided(drawn.live.face, [...places, ...next])], false),
    corners: dots(places.map((place) => pointOf(drawn.live, place))),
  };
}

/** A square in a ring: where a gauge is to be held. */
function ringedDot(point: readonly [number, number] | null): string {
  if (point === null) return '';
  const [x, y] = point;
  return `${dots([point])}M${(x - RING).toFixed(1)} ${y.toFixed(1)}a${RING} ${RING} 0 1 0 ${2 * RING} 0a${RING} ${RING} 0 1 0 ${-2 * RING} 0Z`;
}

/** px */
const RING = 13;

/** Small squares about points. */
function dots(points: readonly (readonly [number, number] | null)[]): string {
  return points
    .map((point) =>
      point === null ? '' : `M${(point[0] - 4).toFixed(1)} ${(point[1] - 4).toFixed(1)}h8v8h-8Z`,
    )
    .join('');
}
