import { useEffect, useState } from 'react';
import { onTouched } from '../wear/live-faces.ts';
import { rendererKind } from './renderer-kind.ts';
import type { Viewport } from './viewport.ts';

/** ms without a change until the fine frame. */
const REST = 300;
const MOVING_PIXELS = 1;
const STILL_PIXELS = 1.5;
/** A graphics chip draws as many pixels as the screen has, up to this many a CSS px. */
const MOST_PIXELS = 2;

/**
 * Pixels drawn for each CSS px. Where the processor draws, smooth edges at every frame cost more than it has: it draws coarse while
 * something moves, and once finely when it has come to rest.
 */
export function usePixels(viewport: Viewport): number | [least: number, most: number] {
  const byChip = rendererKind() === 'chip';
  const [pixels, setPixels] = useState(MOVING_PIXELS);
  useEffect(() => {
    if (byChip) return;
    let timer: ReturnType<typeof setTimeout> | undefined;
    const moved = () => {
      setPixels(MOVING_PIXELS);
      clearTimeout(timer);
      timer = setTimeout(() => setPixels(STILL_PIXELS), REST);
    };
    moved();
    const stops = [viewport.onChange(moved), onTouched(moved)];
    return () => {
      clearTimeout(timer);
      for (const stop of stops) stop();
    };
  }, [viewport, byChip]);
  return byChip ? [1, MOST_PIXELS] : pixels;
}
