import { useSyncExternalStore } from 'react';

/** Widths at which the arrangement changes; the same stand in Shell.css. */
const SCREENS = {
  /** One column: phones, and anything magnified to their width. */
  narrow: '(max-width: 719px)',
  /** A tablet held upright, and anything narrower. */
  compact: '(max-width: 1023px)',
  /** Room for the flat picture beside the part. */
  wide: '(min-width: 1200px)',
} as const;

/** True while the screen is of that kind. */
export function useScreen(kind: keyof typeof SCREENS): boolean {
  return useSyncExternalStore(
    (changed) => {
      const media = matchMedia(SCREENS[kind]);
      media.addEventListener('change', changed);
      return () => media.removeEventListener('change', changed);
    },
    () => matchMedia(SCREENS[kind]).matches,
  );
}
