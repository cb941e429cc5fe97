import { expect, test } from 'vitest';
import { type AwakeLock, type AwakeState, keepAwake } from '../../../web/bench/keep-awake.ts';

/** A device whose page goes out of sight and comes back, and which takes its locks back then. */
function device({ refuses = false }: { readonly refuses?: boolean } = {}) {
  let inSight = true;
  const locks: { isHeld: boolean; told: () => void }[] = [];
  const watchers = new Set<() => void>();
  const request = async (): Promise<AwakeLock> => {
    if (refuses) throw new DOMException('battery low', 'NotAllowedError');
    const lock = { isHeld: true, told: () => {} };
    locks.push(lock);
    return {
      release: async () => {
        lock.isHeld = false;
      },
      addEventListener: (_, told) => {
        lock.told = told;
      },
    };
  };
  return {
    locks,
    watchers,
    turn(isInSight: boolean) {
      inSight = isInSight;
      for (const lock of locks) {
        if (!isInSight && lock.isHeld) {
          lock.isHeld = false;
          lock.told();
        }
      }
      for (const watcher of watchers) watcher();
    },
    used: {
      request,
      isInSight: () => inSight,
      onSight(back: () => void) {
        watchers.add(back);
        return () => watchers.delete(back);
      },
    },
  };
}

/** Lets what was promised come true. */
const settle = () => new Promise((done) => setImmediate(done));

test('the light is asked for again whenever the page comes back into sight', async () => {
  const tablet = device();
  const states: AwakeState[] = [];
  const stop = keepAwake((state) => states.push(state), tablet.used);
  await settle();
  tablet.turn(false);
  tablet.turn(true);
  await settle();
  expect(states).toEqual(['on', 'waiting', 'on']);
  stop();
  expect(tablet.locks.map(({ isHeld }) => isHeld)).toEqual([false, false]);
  expect(tablet.watchers.size).toBe(0);
});

test('a device that cannot, or will not, says so', async () => {
  const states: AwakeState[] = [];
  keepAwake((state) => states.push(state), { ...device().used, request: null });
  keepAwake((state) => states.push(state), device({ refuses: true }).used);
  await settle();
  expect(states).toEqual(['cannot', 'cannot']);
});

test('a lock that comes when it is no more wanted is given back', async () => {
  const tablet = device();
  const states: AwakeState[] = [];
  keepAwake((state) => states.push(state), tablet.used)();
  await settle();
  expect(tablet.locks.map(({ isHeld }) => isHeld)).toEqual([false]);
  expect(states).toEqual([]);
});
