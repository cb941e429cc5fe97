import { useCallback, useId, useRef, useState } from 'react';
import { type Face, toGridPoint } from '../../../geometry/part/face.ts';
import { flatPoint } from '../../../geometry/sheet/flat-frame.ts';
import { wallColour } from '../../../geometry/sheet/wall-colour.ts';
import { type WallMark, wallMarks } from '../../../geometry/sheet/wall-drawing.ts';
import type { WallResult } from '../../../geometry/sheet/wall-result.ts';
import type { WallLine, WallShapes } from '../../../geometry/sheet/wall-shapes.ts';
import { type FacePoint, toRadians } from '../../../geometry/units.ts';
import type { ScreenUnits } from '../../fields/quantity-units.ts';
import { shownUnit } from '../../fields/quantity-units.ts';
import { depthLabel } from '../../scene/depth-label.ts';
import { useSize } from '../../scene/use-size.ts';
import { useView } from '../../view/view-store.ts';
import type { DrawnWall } from './use-wall-shapes.ts';
import { WallScale } from './WallScale.tsx';
import { wallState, wallTitle } from './wall-words.ts';
import './WallMap.css';

interface WallMapProps {
  readonly part: string;
  readonly wall: WallResult;
  /** null while it is worked out. */
  readonly drawn: DrawnWall | null;
  /** The thin place that is pointed at. */
  readonly place: number;
}

/** px on the screen. */
const LETTERS = 13;
const MARGIN = 22;
const LINE = 1;
const USUAL_WIDTH = 480;
/** Pictures lower than this hold no words beside a mark. */
const LOW = 130;

/** What is left of one wall laid flat: lines of equal thickness with numbers, the limit bold, thin places numbered. */
export function WallMap({ part, wall, drawn, place }: WallMapProps) {
  const units = useView((view) => view.units);
  const area = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState(USUAL_WIDTH);
  const resize = useCallback((screen: { readonly width: number }) => setWidth(screen.width), []);
  useSize(area, resize);
  const title = `Metal left of ${part}, ${wallTitle(wall).toLowerCase()}: ${wallState(wall, units)}`;
  return (
    <figure className="wall-map">
      <figcaption>
        <span className="wall-name">{wallTitle(wall)}</span>, {wallState(wall, units)}
      </figcaption>
      <div ref={area} className="wall-area" aria-busy={drawn === null}>
        {drawn === null ? (
          <p className="quiet">Drawing the wall</p>
        ) : (
          <Picture drawn={drawn} wall={wall} place={place} title={title} width={width} units={units} />
        )}
      </div>
      {drawn !== null && (
        <WallScale
          scale={drawn.shapes.scale}
          limit={wall.limit}
          units={units}
          isThrough={drawn.shapes.through !== ''}
          isCrossed={wall.places.length === 0}
        />
      )}
    </figure>
  );
}

interface PictureProps {
  readonly drawn: DrawnWall;
  readonly wall: WallResult;
  readonly place: number;
  readonly title: string;
  readonly width: number;
  readonly units: ScreenUnits;
}

function Picture({ drawn: { shapes, wall: map }, wall, place, title, width, units }: PictureProps) {
  const { box, outline, bands, lines, limit, through } = shapes;
  const clip = useId();
  const scale = Math.max(1, width - 2 * MARGIN) / box.width;
  const px = (size: number): number => size / scale;
  const margin = px(MARGIN);
  const edge = [...outline.edges, ...outline.holes].join('');
  const view = [box.x - margin, box.y - margin, box.width + 2 * margin, box.height + 2 * margin];
  const marks = marksOf(wall, map.face, shapes);
  const label = (line: WallLine, words: string) =>
    line.labels.map(({ x, y, angle }) => (
      <text key={`${x} ${y}`} transform={`translate(${x} ${y}) rotate(${angle})`} dy="0.35em">
        {words}
      </text>
    ));
  return (
    <svg viewBox={view.join(' ')} role="img" aria-label={title} fontSize={px(LETTERS)}>
      <clipPath id={clip}>
        <path clipRule="evenodd" d={edge} />
      </clipPath>
      <g clipPath={`url(#${clip})`}>
        {bands.map((band) => (
          <path key={band.to} fill={wallColour(band.share)} fillRule="evenodd" d={band.path} />
        ))}
        <g className="wall-lines" strokeWidth={px(LINE)}>
          {lines.map((line) => (
            <path key={line.left} d={line.path} />
          ))}
        </g>
        {limit !== null && (
          <>
            <path className="wall-limit-halo" strokeWidth={px(6)} d={limit.path} />
            <path className="wall-limit" strokeWidth={px(3)} d={limit.path} />
          </>
        )}
        <path className="wall-through" fillRule="evenodd" d={through} />
      </g>
      <path className="wall-edge" strokeWidth={px(2 * LINE)} d={edge} />
      <g className="wall-numbers" strokeWidth={px(3)}>
        {lines.map((line) => label(line, depthLabel(line.left, units)))}
        {limit !== null &&
          label(limit, `limit ${depthLabel(limit.left, units)} ${shownUnit('length', units).symbol}`)}
      </g>
      {marks.map((mark, i) => (
        <PlaceMark
          key={mark.text}
          mark={mark}
          isLit={i === place && wall.places.length > 0}
          foot={box.height * scale < LOW ? box.y + box.height + px(0.6 * LETTERS) : null}
          px={px}
        />
      ))}
      {wall.places.length === 0 && <Thinnest at={thinnestAt(wall, map.face, shapes)} px={px} />}
    </svg>
  );
}

