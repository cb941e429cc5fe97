/**
 * Keeps the figures that move with the brush, from the touched cells alone: by how much each face has lost more metal than the last
 * estimate says, and the depth under the pointer. The estimate's answer takes their place.
 */
import type { DepthMap } from '../../geometry/depth/depth-map.ts';
import type { Mm, Mm3 } from '../../geometry/units.ts';
import { jobStore } from '../job/job-store.ts';
import { estimateStore } from '../worker/estimate-client.ts';
import { type LiveFace, onTouched } from './live-faces.ts';
import { liveTotals } from './live-totals-store.ts';
import { retally, type TileVolumes, tileVolumes } from './tile-volumes.ts';

const faceKey = ({ part, face }: LiveFace): string => `${part}:${face.name}`;

/** Changes of strokes that are in the job and not yet in the estimate, and of the one in hand. */
const taken = new Map<string, Mm3>();
const inHand = new Map<string, Mm3>();
let watched: TileVolumes | null = null;
let pointerDepth: Mm | null = null;
let isWaiting = false;
let isTaking = false;

/** To be called before a tool writes into a map: what stands there now is what changes count from. */
export function watchFace(live: LiveFace): void {
  inHand.clear();
  if (watched === null || watched.map !== live.map) watched = tileVolumes(live.face, live.map);
  else recount(live.map);
}

/**
 * Ends the stroke in hand: its change stays until the estimate knows it, or goes with the stroke.
 * @param add  adds the stroke to the job; false when it was not taken
 */
export function takeStroke(add: () => boolean): boolean {
  isTaking = true;
  const isTaken = add();
  isTaking = false;
  if (isTaken) for (const [key, change] of inHand) taken.set(key, (taken.get(key) ?? 0) + change);
  dropStroke();
  return isTaken;
}

/** The stroke in hand is called off. */
export function dropStroke(): void {
  inHand.clear();
  show();
}

/** Notes the worn depth under the pointer. */
export function notePointerDepth(depth: Mm | null): void {
  if (depth === pointerDepth) return;
  pointerDepth = depth;
  show();
}

onTouched((live, block) => {
  if (watched === null || watched.map !== live.map) return;
  const key = faceKey(live);
  inHand.set(key, (inHand.get(key) ?? 0) + retally(watched, block));
  show();
});

estimateStore.subscribe((now, before) => {
  if (now.job === before.job || now.job !== jobStore.getState().job) return;
  taken.clear();
  show();
});

// Undo, or numbers typed: what the strokes since the last estimate changed says nothing of the job as it is now.
jobStore.subscribe((now, before) => {
  if (isTaking || now.job.parts === before.job.parts) return;
  taken.clear();
  show();
});

/** Marks that came from elsewhere than a brush have changed the map since it was summed. */
function recount(map: DepthMap): void {
  if (watched === null) return;
  retally(watched, { row0: 0, row1: map.grid.rows - 1, column0: 0, columns: map.grid.columns });
}

/** Shows the figures with the next frame; many moves within one make one. */
function show(): void {
  if (isWaiting) return;
  isWaiting = true;
  nextFrame(() => {
    isWaiting = false;
    const lostChange: Record<string, Mm3> = {};
    for (const [key, change] of [...taken, ...inHand]) lostChange[key] = (lostChange[key] ?? 0) + change;
    liveTotals.setState({ lostChange, pointerDepth });
  });
}

function nextFrame(run: () => void): void {
  if (typeof requestAnimationFrame === 'function') requestAnimationFrame(run);
  else queueMicrotask(run);
}
