import { useEffect, useRef } from 'react';
import { estimateStore, useEstimate } from '../../worker/estimate-client.ts';

/** Does something with the sheet: at once, or as soon as it is that of the job on the screen. Paper with yesterday's figures helps nobody. */
export function useOnceDrawn(): (act: () => void) => void {
  const isPending = useEstimate((state) => state.isSheetPending);
  const waiting = useRef<(() => void) | null>(null);
  useEffect(() => {
    if (isPending) return;
    const act = waiting.current;
    waiting.current = null;
    act?.();
  }, [isPending]);
  return (act) => {
    // Leaving a field may have changed the job a moment ago.
    if (estimateStore.getState().isSheetPending) waiting.current = act;
    else act();
  };
}
