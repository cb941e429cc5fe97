import { type RefObject, useEffect } from 'react';
import type { Screen } from './camera.ts';

/** Tells a picture how large its area is, now and whenever that changes. */
export function useSize(area: RefObject<HTMLElement | null>, resize: (screen: Screen) => void): void {
  useEffect(() => {
    const element = area.current;
    if (element === null) return;
    const measure = () => {
      const { width, height } = element.getBoundingClientRect();
      if (width > 0 && height > 0) resize({ width, height });
    };
    measure();
    const watch = new ResizeObserver(measure);
    watch.observe(element);
    return () => watch.disconnect();
  }, [area, resize]);
}
