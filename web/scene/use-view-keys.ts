import { type RefObject, useEffect } from 'react';

/** What keys do to a picture. */
export interface Steered {
  /** Moves what is seen by a step: the part turns, a sheet slides. */
  step(right: -1 | 0 | 1, down: -1 | 0 | 1): void;
  nearer(factor: number): void;
  showAll(): void;
}

/** How much nearer one press comes. */
const CLOSER = 1.15;

/** Arrow keys, plus, minus and Home, while the picture has the focus. */
export function useViewKeys(area: RefObject<HTMLElement | null>, steered: Steered): void {
  useEffect(() => {
    const element = area.current;
    if (element === null) return;
    const onKey = (event: KeyboardEvent) => {
      if (event.ctrlKey || event.metaKey || event.altKey || !steer(steered, event.key)) return;
      event.preventDefault();
    };
    element.addEventListener('keydown', onKey);
    return () => element.removeEventListener('keydown', onKey);
  }, [area, steered]);
}

/** @returns whether the key means something here */
function steer({ step, nearer, showAll }: Steered, key: string): boolean {
  switch (key) {
    case 'ArrowLeft':
      step(-1, 0);
      return true;
    case 'ArrowRight':
      step(1, 0);
      return true;
    case 'ArrowUp':
      step(0, -1);
      return true;
    case 'ArrowDown':
      step(0, 1);
      return true;
    case 'Home':
      showAll();
      return true;
    case '+':
    case '=':
      nearer(CLOSER);
      return true;
    case '-':
      nearer(1 / CLOSER);
      return true;
    default:
      return false;
  }
}
