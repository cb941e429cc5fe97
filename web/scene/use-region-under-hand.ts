import { useEffect } from 'react';
import { cellAt } from '../../geometry/depth/depth-at.ts';
import { viewStore } from '../view/view-store.ts';
import { estimateStore } from '../worker/estimate-client.ts';
import type { Hover, Hovered } from './hover.ts';
import { isMarking } from './marking.ts';

/** The damage region that is pointed at on a picture lights up as if its row in the list were pointed at, while no tool marks. */
export function useRegionUnderHand(hover: Hover): void {
  useEffect(() => {
    let lit: string | null = null;
    const light = (next: string | null) => {
      if (next === lit) return;
      const { hoverRegion, set } = viewStore.getState();
      // A row that is pointed at keeps its own.
      if (next !== null || hoverRegion === lit) set({ hoverRegion: next });
      lit = next;
    };
    const stop = hover.onChange(() => light(regionUnder(hover.now())));
    return () => {
      stop();
      light(null);
    };
  }, [hover]);
}

/** Id of the damage region under the pointer; null where there is none, or on a step that shows no list of them. */
function regionUnder(hovered: Hovered | null): string | null {
  const { step } = viewStore.getState();
  if (hovered === null || !hovered.isOnFace || isMarking() || (step !== 'wear' && step !== 'fill'))
    return null;
  const { live, place } = hovered;
  const { rows, columns } = live.face.grid;
  const known = estimateStore
    .getState()
    .regions.find(({ part, face }) => part === live.part && face === live.face.name);
  if (known === undefined || known.rows !== rows || known.columns !== columns) return null;
  const cell = cellAt(live.face, ...place);
  const label = cell < 0 ? 0 : known.label[cell];
  return label > 0 ? known.ids[label - 1] : null;
}
