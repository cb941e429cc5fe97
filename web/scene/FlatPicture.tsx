import { type RefObject, useEffect, useMemo, useRef, useState } from 'react';
import { Button } from 'react-aria-components';
import { flatFrame } from '../../geometry/sheet/flat-frame.ts';
import { flatOutline } from '../../geometry/sheet/flat-outline.ts';
import { useView } from '../view/view-store.ts';
import { type LiveFace, type LivePart, useLivePart } from '../wear/live-faces.ts';
import { ContourNumbers } from './ContourNumbers.tsx';
import { DepthScaleBar } from './DepthScaleBar.tsx';
import { type DepthScale, useDepthScale } from './depth-scale.ts';
import { FlatCanvas } from './FlatCanvas.tsx';
import { FlatAngles, FlatLines } from './FlatLines.tsx';
import type { GridPlace } from './face-ring.ts';
import { createFlatView, type FlatView } from './flat-view.ts';
import { HandLines } from './HandLines.tsx';
import { createHover } from './hover.ts';
import { PointerDepth } from './PointerDepth.tsx';
import { faceWords } from './part-words.ts';
import { RegionNumbers } from './RegionNumbers.tsx';
import { ScaleBar } from './ScaleBar.tsx';
import { SurfaceMarks } from './SurfaceMarks.tsx';
import { linePath, type SeenPlace } from './surface-path.ts';
import { type Picture, useHand } from './use-hand.ts';
import './flat-picture.css';

/** The chosen face laid flat, true to scale, to be marked with the same tools as the part. Fills its container. */
export function FlatPicture({ className = '' }: { readonly className?: string }) {
  const live = useLivePart();
  const scale = useDepthScale(live);
  const chosen = useView((view) => view.face);
  const face = live?.faces.find((known) => known.face.name === chosen) ?? live?.faces[0];
  if (live === undefined || face === undefined) {
    return <p className="flat-none quiet">This version draws wear plates; the job has none.</p>;
  }
  return (
    <div className={`flat-picture ${className}`}>
      <FaceSheet live={face} part={live} scale={scale} />
    </div>
  );
}

interface FaceSheetProps {
  readonly live: LiveFace;
  readonly part: LivePart;
  readonly scale: DepthScale;
}

function FaceSheet({ live, part, scale }: FaceSheetProps) {
  const area = useRef<HTMLDivElement>(null);
  const [view] = useState(createFlatView);
  const [hover] = useState(createHover);
  const units = useView((state) => state.units);
  const { face } = live;
  const frame = useMemo(() => flatFrame(face), [face]);
  const outline = useMemo(() => flatOutline(face, frame), [face, frame]);
  const picture = usePicture(live, view);
  useEffect(() => view.show(frame.box), [view, frame]);
  useSize(area, view);
  useHand(area, picture, hover);
  useKeys(area, view);
  const pointOf = (on: LiveFace, [u, v]: GridPlace) => (on.face === face ? view.toScreen(frame.toFlat(u, v)) : null);
  const pathOf = (on: LiveFace, lines: readonly (readonly GridPlace[])[], isClosed: boolean) =>
    on.face === face ? flatPath(live, view, lines, isClosed) : '';
  return (
    <>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: keys slide the picture and come nearer */}
      <div className="flat-area" ref={area} role="application" aria-label={faceWords(live, units)} tabIndex={0}>
        <FlatCanvas live={live} outline={outline} view={view} scale={scale} />
        <svg className="flat-overlay" aria-hidden="true">
          <FlatLines live={live} outline={outline} view={view} most={scale.most} />
          <FlatAngles face={face} view={view} />
          <SurfaceMarks live={part} pathOf={pathOf} onView={view.onChange} />
          <ContourNumbers live={live} most={scale.most} pointOf={pointOf} onView={view.onChange} />
          <RegionNumbers live={live} pointOf={pointOf} onView={view.onChange} />
          <HandLines hover={hover} pathOf={pathOf} pointOf={pointOf} onView={view.onChange} />
        </svg>
        <PointerDepth hover={hover} />
      </div>
      <Button className="flat-fit" onPress={view.fit}>
        Whole face
      </Button>
      <div className="flat-foot">
        <DepthScaleBar scale={scale} />
        <ScaleBar view={view} />
      </div>
    </>
  );
}

function usePicture(live: LiveFace, view: FlatView): Picture {
  return useMemo((): Picture => {
    const { face } = live;
    const frame = flatFrame(face);
    const placeAt = (x: number, y: number) => frame.toGrid(...view.toFlat(x, y));
    return {
      placeAt(x, y) {
        const place = placeAt(x, y);
        const isWithin = face.holds(...place) && isInBox(live, place);
        return isWithin ? { live, place } : null;
      },
      placeBeyond: (on, x, y) => (on.face === face ? placeAt(x, y) : null),
      turn: view.slide,
      slide: view.slide,
      zoom: view.zoom,
      mmAPixel: () => 1 / view.lay().scale,
    };
  }, [live, view]);
}

/** An unrolled face ends at both ends of its turn, though its angles go on. */
function isInBox({ face: { grid } }: LiveFace, [, v]: GridPlace): boolean {
  return v >= grid.v0 && v <= grid.v0 + grid.columns * grid.dv;
}

/** Lines on the sheet; where an unrolled face is torn they are torn. */
function flatPath({ face }: LiveFace, view: FlatView, lines: readonly (readonly GridPlace[])[], isClosed: boolean): string {
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

function useSize(area: RefObject<HTMLElement | null>, view: FlatView): void {
  useEffect(() => {
    const element = area.current;
    if (element === null) return;
    const measure = () => {
      const { width, height } = element.getBoundingClientRect();
      if (width > 0 && height > 0) view.resize({ width, height });
    };
    measure();
    const watch = new ResizeObserver(measure);
    watch.observe(element);
    return () => watch.disconnect();
  }, [area, view]);
}

/** px a press of an arrow stands for. */
const ARROW = 32;
const CLOSER = 1.2;

function useKeys(area: RefObject<HTMLElement | null>, view: FlatView): void {
  useEffect(() => {
    const element = area.current;
    if (element === null) return;
    const onKey = (event: KeyboardEvent) => {
      if (event.ctrlKey || event.metaKey || event.altKey) return;
      const { width, height } = view.screen();
      const nearer = (factor: number) => view.zoom(factor, width / 2, height / 2);
      const keys: Readonly<Record<string, () => void>> = {
        ArrowLeft: () => view.slide(ARROW, 0),
        ArrowRight: () => view.slide(-ARROW, 0),
        ArrowUp: () => view.slide(0, ARROW),
        ArrowDown: () => view.slide(0, -ARROW),
        Home: view.fit,
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
  }, [area, view]);
}
