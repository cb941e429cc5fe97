import { useEffect } from 'react';
import { toFacePoint } from '../../geometry/part/face.ts';
import { viewStore } from '../view/view-store.ts';
import { estimateStore } from '../worker/estimate-client.ts';
import { batchAt } from './batch-outline.ts';
import type { Hover, Hovered } from './hover.ts';

/** The mix that goes where the pointer is stands out as if its row in the list were pointed at. */
export function useBatchUnderHand(hover: Hover): void {
  useEffect(() => {
    let lit: number | null = null;
    const light = (next: number | null) => {
      if (next === lit) return;
      const { hoverBatch, set } = viewStore.getState();
      // A row that is pointed at keeps its own.
      if (next !== null || hoverBatch === lit) set({ hoverBatch: next });
      lit = next;
    };
    const stop = hover.onChange(() => light(batchUnder(hover.now())));
    return () => {
      stop();
      light(null);
    };
  }, [hover]);
}

function batchUnder(hovered: Hovered | null): number | null {
  if (hovered === null || !hovered.isOnFace || viewStore.getState().step !== 'fill') return null;
  const { live, place } = hovered;
  const batches = estimateStore.getState().result?.filler.batches ?? [];
  return batchAt(batches, live.part, live.face, toFacePoint(live.face, ...place));
}
