import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shareUnchanged } from '../../../web/job/share-unchanged.ts';

describe('shareUnchanged', () => {
  it('gives the old value back when nothing differs, however the new one was made', () => {
    const before = { parts: [{ id: 'plate', wear: [[1, 2]] }], title: '' };
    expect(shareUnchanged(before, structuredClone(before))).toBe(before);
  });

  it('keeps every branch that did not change', () => {
    const before = {
      parts: [
        { id: 'a', wear: [1] },
        { id: 'b', wear: [2] },
      ],
      repair: { leaveBelow: 1 },
    };
    const after = structuredClone(before);
    after.parts[1].id = 'c';
    const shared = shareUnchanged(before, after);
    expect(shared).toEqual(after);
    expect(shared.parts[0]).toBe(before.parts[0]);
    expect(shared.parts[1].wear).toBe(before.parts[1].wear);
    expect(shared.repair).toBe(before.repair);
  });

  it('a key that went, a key that came and a shorter list are changes', () => {
    expect(shareUnchanged<object>({ a: 1, b: 2 }, { a: 1 })).toEqual({ a: 1 });
    expect(shareUnchanged<object>({ a: 1 }, { a: 1, b: 2 })).toEqual({ a: 1, b: 2 });
    expect(shareUnchanged([1, 2], [1])).toEqual([1]);
  });

  it('always equals the new value and never touches either', () => {
    fc.assert(
      fc.property(fc.jsonValue(), fc.jsonValue(), (before, after) => {
        const copies = [structuredClone(before), structuredClone(after)];
        expect(shareUnchanged<unknown>(before, after)).toEqual(after);
        expect([before, after]).toEqual(copies);
      }),
    );
  });
});
