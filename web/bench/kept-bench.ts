import type { KeptClock } from './bench-clock.ts';

/** What this device remembers of its bench between visits. */
export interface KeptBench {
  readonly clock: KeptClock | null;
  readonly isMuted: boolean;
  readonly isKeptAwake: boolean;
}

/** The part of the browser's storage that is used here. */
type Storage = Pick<globalThis.Storage, 'getItem' | 'setItem'>;

const KEY = 'fettle-bench';

/** What is kept; sound on, no clock and nothing kept awake where nothing can be read or it makes no sense. */
export function keptBench(storage: () => Storage = deviceStorage): KeptBench {
  const kept = readRecord(storage);
  return {
    clock: keptClock(kept.clock),
    isMuted: kept.isMuted === true,
    isKeptAwake: kept.isKeptAwake === true,
  };
}

/** Keeps it. Where the device refuses, a clock that is set back while the page is closed goes unnoticed; nothing can be done about that. */
export function keepBench(kept: KeptBench, storage: () => Storage = deviceStorage): void {
  try {
    storage().setItem(KEY, JSON.stringify(kept));
  } catch {
    // Blocked or full.
  }
}

function keptClock(kept: unknown): KeptClock | null {
  if (!isRecord(kept)) return null;
  const { seen, back, backAt } = kept;
  if (!isMoment(seen) || !isMoment(back)) return null;
  return { seen, back, backAt: isMoment(backAt) ? backAt : null };
}

function isMoment(value: unknown): value is number {
  return typeof value === 'number' && Number.isFinite(value) && value >= 0;
}

function readRecord(storage: () => Storage): Readonly<Record<string, unknown>> {
  try {
    const kept: unknown = JSON.parse(storage().getItem(KEY) ?? '{}');
    return isRecord(kept) ? kept : {};
  } catch {
    return {};
  }
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}

/** Reading the property itself throws where storage is blocked. */
function deviceStorage(): Storage {
  return globalThis.localStorage;
}
