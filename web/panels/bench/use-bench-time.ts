import { useEffect } from 'react';
import { soundAlarm } from '../../bench/alarm.ts';
import type { Reading } from '../../bench/bench-clock.ts';
import { benchStore, watchBench } from '../../bench/bench-store.ts';

/** Often enough for a countdown that misses no second, ms. */
const LOOK_EVERY = 250;

/** The clocks of this device. */
export function readClocks(): Reading {
  return { wall: Date.now(), mono: performance.now() };
}

/** Keeps the bench's time while its screen is open, and looks at once when the device wakes. */
export function useBenchTime(): void {
  useEffect(() => {
    const watch = watchBench({
      read: readClocks,
      alert: (tone) => soundAlarm(tone, benchStore.getState().isMuted),
    });
    watch.look();
    const timer = setInterval(watch.look, LOOK_EVERY);
    const wakings = ['visibilitychange', 'pageshow', 'focus'] as const;
    for (const name of wakings) window.addEventListener(name, watch.look, true);
    return () => {
      clearInterval(timer);
      for (const name of wakings) window.removeEventListener(name, watch.look, true);
      watch.stop();
    };
  }, []);
}
