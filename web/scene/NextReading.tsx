import { useRef } from 'react';
import { toGridPoint } from '../../geometry/part/face.ts';
import type { NextResult } from '../../geometry/sheet/readings-result.ts';
import { ownPoint } from '../tools/file-point.ts';
import { useView } from '../view/view-store.ts';
import type { LiveFace, LivePart } from '../wear/live-faces.ts';
import { useEstimate } from '../worker/estimate-client.ts';
import type { GridPlace } from './face-ring.ts';
import { useOverlay, type Watch } from './use-overlay.ts';
import './next-reading.css';

interface NextReadingProps {
  readonly live: LivePart;
  /** px from the top left; null where it is not seen. */
  readonly pointOf: (live: LiveFace, place: GridPlace) => readonly [x: number, y: number] | null;
  readonly onView: Watch;
}

/** Where another reading would tell most, on the step that marks: with the readings in hand, or with their tool. */
export function NextReading({ live, pointOf, onView }: NextReadingProps) {
  const group = useRef<SVGGElement>(null);
  const next = useNext(live);
  const on = next === null ? undefined : live.faces.find(({ face }) => face.name === next.face);
  useOverlay(() => {
    const point =
      next === null || on === undefined
        ? null
        : pointOf(on, toGridPoint(on.face, ownPoint(on.face, next.at)));
    group.current?.toggleAttribute('hidden', point === null);
    if (point !== null)
      group.current?.setAttribute('transform', `translate(${point[0].toFixed(1)} ${point[1].toFixed(1)})`);
  }, [onView]);
  if (next === null || on === undefined) return null;
  return (
    <g className="next-reading" ref={group}>
      <circle r={13} />
      <path d="M-19 0h12M7 0h12M0-19v12M0 7v12" />
      <text y={34}>Measure next</text>
    </g>
  );
}

/** The best of those of the part: with readings in hand, theirs. */
function useNext({ part }: LivePart): NextResult | null {
  const isAsked = useView(({ step, tool }) => step === 'wear' && tool === 'readings');
  const inHand = useView(({ step, selectedMark }) => (step === 'wear' ? selectedMark : null));
  const readings = useEstimate(({ result }) => result?.parts.find(({ id }) => id === part.id)?.readings);
  const own = readings?.find(({ mark }) => mark === inHand);
  if (own !== undefined) return own.next;
  if (!isAsked || readings === undefined) return null;
  return readings.reduce<NextResult | null>(
    (best, { next }) => (next !== null && next.moves > (best?.moves ?? 0) ? next : best),
    null,
  );
}
