/** What was weighed for a mix before its mixing is begun: the log has no entry for it yet. Lasts as long as the tab, reloads included. */
import { useStore } from 'zustand/react';
import { createStore } from 'zustand/vanilla';
import type { MixNotes } from './step-log.ts';

export interface WeighedDraft {
  /** Whose: the job's title and the step's id. */
  readonly of: string;
  readonly notes: MixNotes;
}

const KEY = 'fettle-weighed';

const weighedStore = createStore<{ readonly draft: WeighedDraft | null }>()(() => ({
  draft: readDraft(),
}));

/** What was put down for that step so far. */
export function useWeighedDraft(of: string): MixNotes {
  const draft = useStore(weighedStore, (state) => state.draft);
  return draft?.of === of ? draft.notes : NOTHING;
}

export function draftOf(title: string | undefined, step: string): string {
  return `${step} ${title ?? ''}`;
}

/** Puts down more of a mix; what was put down of another one is dropped. */
export function putDownWeighed(of: string, notes: MixNotes): void {
  const { draft } = weighedStore.getState();
  keepDraft({ of, notes: { ...(draft?.of === of ? draft.notes : {}), ...notes } });
}

/** It stands in the log now. */
export function dropWeighed(of: string): void {
  if (weighedStore.getState().draft?.of === of) keepDraft(null);
}

const NOTHING: MixNotes = {};

function keepDraft(draft: WeighedDraft | null): void {
  weighedStore.setState({ draft });
  try {
    if (draft === null) sessionStorage.removeItem(KEY);
    else sessionStorage.setItem(KEY, JSON.stringify(draft));
  } catch {
    // Blocked or full: it lasts until the page is closed.
  }
}

function readDraft(): WeighedDraft | null {
  try {
    const kept = JSON.parse(sessionStorage.getItem(KEY) ?? 'null') as Partial<WeighedDraft> | null;
    if (typeof kept?.of !== 'string' || typeof kept.notes !== 'object' || kept.notes === null) return null;
    return { of: kept.of, notes: soundNotes(kept.notes) };
  } catch {
    return null;
  }
}

function soundNotes({ massA, massB, packA, packB }: MixNotes): MixNotes {
  return {
    ...(isMass(massA) && { massA }),
    ...(isMass(massB) && { massB }),
    ...(typeof packA === 'string' && { packA }),
    ...(typeof packB === 'string' && { packB }),
  };
}

function isMass(value: unknown): value is number {
  return typeof value === 'number' && value > 0 && Number.isFinite(value);
}
