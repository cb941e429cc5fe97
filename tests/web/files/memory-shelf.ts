import type { KeptHead } from '../../../web/files/kept-job.ts';
import type { Shelf } from '../../../web/files/shelf.ts';

export interface MemoryShelf extends Shelf {
  readonly slots: Map<string, { readonly head: KeptHead; readonly value: unknown }>;
  readonly aside: unknown[];
  /** Every call rejects while this is true, as on a device that blocks its storage. */
  isBlocked: boolean;
}

/** A shelf in memory that copies what it is given, as a device does. */
export function memoryShelf(): MemoryShelf {
  const slots: MemoryShelf['slots'] = new Map();
  const refuseWhenBlocked = async () => {
    if (shelf.isBlocked) throw new DOMException('blocked', 'SecurityError');
  };
  const shelf: MemoryShelf = {
    slots,
    aside: [],
    isBlocked: false,
    async heads() {
      await refuseWhenBlocked();
      return [...slots.values()].map(({ head }) => structuredClone(head));
    },
    async read(slot) {
      await refuseWhenBlocked();
      return structuredClone(slots.get(slot)?.value);
    },
    async write(head, value) {
      const copy = { head: structuredClone(head), value: structuredClone(value) };
      await refuseWhenBlocked();
      slots.set(head.slot, copy);
    },
    async remove({ slot, writes }) {
      await refuseWhenBlocked();
      if (slots.get(slot)?.head.writes === writes) slots.delete(slot);
    },
    async setAside(slot) {
      await refuseWhenBlocked();
      shelf.aside.push(slots.get(slot)?.value);
      slots.delete(slot);
    },
  };
  return shelf;
}
