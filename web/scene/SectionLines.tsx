import { useRef } from 'react';
import { toGridPoint } from '../../geometry/part/face.ts';
import { sectionLine } from '../../geometry/sheet/section-line.ts';
import { useJob } from '../job/job-store.ts';
import { useView } from '../view/view-store.ts';
import {
  type LaidSection,
  laidInHand,
  laidInSight,
  laidOn,
  onLaid,
  useStraightedge,
} from '../wear/laid-section.ts';
import type { LiveFace, LivePart } from '../wear/live-faces.ts';
import { sectionSeen } from '../wear/section-seen.ts';
import { useEstimate } from '../worker/estimate-client.ts';
import type { GridPlace } from './face-ring.ts';
import { useOverlay, type Watch } from './use-overlay.ts';
import './section-lines.css';

interface SectionLinesProps {
  readonly live: LivePart;
  readonly pathOf: (live: LiveFace, lines: readonly (readonly GridPlace[])[], isClosed: boolean) => string;
  /** px from the top left; null where it is not seen. */
  readonly pointOf: (live: LiveFace, place: GridPlace) => readonly [x: number, y: number] | null;
  readonly onView: Watch;
}

/** Points of a line on the picture: on the worn part it goes down into the wear. */
const POINTS = 160;
/** px from the end of the line to the middle of its letter. */
const AWAY = 14;

/** The straightedge on the picture, its ends A and B and the deepest place under it; the other sections kept, thin. */
export function SectionLines({ live, pathOf, pointOf, onView }: SectionLinesProps) {
  const group = useRef<SVGGElement>(null);
  const isShown = useView(({ step, tool }) => step === 'wear' && tool === 'straightedge');
  const sections = useJob(({ job }) => job.parts.find(({ id }) => id === live.part.id)?.sections);
  useStraightedge((chosen) => chosen.kept);
  useEstimate((state) => state.job);
  useOverlay(() => {
    const root = group.current;
    if (root === null) return;
    const put = (part: string, attributes: Readonly<Record<string, string>>) => {
      for (const element of root.querySelectorAll(`.${part}`))
        for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
    };
    const laid = isShown ? laidInSight() : null;
    const isHere = laid !== null && laid.live.part === live.part.id;
    const line = isHere ? placesOf(laid) : [];
    const path = isHere ? pathOf(laid.live, [line], false) : '';
    put('section-laid', { d: path });
    put('section-kept', { d: isShown && laidInHand() === null ? othersPath(laid) : '' });
    const found = isHere ? sectionSeen(laid) : null;
    const deepest = found?.deepest;
    const low =
      isHere && deepest && deepest.depth > 0
        ? pointOf(laid.live, toGridPoint(laid.live.face, deepest.point))
        : null;
    put('section-low', { d: low === null ? '' : dot(low) });
    const ends = isHere ? endsOf(line.map((place) => pointOf(laid.live, place))) : [null, null];
    const isClosed = found?.line.isClosed === true;
    putLetter(root, 'section-a', ends[0]);
    putLetter(root, 'section-b', isClosed ? null : ends[1]);
  }, [onLaid, onView]);

  const othersPath = (inSight: LaidSection | null): string => {
    return (sections ?? [])
      .map((section) => laidOn(live.part, section))
      .map((laid) =>
        laid === null || laid.section === inSight?.section ? '' : pathOf(laid.live, [placesOf(laid)], false),
      )
      .join('');
  };

  return (
    <g className="section-lines" ref={group}>
      <path className="section-kept" />
      <path className="section-halo section-laid" />
      <path className="section-line section-laid" />
      <path className="section-low" />
      <text className="section-a">A</text>
      <text className="section-b">B</text>
    </g>
  );
}

/** Evenly strewn places of the line, both ends among them. A section keeps them as long as it is the same. */
function placesOf({ live, section }: LaidSection): readonly GridPlace[] {
  const known = places.get(section);
  if (known !== undefined) return known;
  const line = sectionLine(live.face, section);
  const found = Array.from({ length: POINTS + 1 }, (_, i) => line.place((line.length * i) / POINTS));
  places.set(section, found);
  return found;
}

const places = new WeakMap<object, readonly GridPlace[]>();

type Point = readonly [x: number, y: number];

/** Where the letters stand: off each end, away from the line. */
function endsOf(points: readonly (Point | null)[]): readonly [Point | null, Point | null] {
  const off = (end: Point | null | undefined, inner: Point | null | undefined): Point | null => {
    if (!end) return null;
    const [dx, dy] = inner ? [end[0] - inner[0], end[1] - inner[1]] : [0, -1];
    const size = Math.hypot(dx, dy) || 1;
    return [end[0] + (AWAY * dx) / size, end[1] + (AWAY * dy) / size];
  };
  return [off(points.at(0), points.at(2)), off(points.at(-1), points.at(-3))];
}

function putLetter(root: SVGGElement, name: string, at: Point | null): void {
  const letter = root.querySelector(`.${name}`);
  letter?.setAttribute('visibility', at === null ? 'hidden' : 'visible');
  if (at === null) return;
  letter?.setAttribute('x', at[0].toFixed(1));
  letter?.setAttribute('y', at[1].toFixed(1));
}

const dot = ([x, y]: Point): string =>
  `M${(x - 5).toFixed(1)} ${y.toFixed(1)}a5 5 0 1 0 10 0a5 5 0 1 0 -10 0Z`;
