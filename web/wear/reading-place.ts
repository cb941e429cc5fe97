/** Where the next gauge reading belongs: set by a tap on a picture, by typing, or by the walk along a grid. Drawn until its depth is put down. */
import { useStore } from 'zustand/react';
import { createStore } from 'zustand/vanilla';

export interface ReadingPlace {
  /** Id of the part. */
  readonly part: string;
  readonly face: string;
  /** As the job file spells it; null for a number that is not typed yet. */
  readonly at: readonly [first: number | null, second: number | null];
  /** Set by a tap on a picture. */
  readonly isTapped?: boolean;
}

interface PlaceState {
  readonly place: ReadingPlace | null;
  /** Counts the taps: one on the same place again is another one. */
  readonly taps: number;
}

const placeStore = createStore<PlaceState>()(() => ({ place: null, taps: 0 }));

export const readingPlace = (): ReadingPlace | null => placeStore.getState().place;

export function useReadingPlace<T>(select: (state: PlaceState) => T): T {
  return useStore(placeStore, select);
}

export function setReadingPlace(place: ReadingPlace | null): void {
  placeStore.setState({ place });
}

/** The place a finger came down on. */
export function tapReadingPlace(place: ReadingPlace): void {
  placeStore.setState(({ taps }) => ({ place: { ...place, isTapped: true }, taps: taps + 1 }));
}

/** Hears of every change. @returns stops it */
export function onReadingPlace(listener: () => void): () => void {
  return placeStore.subscribe(listener);
}

/** Hears of taps alone. @returns stops it */
export function onReadingTap(listener: (place: ReadingPlace) => void): () => void {
  return placeStore.subscribe((now, before) => {
    if (now.taps !== before.taps && now.place !== null) listener(now.place);
  });
}
