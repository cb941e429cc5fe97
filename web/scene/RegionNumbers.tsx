import { useRef } from 'react';
import { toGridPoint } from '../../geometry/part/face.ts';
import type { PartResult, RegionResult } from '../../geometry/sheet/result.ts';
import type { Deg } from '../../geometry/units.ts';
import { ownPoint } from '../tools/file-point.ts';
import type { LiveFace } from '../wear/live-faces.ts';
import { useEstimate } from '../worker/estimate-client.ts';
import type { ScreenBox } from './batch-tags.ts';
import type { GridPlace } from './face-ring.ts';
import { useOverlay, type Watch } from './use-overlay.ts';

interface RegionNumbersProps {
  readonly live: LiveFace;
  readonly pointOf: (live: LiveFace, place: GridPlace) => readonly [x: number, y: number] | null;
  readonly onView: Watch;
}

/** More numbers than this hide the wear. */
const MOST = 24;
/** Radius of a ring, px, and how far it stands from the deepest point it belongs to. */
const RING = 11;
const ASIDE: { readonly distance: number; readonly angle: Deg } = { distance: 20, angle: -45 };

/** The damage regions of a face, numbered as on the sheet, deepest first, beside their deepest points. */
export function RegionNumbers({ live, pointOf, onView }: RegionNumbersProps) {
  const group = useRef<SVGGElement>(null);
  const regions = useEstimate(
    (estimate) => estimate.result?.parts.find(({ id }) => id === live.part)?.regions ?? NONE,
  );
  const shown = numberedRegions(live, regions);
  useOverlay(() => {
    const taken: (readonly [number, number])[] = [];
    for (const [i, ring] of [...(group.current?.children ?? [])].entries()) {
      const point = pointOf(live, shown[i].place);
      const isFree =
        point !== null && taken.every(([x, y]) => Math.hypot(x - point[0], y - point[1]) > 2 * RING);
      ring.toggleAttribute('hidden', !isFree);
      if (!isFree) continue;
      taken.push(point);
      ring.setAttribute('transform', `translate(${point[0].toFixed(1)} ${point[1].toFixed(1)})`);
    }
  }, [onView]);
  return (
    <g className="region-numbers" ref={group}>
      {shown.map(({ region, number }) => (
        <g key={region.id}>
          <path d={`M0 0L${OFF[0]} ${OFF[1]}`} />
          <circle cx={OFF[0]} cy={OFF[1]} r={RING} />
          <text x={OFF[0]} y={OFF[1]}>
            {number}
          </text>
        </g>
      ))}
    </g>
  );
}

/** px around the numbers on the picture: other words keep clear of them. */
export function numberBoxes(
  live: LiveFace,
  parts: readonly PartResult[],
  pointOf: RegionNumbersProps['pointOf'],
): readonly ScreenBox[] {
  const regions = parts.find(({ id }) => id === live.part)?.regions ?? NONE;
  return numberedRegions(live, regions).flatMap(({ place }) => {
    const point = pointOf(live, place);
    if (point === null) return [];
    const [x, y] = [point[0] + OFF[0], point[1] + OFF[1]];
    return [{ x0: x - RING, x1: x + RING, y0: y - RING, y1: y + RING }];
  });
}

function numberedRegions(live: LiveFace, regions: readonly RegionResult[]) {
  return regions
    .map((region, i) => ({ region, number: i + 1 }))
    .filter(({ region }) => region.face === live.face.name)
    .slice(0, MOST)
    .map((numbered) => ({
      ...numbered,
      place: toGridPoint(live.face, ownPoint(live.face, numbered.region.at)),
    }));
}

const NONE: readonly RegionResult[] = [];
const OFF = [
  Math.round(ASIDE.distance * Math.cos((ASIDE.angle / 180) * Math.PI)),
  Math.round(ASIDE.distance * Math.sin((ASIDE.angle / 180) * Math.PI)),
] as const;
