/** How the list of damage is looked at, while the app is open. */
import { useStore } from 'zustand/react';
import { createStore } from 'zustand/vanilla';

export type DamageOrder = 'depth' | 'area' | 'volume';

interface DamageView {
  readonly order: DamageOrder;
  /** The list is folded away on the step that marks. */
  readonly isFolded: boolean;
}

export const damageView = createStore<DamageView>()(() => ({ order: 'depth', isFolded: false }));

export function useDamageView<T>(select: (view: DamageView) => T): T {
  return useStore(damageView, select);
}
