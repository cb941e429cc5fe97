import { useEffect, useMemo, useRef, useState } from 'react';
import { toFacePoint, toGridPoint } from '../../geometry/part/face.ts';
import type { Vec3 } from '../../geometry/units.ts';
import { flatDistance } from '../tools/flat-distance.ts';
import { useView } from '../view/view-store.ts';
import { type LiveFace, type LivePart, useLivePart } from '../wear/live-faces.ts';
import { CompassLines } from './CompassLines.tsx';
import { ContourNumbers } from './ContourNumbers.tsx';
import { DimensionLines } from './DimensionLines.tsx';
import { SurfaceMarks } from './SurfaceMarks.tsx';
import type { GridPlace } from './face-ring.ts';
import { type DepthScale, useDepthScale } from './depth-scale.ts';
import { DepthScaleBar } from './DepthScaleBar.tsx';
import { drawnTimes } from './drawn-times.ts';
import { Exaggeration } from './Exaggeration.tsx';
import { HandLines } from './HandLines.tsx';
import { createHover } from './hover.ts';
import { PartCanvas } from './PartCanvas.tsx';
import { PointerDepth } from './PointerDepth.tsx';
import { partWords } from './part-words.ts';
import { pick, pickBeyond } from './pick.ts';
import { rendererKind } from './renderer-kind.ts';
import { seenAt, surfacePath } from './surface-path.ts';
import { type Picture, useHand } from './use-hand.ts';
import { ViewButtons } from './ViewButtons.tsx';
import { createViewport, type Viewport } from './viewport.ts';
import './part-view.css';

/** The chosen part in three dimensions, to be turned and marked. Fills its container. */
export function PartView({ className = '' }: { readonly className?: string }) {
  const live = useLivePart();
  const scale = useDepthScale(live);
  if (live === undefined) {
    return <p className="part-none quiet">This version draws wear plates; the job has none.</p>;
  }
  return (
    <div className={`part-view ${className}`}>
      {rendererKind() === 'none' ? <NoPicture /> : <PartPicture live={live} scale={scale} />}
    </div>
  );
}

function NoPicture() {
  return (
    <p className="part-none quiet">
      This device cannot draw in three dimensions. Everything else works: mark the wear on the flat picture or by typing.
    </p>
  );
}

function PartPicture({ live, scale }: { readonly live: LivePart; readonly scale: DepthScale }) {
  const area = useRef<HTMLDivElement>(null);
  const [viewport] = useState(createViewport);
  const [hover] = useState(createHover);
  const wanted = useView((view) => view.exaggeration);
  const units = useView((view) => view.units);
  const times = drawnTimes(wanted, scale.deepest, live.part.body.thickness);
  const picture = usePicture(live, viewport, times, scale);
  useHand(area, picture, hover);
  useSize(area, viewport);
  useEffect(() => viewport.show(...bounds(live)), [viewport, live]);
  useKeys(area, viewport);
  const pathOf = (on: LiveFace, lines: readonly (readonly GridPlace[])[], isClosed: boolean) =>
    surfacePath(viewport.sight(), on, times, lines, isClosed);
  return (
    <>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: keys turn the part and come nearer */}
      <div className="part-area" ref={area} role="application" aria-label={partWords(live, scale, units)} tabIndex={0}>
        <PartCanvas live={live} viewport={viewport} times={times} scale={scale} />
        <svg className="part-lines" aria-hidden="true">
          <CompassLines part={live.part} viewport={viewport} />
          <SurfaceMarks live={live} pathOf={pathOf} onView={viewport.onChange} />
          {live.faces.map((face) => (
            <ContourNumbers
              key={face.face.name}
              live={face}
              most={scale.most}
              pointOf={(on, place) => openPoint(viewport, picture, on, times, place)}
              onView={viewport.onChange}
            />
          ))}
          <DimensionLines live={live} viewport={viewport} />
          <HandLines
            hover={hover}
            pathOf={pathOf}
            pointOf={(on, place) => facingPoint(viewport, on, times, place)}
            onView={viewport.onChange}
          />
        </svg>
        <PointerDepth hover={hover} />
      </div>
      <ViewButtons go={viewport.go} />
      {scale.deepest > 0 && (
        <div className="part-foot">
          <DepthScaleBar scale={scale} />
          <Exaggeration times={times} wanted={wanted} />
        </div>
      )}
    </>
  );
}

