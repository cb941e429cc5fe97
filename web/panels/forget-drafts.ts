import { viewStore } from '../view/view-store.ts';

/**
 * Forgets refused text of fields below a path. For lists whose items move or go: what stood in one item's field must not
 * appear in another's.
 */
export function forgetDrafts(path: string): void {
  const { drafts, draftFaults, set } = viewStore.getState();
  set({ drafts: without(drafts, path), draftFaults: without(draftFaults, path) });
}

function without<T>(kept: Readonly<Record<string, T>>, path: string): Readonly<Record<string, T>> {
  return Object.fromEntries(Object.entries(kept).filter(([field]) => !field.startsWith(path)));
}
