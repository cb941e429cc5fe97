import { type DBSchema, openDB } from 'idb';
import type { KeptAt, KeptHead } from './kept-job.ts';

/** Where kept jobs lie. Every call rejects when the device refuses. */
export interface Shelf {
  heads(): Promise<readonly KeptHead[]>;
  read(slot: string): Promise<unknown>;
  /** Nothing is waited for before the value is handed over, so that it also works while the page is being closed. */
  write(head: KeptHead, value: unknown): Promise<void>;
  /** Takes a slot away if it still is as it was after so many writes. */
  remove(at: KeptAt): Promise<void>;
  /** Moves what cannot be read out of the way without throwing it out. */
  setAside(slot: string): Promise<void>;
}

/** The browser's own database `fettle`. */
export async function deviceShelf(): Promise<Shelf> {
  const database = await openDB<FettleDatabase>('fettle', 1, {
    upgrade(fresh) {
      fresh.createObjectStore('heads', { keyPath: 'slot' });
      fresh.createObjectStore('jobs');
      fresh.createObjectStore('aside', { autoIncrement: true });
    },
  });
  return {
    heads: () => database.getAll('heads'),
    read: (slot) => database.get('jobs', slot),
    async write(head, value) {
      const change = database.transaction(['heads', 'jobs'], 'readwrite');
      const puts = [change.objectStore('jobs').put(value, head.slot), change.objectStore('heads').put(head)];
      // Said now, the page need not live to see the two done.
      change.commit();
      await Promise.all([...puts, change.done]);
    },
    async remove(at) {
      const change = database.transaction(['heads', 'jobs'], 'readwrite');
      const head = await change.objectStore('heads').get(at.slot);
      if (head?.writes === at.writes) {
        await change.objectStore('heads').delete(at.slot);
        await change.objectStore('jobs').delete(at.slot);
      }
      await change.done;
    },
    async setAside(slot) {
      const change = database.transaction(['heads', 'jobs', 'aside'], 'readwrite');
      const value: unknown = await change.objectStore('jobs').get(slot);
      await change.objectStore('aside').add(value);
      await change.objectStore('heads').delete(slot);
      await change.objectStore('jobs').delete(slot);
      await change.done;
    },
  };
}

interface FettleDatabase extends DBSchema {
  heads: { key: string; value: KeptHead };
  jobs: { key: string; value: unknown };
  aside: { key: number; value: unknown };
}
