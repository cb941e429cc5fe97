/**
 * Pieces of the screen that the first page does without. They are fetched as soon as it stands, whether anyone asks for them or not:
 * a step then opens at once, also when the line has gone by then. The sheet is not among them: it may be printed at any time.
 */
import type { ComponentType } from 'react';
import { useStore } from 'zustand/react';
import { createStore } from 'zustand/vanilla';
import { fetchSamples } from '../../files/samples.ts';

const FETCH = {
  impeller: async () => (await import('../part/ImpellerForm.tsx')).ImpellerForm,
  wear: async () => (await import('../WearPanel.tsx')).WearPanel,
  balance: async () => (await import('../BalancePanel.tsx')).BalancePanel,
  fill: async () => (await import('../FillPanel.tsx')).FillPanel,
  clearance: async () => (await import('../ClearancePanel.tsx')).ClearancePanel,
  test: async () => (await import('../TestPanel.tsx')).TestPanel,
  plan: async () => (await import('../PlanPanel.tsx')).PlanPanel,
  bench: async () => (await import('../BenchScreen.tsx')).BenchScreen,
  flat: async () => (await import('../../scene/FlatPicture.tsx')).FlatPicture,
} as const satisfies Record<string, () => Promise<ComponentType>>;

export type LaterPiece = keyof typeof FETCH;

/** `missing`: it could not be fetched. Browsers do not try that again until the page is loaded anew. */
type LaterState = ComponentType | 'coming' | 'missing';

const laterPieces = createStore<Readonly<Partial<Record<LaterPiece, LaterState>>>>()(() => ({}));

/** The piece as far as it has come; once it is there it is drawn without a pause. */
export function useLaterPiece(piece: LaterPiece): LaterState {
  return useStore(laterPieces, (pieces) => pieces[piece] ?? 'coming');
}

export function fetchPieces(): void {
  fetchSamples();
  for (const piece of Object.keys(FETCH) as LaterPiece[]) void fetchPiece(piece);
}

async function fetchPiece(piece: LaterPiece): Promise<void> {
  try {
    laterPieces.setState({ [piece]: await FETCH[piece]() });
  } catch {
    laterPieces.setState({ [piece]: 'missing' });
  }
}
