import { useThree } from '@react-three/fiber';
import { useEffect } from 'react';
import { onTouched } from '../wear/live-faces.ts';
import { rendererKind } from './renderer-kind.ts';
import type { Viewport } from './viewport.ts';

/** ms without a change until the fine frame. */
const REST = 300;
const MOVING_PIXELS = 1;
const STILL_PIXELS = 1.5;

/**
 * Where the processor draws, smooth edges at every frame cost more than it has: it draws coarse while something moves, and once
 * finely when it has come to rest.
 */
export function useStillFrame(viewport: Viewport): void {
  const setDpr = useThree((three) => three.setDpr);
  useEffect(() => {
    if (rendererKind() === 'chip') return;
    let timer: ReturnType<typeof setTimeout> | undefined;
    let isFine = false;
    const rest = () => {
      isFine = true;
      setDpr(STILL_PIXELS);
    };
    const moved = () => {
      if (isFine) setDpr(MOVING_PIXELS);
      isFine = false;
      clearTimeout(timer);
      timer = setTimeout(rest, REST);
    };
    moved();
    const stops = [viewport.onChange(moved), onTouched(moved)];
    return () => {
      clearTimeout(timer);
      for (const stop of stops) stop();
    };
  }, [viewport, setDpr]);
}
