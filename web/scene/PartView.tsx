import { type ComponentType, useEffect, useMemo, useRef, useState } from 'react';
import { toGridPoint } from '../../geometry/part/face.ts';
import { useView } from '../view/view-store.ts';
import { type LiveFace, type LivePart, useLivePart } from '../wear/live-faces.ts';
import { BalanceArrow } from './BalanceArrow.tsx';
import { BatchMarks } from './BatchMarks.tsx';
import { freeBox } from './batch-tags.ts';
import { CompassLines } from './CompassLines.tsx';
import { ContourNumbers } from './ContourNumbers.tsx';
import { DepthScaleBar } from './DepthScaleBar.tsx';
import { DimensionLines } from './DimensionLines.tsx';
import { type DepthScale, useDepthScale } from './depth-scale.ts';
import { drawnTimes, wallShare } from './drawn-times.ts';
import { Exaggeration } from './Exaggeration.tsx';
import type { GridPlace } from './face-ring.ts';
import { HandLines } from './HandLines.tsx';
import { createHover } from './hover.ts';
import { NextReading } from './NextReading.tsx';
import type { OverlayProps } from './overlay-props.ts';
import { PartCanvas } from './PartCanvas.tsx';
import { PointerDepth } from './PointerDepth.tsx';
import { partBounds } from './part-bounds.ts';
import { partWords } from './part-words.ts';
import { pick, pickBeyond } from './pick.ts';
import { ReadingMarks } from './ReadingMarks.tsx';
import { readingSight, type SightedPlace } from './reading-sight.ts';
import { rendererKind } from './renderer-kind.ts';
import { SectionLines } from './SectionLines.tsx';
import { SurfaceMarks } from './SurfaceMarks.tsx';
import { clearPoint, facingPoint, openPoint } from './seen-point.ts';
import { linePath, type SeenPlace, surfacePath } from './surface-path.ts';
import { useBatchUnderHand } from './use-batch-under-hand.ts';
import { type Picture, useHand } from './use-hand.ts';
import { useRegionUnderHand } from './use-region-under-hand.ts';
import { useSize } from './use-size.ts';
import { type Steered, useViewKeys } from './use-view-keys.ts';
import { VaneLines } from './VaneLines.tsx';
import { ViewButtons } from './ViewButtons.tsx';
import { createViewport, type Viewport } from './viewport.ts';
import './part-view.css';
import './picture-foot.css';

/** The chosen part in three dimensions, to be turned and marked. Fills its container. */
export function PartView({ className = '' }: { readonly className?: string }) {
  const live = useLivePart();
  const scale = useDepthScale(live);
  if (live === undefined) {
    return <p className="part-none quiet">The job has no part to draw.</p>;
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
      This device cannot draw in three dimensions. Everything else works: mark the wear on the flat picture or
      by typing.
    </p>
  );
}

/** What is drawn over the part: below what is marked on it, and above. */
const BELOW: Overlaid = { compass: CompassLines, vanes: VaneLines };
const ABOVE: Overlaid = { dimension: DimensionLines, balance: BalanceArrow };

type Overlaid = Readonly<Record<string, ComponentType<OverlayProps>>>;

function Overlays({ all, ...shown }: OverlayProps & { readonly all: Overlaid }) {
  return Object.entries(all).map(([name, Overlay]) => <Overlay key={name} {...shown} />);
}

/** px that the buttons above and the scale below take; the scale is there when something is worn. */
const COVERED = { top: 48, bottom: 72, side: 12 } as const;
const COVERED_SOUND = { ...COVERED, bottom: 16 } as const;

function PartPicture({ live, scale }: { readonly live: LivePart; readonly scale: DepthScale }) {
  const area = useRef<HTMLDivElement>(null);
  const [viewport] = useState(createViewport);
  const [hover] = useState(createHover);
  const wanted = useView((view) => view.exaggeration);
  const units = useView((view) => view.units);
  const share = useMemo(() => wallShare(live), [live]);
  const times = drawnTimes(wanted, share);
  const picture = usePicture(live, viewport, times, scale);
  useHand(area, picture, hover);
  useRegionUnderHand(hover);
  useBatchUnderHand(hover);
  useSize(area, viewport.resize);
  const isWorn = scale.deepest > 0;
  useEffect(
    () => viewport.show(partBounds(live), isWorn ? COVERED : COVERED_SOUND),
    [viewport, live, isWorn],
  );
  useViewKeys(area, useSteering(viewport));
  const readings = useMemo(() => readingSight(live.part, viewport, times), [live, viewport, times]);
  const seenPlace = (at: SightedPlace): SeenPlace => {
    const [x, y] = readings.pointOf(at) ?? [Number.NaN, Number.NaN];
    return { x, y, faces: !Number.isNaN(x) };
  };
  const pathOf = (on: LiveFace, lines: readonly (readonly GridPlace[])[], isClosed: boolean) =>
    surfacePath(viewport.sight(), live.part, on, times, lines, isClosed);
  return (
    <>
      <div
        className="part-area"
        ref={area}
        role="application"
        aria-label={partWords(live, scale, units)}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: keys turn the part and come nearer
        tabIndex={0}
      >
        <PartCanvas live={live} viewport={viewport} times={times} scale={scale} />
        <svg className="part-lines" aria-hidden="true">
          <Overlays all={BELOW} live={live} viewport={viewport} />
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
          <ReadingMarks
            live={live}
            pointOf={readings.pointOf}
            look={readings.look}
            screen={viewport.screen}
            onView={viewport.onChange}
          />
          <BatchMarks
            live={live}
            pathOf={({ lines }) => lines.map((line) => linePath(line.map(seenPlace), true)).join('')}
            pointOf={readings.pointOf}
            look={readings.look}
            free={() => freeBox(viewport.screen(), isWorn ? COVERED : COVERED_SOUND)}
            onView={viewport.onChange}
          />
          <NextReading
            live={live}
            pointOf={(on, place) => clearPoint(viewport, live.part, on, times, place)}
            onView={viewport.onChange}
          />
          <Overlays all={ABOVE} live={live} viewport={viewport} />
          <SectionLines
            live={live}
            pathOf={pathOf}
            pointOf={(on, place) => facingPoint(viewport, on, times, place)}
            onView={viewport.onChange}
          />
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
      {isWorn && (
        <div className="picture-foot">
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
        const point = pickBeyond(live, face, viewport.sight().ray(x, y));
        return point && toGridPoint(face.face, point);
      },
      turn: viewport.turn,
      slide: viewport.slide,
      zoom: viewport.zoom,
      mmAPixel: () => 1 / viewport.sight().scale,
    };
  }, [live, viewport, times, scale]);
}

/** px of a drag that a press of an arrow stands for. */
const ARROW = 24;

function useSteering(viewport: Viewport): Steered {
  return useMemo(
    () => ({
      step: (right, down) => viewport.turn(right * ARROW, down * ARROW),
      nearer: (factor) => {
        const { width, height } = viewport.screen();
        viewport.zoom(factor, width / 2, height / 2);
      },
      showAll: () => viewport.go('angled'),
    }),
    [viewport],
  );
}
