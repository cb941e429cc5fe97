import { describe, expect, test } from 'vitest';
import { keepBench, keptBench } from '../../../web/bench/kept-bench.ts';

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

const FRESH = { clock: null, isMuted: false, isKeptAwake: false };

describe('what a device remembers of its bench', () => {
  test('comes back as it was kept', () => {
    const device = storage(null);
    const bench = { clock: { seen: 1e12, back: 3_600_000, backAt: 1e12 }, isMuted: true, isKeptAwake: true };
    keepBench(bench, () => device);
    expect(keptBench(() => device)).toEqual(bench);
  });
  test.each([
    null,
    '',
    'rubbish',
    'null',
    '7',
    '{"clock":7,"isMuted":"no"}',
    '{"clock":{"seen":"now","back":0}}',
    '{"clock":{"seen":5,"back":-1}}',
    '{"clock":{"seen":5,"back":null}}',
  ])('is nothing when %s is kept', (kept) => {
    expect(keptBench(() => storage(kept))).toEqual(FRESH);
  });
  test('is nothing where storage is blocked, without a fault', () => {
    const blocked = () => storage(null, true);
    expect(keptBench(blocked)).toEqual(FRESH);
    expect(() => keepBench(FRESH, blocked)).not.toThrow();
  });
});