function usePicture(live: LivePart, viewport: Viewport, times: number, scale: DepthScale): Picture {
  return useMemo((): Picture => {
    const deepest = Math.max(scale.deepest, scale.to) * 1.5;
    return {
      placeAt(x, y) {
        const hit = pick(live, viewport.sight().ray(x, y), { times, deepest });
        return hit && { live: hit.live, place: [hit.u, hit.v] };
      },
      placeBeyond(face, x, y) {
        const point = pickBeyond(face, viewport.sight().ray(x, y));
        return point && toGridPoint(face.face, point);
      },
      turn: viewport.turn,
      slide: viewport.slide,
      zoom: viewport.zoom,
      mmAPixel: () => 1 / viewport.sight().scale,
    };
  }, [live, viewport, times, scale]);
}

type Point = readonly [x: number, y: number];

/** Where a place is seen when its side faces the eye. */
function facingPoint(viewport: Viewport, live: LiveFace, times: number, place: GridPlace): Point | null {
  const { x, y, faces } = seenAt(viewport.sight(), live, times, place);
  return faces ? [x, y] : null;
}

/** mm; a number stands where the pointer would find this face, this near to its place. */
const SAME_PLACE = 4;

/** The same where nothing stands before it. */
function openPoint(viewport: Viewport, picture: Picture, live: LiveFace, times: number, place: GridPlace): Point | null {
  const point = facingPoint(viewport, live, times, place);
  const seen = point && picture.placeAt(...point);
  if (seen === null || seen.live.face !== live.face) return null;
  const apart = flatDistance(live.face, toFacePoint(live.face, ...place), toFacePoint(live.face, ...seen.place));
  return apart < SAME_PLACE ? point : null;
}

/** Middle and radius of a ball about the part. */
function bounds({ part: { body } }: LivePart): [middle: Vec3, radius: number] {
  const points = body.loops
    .filter(({ role }) => role === 'edge')
    .flatMap((loop) => {
      if (loop.kind === 'polygon') return loop.corners;
      const [x, y] = loop.centre;
      return [[x - loop.radius, y - loop.radius], [x + loop.radius, y + loop.radius]] as const;
    });
  const [x0, x1] = [Math.min(...points.map(([x]) => x)), Math.max(...points.map(([x]) => x))];
  const [y0, y1] = [Math.min(...points.map(([, y]) => y)), Math.max(...points.map(([, y]) => y))];
  const round = body.loops.every(({ kind, role }) => kind === 'circle' || role !== 'edge');
  const across = round ? Math.max(x1 - x0, y1 - y0) : Math.hypot(x1 - x0, y1 - y0);
  return [[(x0 + x1) / 2, (y0 + y1) / 2, -body.thickness / 2], Math.hypot(across, body.thickness) / 2];
}

function useSize(area: React.RefObject<HTMLElement | null>, viewport: Viewport): void {
  useEffect(() => {
    const element = area.current;
    if (element === null) return;
    const measure = () => {
      const { width, height } = element.getBoundingClientRect();
      if (width > 0 && height > 0) viewport.resize({ width, height });
    };
    measure();
    const watch = new ResizeObserver(measure);
    watch.observe(element);
    return () => watch.disconnect();
  }, [area, viewport]);
}

/** px a press of an arrow stands for. */
const ARROW = 24;
const CLOSER = 1.15;

function useKeys(area: React.RefObject<HTMLElement | null>, viewport: Viewport): void {
  useEffect(() => {
    const element = area.current;
    if (element === null) return;
    const onKey = (event: KeyboardEvent) => {
      if (event.ctrlKey || event.metaKey || event.altKey) return;
      const { width, height } = viewport.screen();
      const nearer = (factor: number) => viewport.zoom(factor, width / 2, height / 2);
      const keys: Readonly<Record<string, () => void>> = {
        ArrowLeft: () => viewport.turn(-ARROW, 0),
        ArrowRight: () => viewport.turn(ARROW, 0),
        ArrowUp: () => viewport.turn(0, -ARROW),
        ArrowDown: () => viewport.turn(0, ARROW),
        Home: () => viewport.go('angled'),
        '+': () => nearer(CLOSER),
        '=': () => nearer(CLOSER),
        '-': () => nearer(1 / CLOSER),
      };
      const action = keys[event.key];
      if (action === undefined) return;
      event.preventDefault();
      action();
    };
    element.addEventListener('keydown', onKey);
    return () => element.removeEventListener('keydown', onKey);
  }, [area, viewport]);
}
