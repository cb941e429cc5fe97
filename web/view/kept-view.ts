import type { ScreenUnits } from '../fields/quantity-units.ts';

export type Theme = 'system' | 'light' | 'dark';

/** The choices that outlive a visit. */
export interface KeptView {
  readonly units: ScreenUnits;
  readonly theme: Theme;
}

/** The part of the browser's storage that is used here. */
type Storage = Pick<globalThis.Storage, 'getItem' | 'setItem'>;

const KEY = 'fettle-view';

/** The choices kept on this device; mm and the system's theme where nothing is kept, nothing can be read or it makes no sense. */
export function keptView(storage: () => Storage = deviceStorage): KeptView {
  const kept = readRecord(storage);
  return {
    units: kept.units === 'in' ? 'in' : 'mm',
    theme: kept.theme === 'light' || kept.theme === 'dark' ? kept.theme : 'system',
  };
}

/** Keeps the choices. Where the device refuses, they last until the page is closed; that is worth no message. */
export function keepView(view: KeptView, storage: () => Storage = deviceStorage): void {
  try {
    storage().setItem(KEY, JSON.stringify(view));
  } catch {
    // Blocked or full.
  }
}

function readRecord(storage: () => Storage): Readonly<Record<string, unknown>> {
  try {
    const kept: unknown = JSON.parse(storage().getItem(KEY) ?? '{}');
    return typeof kept === 'object' && kept !== null ? { ...kept } : {};
  } catch {
    return {};
  }
}

/** Reading the property itself throws where storage is blocked. */
function deviceStorage(): Storage {
  return globalThis.localStorage;
}
