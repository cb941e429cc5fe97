import { useEffect, useLayoutEffect, useRef } from 'react';

/** Something that tells when a picture has to be drawn anew: a viewport, the pointer, a draft. */
export type Watch = (listener: () => void) => () => void;

/**
 * Draws lines and labels over a picture: at once when React renders, and again whenever one of the watched things changes, without
 * React.
 */
export function useOverlay(draw: () => void, watches: readonly Watch[]): void {
  const latest = useRef(draw);
  useLayoutEffect(() => {
    latest.current = draw;
    draw();
  });
  // biome-ignore lint/correctness/useExhaustiveDependencies: the things watched live as long as the picture
  useEffect(() => {
    const stops = watches.map((watch) => watch(() => latest.current()));
    return () => {
      for (const stop of stops) stop();
    };
  }, []);
}
