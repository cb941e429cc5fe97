import { useEffect, useRef } from 'react';
import { unlockAlarm } from '../bench/alarm.ts';
import { logOf } from '../bench/step-log.ts';
import { useJob } from '../job/job-store.ts';
import { useEstimate } from '../worker/estimate-client.ts';
import { BenchHead } from './bench/BenchHead.tsx';
import { BenchLog } from './bench/BenchLog.tsx';
import { BenchWork } from './bench/BenchWork.tsx';
import { leaveBench } from './bench/leave-bench.ts';
import { Said } from './bench/Said.tsx';
import { useBenchTime } from './bench/use-bench-time.ts';
import { Notices } from './shell/Notices.tsx';
import './BenchScreen.css';

/** One big screen for gloves: now, next, the time left in this mix and what to weigh for it. */
export function BenchScreen() {
  useBenchTime();
  const screen = useRef<HTMLElement>(null);
  const log = useJob((state) => logOf(state.job));
  const result = useEstimate((state) => state.result);
  // The button that opened it is gone; Tab goes on from the top.
  useEffect(() => screen.current?.focus(), []);
  useEffect(leaveWithEscape, []);
  return (
    <main className="bench" ref={screen} tabIndex={-1} aria-label="At the bench" onPointerDown={unlockAlarm}>
      <BenchHead />
      <Notices />
      <Said />
      {result === null ? (
        <p className="bench-wait">Working out the steps</p>
      ) : (
        <>
          <BenchWork result={result} log={log} />
          <BenchLog result={result} log={log} />
        </>
      )}
    </main>
  );
}

/** Escape goes back, unless a field takes it to put back what stood there. @returns stops it */
function leaveWithEscape(): () => void {
  const onKey = ({ key, target, defaultPrevented }: KeyboardEvent) => {
    const isInField = target instanceof Element && target.closest('input, textarea') !== null;
    if (key === 'Escape' && !defaultPrevented && !isInField) leaveBench();
  };
  window.addEventListener('keydown', onKey);
  return () => window.removeEventListener('keydown', onKey);
}
