import { useEffect, useMemo, useRef, useState } from 'react';
import { Button } from 'react-aria-components';
import type { Face } from '../../geometry/part/face.ts';
import { flatFrame } from '../../geometry/sheet/flat-frame.ts';
import { flatOutline } from '../../geometry/sheet/flat-outline.ts';
import { wrapTurn } from '../../geometry/units.ts';
import { useView } from '../view/view-store.ts';
import { type LiveFace, type LivePart, useLivePart } from '../wear/live-faces.ts';
import { estimateStore } from '../worker/estimate-client.ts';
import { BatchMarks } from './BatchMarks.tsx';
import { freeBox } from './batch-tags.ts';
import { DepthScaleBar } from './DepthScaleBar.tsx';
import { type DepthScale, useDepthScale } from './depth-scale.ts';
import { FlatCanvas } from './FlatCanvas.tsx';
import { FlatEnds } from './FlatEnds.tsx';
import { FlatAngles, FlatLines } from './FlatLines.tsx';
import { FlatNumbers } from './FlatNumbers.tsx';
import { FlatVanes } from './FlatVanes.tsx';
import type { GridPlace } from './face-ring.ts';
import { flatSheetPath } from './flat-sheet-path.ts';
import { createFlatView, type FlatView } from './flat-view.ts';
import { HandLines } from './HandLines.tsx';
import { createHover } from './hover.ts';
import { NextReading } from './NextReading.tsx';
import { PointerDepth } from './PointerDepth.tsx';
import { faceWords } from './part-words.ts';
import { ReadingMarks } from './ReadingMarks.tsx';
import { numberBoxes, RegionNumbers } from './RegionNumbers.tsx';
import { SaveFace } from './SaveFace.tsx';
import { ScaleBar } from './ScaleBar.tsx';
import { SectionLines } from './SectionLines.tsx';
import { SurfaceMarks } from './SurfaceMarks.tsx';
import { useBatchUnderHand } from './use-batch-under-hand.ts';
import { type Picture, useHand } from './use-hand.ts';
import { useRegionUnderHand } from './use-region-under-hand.ts';
import { useSize } from './use-size.ts';
import { type Steered, useViewKeys } from './use-view-keys.ts';
import './flat-picture.css';
import './picture-foot.css';

/** The chosen face laid flat, true to scale, to be marked with the same tools as the part. Fills its container. */
export function FlatPicture({ className = '' }: { readonly className?: string }) {
  const live = useLivePart();
  const scale = useDepthScale(live);
  const chosen = useView((view) => view.face);
  const named = (name: string) => live?.faces.find((known) => known.face.name === name);
  const face = named(chosen) ?? named('vane-1/pressure') ?? live?.faces[0];
  if (live === undefined || face === undefined) {
    return <p className="flat-none quiet">The job has no part to draw.</p>;
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
  useSize(area, view.resize);
  useHand(area, picture, hover);
  useRegionUnderHand(hover);
  useBatchUnderHand(hover);
  useViewKeys(area, useSteering(view));
  const pointOf = (on: LiveFace, [u, v]: GridPlace) =>
    on.face === face ? view.toScreen(frame.toFlat(u, v)) : null;
  const pathOf = (on: LiveFace, lines: readonly (readonly GridPlace[])[], isClosed: boolean) =>
    on.face === face ? flatSheetPath(live, view, lines, isClosed) : '';
  return (
    <>
      <div
        className="flat-area"
        ref={area}
        role="application"
        aria-label={faceWords(live, units)}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: keys slide the picture and come nearer
        tabIndex={0}
      >
        <FlatCanvas live={live} outline={outline} view={view} scale={scale} />
        <svg className="flat-overlay" aria-hidden="true">
          <FlatLines live={live} outline={outline} view={view} most={scale.most} />
          <FlatAngles face={face} view={view} />
          <FlatEnds face={face} view={view} />
          <SurfaceMarks live={part} pathOf={pathOf} onView={view.onChange} />
          <FlatVanes face={face} body={part.part.body} view={view} />
          <FlatNumbers live={live} view={view} most={scale.most} />
          <ReadingMarks
            live={part}
            pointOf={({ live: on, place }) => pointOf(on, place)}
            screen={view.screen}
            onView={view.onChange}
          />
          <BatchMarks
            live={part}
            pathOf={({ live: on, lines }) =>
              pathOf(
                on,
                lines.map((line) => line.map(({ place }) => place)),
                true,
              )
            }
            pointOf={({ live: on, place: [u, v] }) => pointOf(on, [u, withinTurn(face, v)])}
            free={() => freeBox(view.screen(), COVERED)}
            taken={() => numberBoxes(live, estimateStore.getState().result?.parts ?? [], pointOf)}
            onView={view.onChange}
          />
          <RegionNumbers live={live} pointOf={pointOf} onView={view.onChange} />
          <NextReading live={part} pointOf={pointOf} onView={view.onChange} />
          <SectionLines live={part} pathOf={pathOf} pointOf={pointOf} onView={view.onChange} />
          <HandLines hover={hover} pathOf={pathOf} pointOf={pointOf} onView={view.onChange} />
        </svg>
        <PointerDepth hover={hover} />
      </div>
      <div className="flat-buttons">
        <Button className="flat-button" onPress={view.fit}>
          Whole face
        </Button>
        <SaveFace part={live.part} face={face.name} scaledFor={scale.deepest} />
      </div>
      <div className="picture-foot">
        <DepthScaleBar scale={scale} />
        <ScaleBar view={view} />
      </div>
    </>
  );
}

/** px that buttons above and scales below take. */
const COVERED = { top: 60, bottom: 84, side: 8 } as const;

/** Counted on past the end of its turn, an angle is drawn at the beginning. */
function withinTurn({ grid }: Face, v: number): number {
  return grid.wraps ? grid.v0 + wrapTurn(v - grid.v0) : v;
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

/** px that a press of an arrow slides. */
const ARROW = 32;

function useSteering(view: FlatView): Steered {
  return useMemo(
    () => ({
      step: (right, down) => view.slide(-right * ARROW, -down * ARROW),
      nearer: (factor) => {
        const { width, height } = view.screen();
        view.zoom(factor, width / 2, height / 2);
      },
      showAll: view.fit,
    }),
    [view],
  );
}
