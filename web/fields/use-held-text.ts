import { useEffect, useRef, useState } from 'react';
import { useView, viewStore } from '../view/view-store.ts';

/** The text of a field between typing and Enter. */
export interface HeldText {
  readonly text: string;
  /** Why the text was not taken, in sentences. */
  readonly faults: readonly string[];
  /** Something was typed since the field was last settled. */
  readonly isTyped: boolean;
  type(text: string): void;
  /** Ends the typing: refused text stays with its faults, also when the panel is left; taken text gives way to the value. */
  settle(text: string, faults: readonly string[]): void;
  /** Back to the value. */
  restore(): void;
}

/**
 * Keeps what is typed until it is committed, and what was refused until it is put right: a field never throws a person's text away.
 * @param path   of the value in the job file
 * @param value  as the field shows it
 */
export function useHeldText(path: string, value: string): HeldText {
  const draft = useView((view) => view.drafts[path]);
  const faults = useView((view) => view.draftFaults[path]) ?? NONE;
  const [typed, setTyped] = useState<string | null>(null);
  useLeavingOpen(path, typed);

  return {
    text: typed ?? draft ?? value,
    faults,
    isTyped: typed !== null,
    type: setTyped,
    settle(text, refused) {
      if (refused.length > 0) keepDraft(path, text, refused);
      else dropDraft(path);
      setTyped(null);
    },
    restore() {
      dropDraft(path);
      setTyped(null);
    },
  };
}

/** Marks the value in hand, so that its dimension is drawn on the part. */
export function takeInHand(path: string): void {
  viewStore.getState().set({ editingField: path });
}

export function putDown(path: string): void {
  const view = viewStore.getState();
  if (view.editingField === path) view.set({ editingField: null });
}

const NONE: readonly string[] = [];

/** A field that goes away while it is typed in leaves its text as a draft; no blur comes then. */
function useLeavingOpen(path: string, typed: string | null): void {
  const latest = useRef(typed);
  useEffect(() => {
    latest.current = typed;
  }, [typed]);
  useEffect(
    () => () => {
      putDown(path);
      if (latest.current !== null) keepDraft(path, latest.current, NONE);
    },
    [path],
  );
}

function keepDraft(path: string, text: string, faults: readonly string[]): void {
  const { drafts, draftFaults, set } = viewStore.getState();
  set({ drafts: { ...drafts, [path]: text }, draftFaults: { ...draftFaults, [path]: faults } });
}

function dropDraft(path: string): void {
  const view = viewStore.getState();
  const { [path]: draft, ...drafts } = view.drafts;
  const { [path]: _, ...draftFaults } = view.draftFaults;
  if (draft !== undefined) view.set({ drafts, draftFaults });
}
