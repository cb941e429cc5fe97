import { useEffect, useLayoutEffect, useRef } from 'react';
import type { ReadingSight, SightedPlace } from './reading-sight.ts';
import type { Watch } from './use-overlay.ts';

/** ms without a change after which the view rests. */
const REST = 120;

/** Looks anew which places are hidden whenever the view rests, and draws once that is known. */
export function useLookAtRest(
  places: readonly SightedPlace[],
  look: ReadingSight['look'] | undefined,
  onView: Watch,
  draw: () => void,
): void {
  const latest = useRef(draw);
  useLayoutEffect(() => {
    latest.current = draw;
  });
  useEffect(() => {
    if (look === undefined) return;
    let callOff = () => {};
    let timer: ReturnType<typeof setTimeout>;
    const wait = () => {
      callOff();
      clearTimeout(timer);
      timer = setTimeout(() => {
        callOff = look(places, () => latest.current());
      }, REST);
    };
    wait();
    const stop = onView(wait);
    return () => {
      stop();
      callOff();
      clearTimeout(timer);
    };
  }, [places, look, onView]);
}
