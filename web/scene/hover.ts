/** Where the pointer is over a picture. Outside React: many a move a second, and only a line or a number follows. */

import type { LiveFace } from '../wear/live-faces.ts';
import type { GridPlace } from './face-ring.ts';

export interface Hovered {
  readonly live: LiveFace;
  readonly place: GridPlace;
  /** On the face itself, not beyond its edges or over a hole. */
  readonly isOnFace: boolean;
  /** px from the top left of the picture. */
  readonly x: number;
  readonly y: number;
  /** A finger hides what is under it. */
  readonly byTouch: boolean;
}

export interface Hover {
  now(): Hovered | null;
  set(hovered: Hovered | null): void;
  /** Hears of every change. @returns stops it */
  onChange(listener: () => void): () => void;
}

export function createHover(): Hover {
  let hovered: Hovered | null = null;
  const listeners = new Set<() => void>();
  return {
    now: () => hovered,
    set(next) {
      if (next === null && hovered === null) return;
      hovered = next;
      for (const listener of listeners) listener();
    },
    onChange(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}
