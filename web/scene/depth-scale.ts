import { useMemo } from 'react';
import { contourStep } from '../../geometry/sheet/flat-map.ts';
import type { Mm } from '../../geometry/units.ts';
import { useView } from '../view/view-store.ts';
import type { LivePart } from '../wear/live-faces.ts';

/** What the depth colours and contours of a part stand for; the same in every picture of it. */
export interface DepthScale {
  /** Deepest wear of the part, mm. */
  readonly deepest: Mm;
  /** What the scale is made for: the deepest wear, or the depth of the tool in hand. */
  readonly most: Mm;
  /** mm between contour lines. */
  readonly step: Mm;
  /** Depth at the deep end of the colours. */
  readonly to: Mm;
}

/**
 * The scale of a part's wear. While a tool that presses is in hand its depth is on the scale already, so that the colours
 * do not jump when it touches the part.
 */
export function useDepthScale(live: LivePart | undefined): DepthScale {
  const coming = useView(({ step, tool, brush }) => {
    if (step !== 'wear' || tool === 'turn') return 0;
    return tool === 'brush' && (brush.mode === 'smooth' || brush.mode === 'clear') ? 0 : brush.depth;
  });
  const deepest = useMemo(() => (live === undefined ? 0 : deepestOf(live)), [live]);
  const wall = live?.part.body.thickness ?? 0;
  return useMemo(() => depthScale(deepest, Math.min(coming, wall)), [deepest, coming, wall]);
}

/** A depth this share of a step over a round one still ends the scale there. */
const DUST = 0.02;

/** @param coming  depth of the tool in hand, mm */
export function depthScale(deepest: Mm, coming: Mm): DepthScale {
  const most = Math.max(deepest, coming);
  const step = contourStep(most);
  const to = Math.max(1, Math.ceil(most / step - DUST)) * step;
  return { deepest, most, step, to: Math.round(to * 100) / 100 };
}

function deepestOf({ faces }: LivePart): Mm {
  let deepest = 0;
  for (const { map } of faces) {
    for (let cell = 0; cell < map.depth.length; cell++)
      if (map.depth[cell] > deepest) deepest = map.depth[cell];
  }
  return deepest;
}
