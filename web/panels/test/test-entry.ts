/**
 * What is typed for the flow test and not in the job yet: the row that adds a point, the table to be pasted, the run to be added.
 * Lasts while the app is open, whatever panel is shown.
 */
import { useStore } from 'zustand/react';
import { createStore } from 'zustand/vanilla';
import type { RunKind } from './test-edits.ts';

/** Flow, head and power as typed. */
export type RowTexts = readonly [string, string, string];

interface TestEntry {
  /** By the path of the run. */
  readonly rows: Readonly<Record<string, RowTexts>>;
  readonly pasted: Readonly<Record<string, string>>;
  /** Of the run to be added; null takes what the runs still lack. */
  readonly kind: RunKind | null;
  readonly speed: number | null;
  readonly powerAt: 'shaft' | 'motor' | null;
}

const NOTHING: TestEntry = { rows: {}, pasted: {}, kind: null, speed: null, powerAt: null };
const entryStore = createStore<TestEntry>()(() => NOTHING);

export function useTestEntry<T>(select: (entry: TestEntry) => T): T {
  return useStore(entryStore, select);
}

export const EMPTY_ROW: RowTexts = ['', '', ''];

export function setRow(run: string, texts: RowTexts): void {
  entryStore.setState(({ rows }) => ({ rows: { ...rows, [run]: texts } }));
}

export function setPasted(run: string, text: string): void {
  entryStore.setState(({ pasted }) => ({ pasted: { ...pasted, [run]: text } }));
}

export function setNewRun(change: Partial<Pick<TestEntry, 'kind' | 'speed' | 'powerAt'>>): void {
  entryStore.setState(change);
}

/** For when runs move or go: what stood beside one must not appear beside another. */
export function forgetEntry(): void {
  entryStore.setState(NOTHING, true);
}
