import { useRef } from 'react';
import { useView } from '../view/view-store.ts';
import type { LiveFace } from '../wear/live-faces.ts';
import { contourPlaces } from './contour-places.ts';
import { depthLabel } from './depth-label.ts';
import type { FlatView } from './flat-view.ts';
import { useContours } from './use-contours.ts';
import { useOverlay } from './use-overlay.ts';
import './contour-numbers.css';

interface FlatNumbersProps {
  readonly live: LiveFace;
  readonly view: FlatView;
  /** Depth the scale is made for, mm. */
  readonly most: number;
}

/** More numbers than this hide the wear. */
const MOST = 48;
const SLOTS = Array.from({ length: MOST }, (_, i) => i);

/** The depths of the contour lines of the face laid flat, on every line that is in sight, however near one looks. */
export function FlatNumbers({ live, view, most }: FlatNumbersProps) {
  const group = useRef<SVGGElement>(null);
  const contours = useContours(live, most);
  const units = useView((state) => state.units);
  useOverlay(() => {
    const places = contours === null ? [] : contourPlaces(contours, view.lay(), view.screen(), MOST);
    for (const [i, text] of [...(group.current?.children ?? [])].entries()) {
      const place = places[i];
      text.toggleAttribute('hidden', place === undefined);
      if (place === undefined) continue;
      text.textContent = depthLabel(place.depth, units);
      text.setAttribute('x', place.x.toFixed(1));
      text.setAttribute('y', place.y.toFixed(1));
    }
  }, [view.onChange]);
  return (
    <g className="contour-numbers" ref={group}>
      {SLOTS.map((slot) => (
        <text key={slot} />
      ))}
    </g>
  );
}
