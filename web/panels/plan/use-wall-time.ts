import { useEffect, useState } from 'react';
import { wallTime } from '../../../geometry/job/shop-clock.ts';
import type { LocalTime } from '../../../geometry/units.ts';

const MINUTE_MS = 60_000;

/** The time by the device's clock, to the minute. Read anew each minute and whenever the page comes back into sight: a tablet that slept has not counted. */
export function useWallTime(): LocalTime {
  const [now, setNow] = useState(() => wallTime(new Date()));
  useEffect(() => {
    let timer: ReturnType<typeof setTimeout> | undefined;
    const look = () => {
      clearTimeout(timer);
      setNow(wallTime(new Date()));
      timer = setTimeout(look, MINUTE_MS - (Date.now() % MINUTE_MS));
    };
    look();
    document.addEventListener('visibilitychange', look);
    return () => {
      clearTimeout(timer);
      document.removeEventListener('visibilitychange', look);
    };
  }, []);
  return now;
}
