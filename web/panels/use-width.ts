import { type RefObject, useEffect, useState } from 'react';

/** px of the box, so that letters in a drawing stay as large as meant. */
export function useWidth(box: RefObject<HTMLElement | null>): number {
  const [width, setWidth] = useState(360);
  useEffect(() => {
    const element = box.current;
    if (element === null) return;
    const watch = new ResizeObserver(([{ contentRect }]) => {
      if (contentRect.width > 0) setWidth(Math.round(contentRect.width));
    });
    watch.observe(element);
    return () => watch.disconnect();
  }, [box]);
  return width;
}
