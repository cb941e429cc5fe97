/**
 * What the person has in hand: step, part, tool, brush, units. Nothing here is part of the job. Units and theme are kept on the
 * device; everything else starts afresh.
 */
import { useStore } from 'zustand/react';
import { createStore } from 'zustand/vanilla';
import type { Mm, Rad } from '../../geometry/units.ts';
import type { ScreenUnits } from '../fields/quantity-units.ts';
import { keepView, keptView, type Theme } from './kept-view.ts';

export type StepName = 'part' | 'wear' | 'fill' | 'balance' | 'clearance' | 'plan' | 'test' | 'sheet';
export type ToolName = 'turn' | 'brush' | 'patch' | 'area' | 'pit' | 'edge' | 'readings' | 'straightedge';

export interface Brush {
  readonly mode: 'set' | 'add' | 'smooth' | 'clear';
  readonly radius: Mm;
  readonly depth: Mm;
  readonly edge: 'hard' | 'soft';
  /** Share of the way to the mean around it that one smoothing pass takes a cell, 0..1. */
  readonly strength: number;
}

/** How plate and impeller stand in the picture of both. */
export interface AssemblyView {
  /** Which gap is drawn. */
  readonly state: GapState;
  /** How far the plate is pulled off, mm; 0 at the true gap. */
  readonly apart: Mm;
  /** Of the rotor about the shaft, 0 to a whole turn. */
  readonly turn: Rad;
  /** A drag turns the rotor in place of the view. */
  readonly dragsRotor: boolean;
  readonly isCut: boolean;
  /** Direction the cut through the shaft runs in. */
  readonly cut: Rad;
}

export type GapState = 'as found' | 'filled' | 'coated';

export interface ViewState {
  readonly step: StepName;
  /** Id of the chosen part. The job may not have it (any more): take the first part then. */
  readonly part: string;
  readonly face: string;
  readonly tool: ToolName;
  readonly brush: Brush;
  readonly units: ScreenUnits;
  readonly theme: Theme;
  /** How many times its true depth the wear is drawn, 1..10. */
  readonly exaggeration: number;
  readonly assembly: AssemblyView;
  /** Place in the part's list of marks. */
  readonly selectedMark: number | null;
  /** The bench screen stands before everything else. */
  readonly isBenchOpen: boolean;
  /** Number of the mix whose stretches stand out on the part. */
  readonly hoverBatch: number | null;
  readonly hoverRegion: string | null;
  /** Path in the job file of the dimension in hand. */
  readonly editingField: string | null;
  /** Text a field was given and could not take, by path in the job file: still there when its panel is opened again. */
  readonly drafts: Readonly<Record<string, string>>;
  /** Why each draft was not taken, in sentences. */
  readonly draftFaults: Readonly<Record<string, readonly string[]>>;
  set(change: Partial<Omit<ViewState, 'set'>>): void;
}

export const viewStore = createStore<ViewState>()((set) => ({
  step: 'part',
  part: '',
  face: 'face',
  tool: 'turn',
  brush: { mode: 'set', radius: 10, depth: 2, edge: 'soft', strength: 0.5 },
  exaggeration: 1,
  assembly: { state: 'coated', apart: 0, turn: 0, dragsRotor: false, isCut: true, cut: 0.32 },
  selectedMark: null,
  isBenchOpen: false,
  hoverBatch: null,
  hoverRegion: null,
  editingField: null,
  drafts: {},
  draftFaults: {},
  ...keptView(),
  set: (change) => set(change),
}));

viewStore.subscribe((now, before) => {
  if (now.units !== before.units || now.theme !== before.theme)
    keepView({ units: now.units, theme: now.theme });
});

export function useView<T>(select: (state: ViewState) => T): T {
  return useStore(viewStore, select);
}
