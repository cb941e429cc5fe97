import { describe, expect, it } from 'vitest';
import { keepView, keptView } from '../../../web/view/kept-view.ts';
import { viewStore } from '../../../web/view/view-store.ts';

/** Storage in memory; with `broken` each use throws, as where it is blocked. */
function storage(kept: string | null, broken = false) {
  let text = kept;
  const use = <T>(what: () => T): T => {
    if (broken) throw new DOMException('blocked', 'SecurityError');
    return what();
  };
  return {
    getItem: () => use(() => text),
    setItem: (_: string, value: string) =>
      use(() => {
        text = value;
      }),
  };
}

describe('units and theme', () => {
  it('come back as they were kept', () => {
    const device = storage(null);
    keepView({ units: 'in', theme: 'dark' }, () => device);
    expect(keptView(() => device)).toEqual({ units: 'in', theme: 'dark' });
  });

  it.each([null, '', 'rubbish', 'null', '7', '{"units":"furlong","theme":3}'])(
    'are mm and the system theme when %s is kept',
    (kept) => {
      expect(keptView(() => storage(kept))).toEqual({ units: 'mm', theme: 'system' });
    },
  );

  it('do without storage that is blocked', () => {
    const blocked = () => storage(null, true);
    expect(keptView(blocked)).toEqual({ units: 'mm', theme: 'system' });
    expect(() => keepView({ units: 'in', theme: 'light' }, blocked)).not.toThrow();
  });

  it('change in the store although this machine has no storage', () => {
    viewStore.getState().set({ units: 'in' });
    expect(viewStore.getState().units).toBe('in');
    viewStore.getState().set({ units: 'mm' });
  });
});