interface PlaceMarkProps {
  readonly mark: WallMark;
  readonly isLit: boolean;
  /** Where words stand below a picture too low to hold them, mm; null where it is not. */
  readonly foot: number | null;
  px(size: number): number;
}

/** A dot with the place's number beside it; a crossed square with the word where nothing is left. */
function PlaceMark({ mark: { at, text, isThrough, isOnRight }, isLit, foot, px }: PlaceMarkProps) {
  const r = px(11);
  // Beside its place, so that the lines round a small one stay in sight.
  const aside = px(isOnRight ? -25 : 25);
  return (
    <g
      className={`wall-mark${isThrough ? ' wall-hole' : ''}${isLit ? ' wall-lit' : ''}`}
      transform={`translate(${at[0]} ${at[1]})`}
      strokeWidth={px(isLit ? 3 : 1.5)}
    >
      {isLit && <circle className="wall-ring" r={px(19)} />}
      {isThrough ? (
        <>
          <path d={`M${-r} ${-r}H${r}V${r}H${-r}ZL${r} ${r}M${-r} ${r}L${r} ${-r}`} />
          <text
            x={foot === null ? px(isOnRight ? -22 : 22) : 0}
            y={foot === null ? 0 : foot - at[1]}
            textAnchor={foot !== null ? 'middle' : isOnRight ? 'end' : 'start'}
            dy="0.35em"
            strokeWidth={px(3)}
          >
            {text} worn through
          </text>
        </>
      ) : (
        <>
          <path d={`M0 0L${aside} ${-px(25)}`} />
          <circle className="wall-dot" r={px(4)} />
          <circle cx={aside} cy={-px(25)} r={r} />
          <text x={aside} y={-px(25)} textAnchor="middle" dy="0.35em" strokeWidth={0}>
            {text}
          </text>
        </>
      )}
    </g>
  );
}

/** A cross where the wall is thinnest, though not too thin. */
function Thinnest({ at: [x, y], px }: { readonly at: FacePoint; px(size: number): number }) {
  const arm = px(9);
  const cross = `M${x - arm} ${y}h${2 * arm}M${x} ${y - arm}v${2 * arm}`;
  return (
    <g className="wall-thinnest">
      <path className="wall-limit-halo" strokeWidth={px(5)} d={cross} />
      <path className="wall-limit" strokeWidth={px(2)} d={cross} />
    </g>
  );
}

/** From the file's degrees. */
function drawnAt(at: FacePoint, face: Face, { frame }: WallShapes): FacePoint {
  const [a, b] = face.coordinates;
  const own: FacePoint = [a.isAngle ? toRadians(at[0]) : at[0], b.isAngle ? toRadians(at[1]) : at[1]];
  const [u, v] = toGridPoint(face, own);
  return face.grid.wraps && v < face.grid.v0 ? frame.toFlat(u, v + 2 * Math.PI) : flatPoint(face, frame, own);
}

const marksOf = (wall: WallResult, face: Face, shapes: WallShapes): WallMark[] =>
  wallMarks(wall, shapes.box, (at) => drawnAt(at, face, shapes));

const thinnestAt = (wall: WallResult, face: Face, shapes: WallShapes): FacePoint =>
  drawnAt(wall.at, face, shapes);
