import { useMemo, useRef } from 'react';
import { useJob } from '../job/job-store.ts';
import { useView } from '../view/view-store.ts';
import type { LivePart } from '../wear/live-faces.ts';
import type { Screen } from './camera.ts';
import { depthLabel } from './depth-label.ts';
import { drawnReadings, type PlacedReading, placedReadings } from './reading-places.ts';
import type { ReadingSight } from './reading-sight.ts';
import { useLookAtRest } from './use-look-at-rest.ts';
import { useOverlay, type Watch } from './use-overlay.ts';
import './reading-marks.css';

interface ReadingMarksProps {
  readonly live: LivePart;
  /** px from the top left; null where it is not seen. */
  readonly pointOf: (reading: PlacedReading) => readonly [x: number, y: number] | null;
  /** Looks anew which are seen, once the view rests; tells when it has. @returns calls it off */
  readonly look?: ReadingSight['look'];
  readonly screen: () => Screen;
  readonly onView: Watch;
}

/** More depths than this cannot be read. */
const MOST = 150;

/** Where the gauge was held, a cross a reading, and its depth beside it where there is room. On the steps that mark and fill. */
export function ReadingMarks({ live, pointOf, look, screen, onView }: ReadingMarksProps) {
  const group = useRef<SVGGElement>(null);
  const readings = useReadings(live);
  const units = useView((view) => view.units);
  const draw = () => {
    const [halo, others, inHand, words] = group.current?.children ?? [];
    if (words === undefined) return;
    const drawn = drawnReadings(readings, pointOf, (depth) => depthLabel(depth, units), screen(), MOST);
    halo.setAttribute('d', drawn.others + drawn.inHand);
    others.setAttribute('d', drawn.others);
    inHand.setAttribute('d', drawn.inHand);
    for (const [i, text] of [...words.children].entries()) {
      const label = drawn.labels[i];
      text.toggleAttribute('hidden', label === undefined);
      if (label === undefined) continue;
      text.textContent = label.text;
      text.setAttribute('x', label.x.toFixed(1));
      text.setAttribute('y', label.y.toFixed(1));
      text.setAttribute('text-anchor', label.anchor);
      text.classList.toggle('reading-in-hand', label.isInHand);
    }
  };
  useOverlay(draw, [onView]);
  useLookAtRest(readings, look, onView, draw);
  if (readings.length === 0) return null;
  return (
    <g className="reading-marks" ref={group}>
      <path className="reading-halo" />
      <path className="reading-others" />
      <path className="reading-in-hand" />
      <g>
        {SLOTS.slice(0, readings.length).map((slot) => (
          <text key={slot} />
        ))}
      </g>
    </g>
  );
}

const SLOTS = Array.from({ length: MOST }, (_, i) => i);
const NONE: readonly PlacedReading[] = [];

function useReadings({ part, faces }: LivePart): readonly PlacedReading[] {
  const isShown = useView(({ step }) => step === 'wear' || step === 'fill');
  const inHand = useView(({ step, selectedMark }) => (step === 'wear' ? selectedMark : null));
  const wear = useJob(({ job }) => job.parts.find(({ id }) => id === part.id)?.wear);
  return useMemo(
    () => (isShown && wear !== undefined ? placedReadings(faces, wear, inHand) : NONE),
    [faces, wear, inHand, isShown],
  );
}
