/**
 * Keeps the figures that move with the brush, from the touched cells alone: by how much each face has lost more metal than the last
 * estimate says, and the depth under the pointer. The estimate's answer takes their place.
 */
import type { DepthMap } from '../../geometry/depth/depth-map.ts';
import type { Mm, Mm3, Mm4 } from '../../geometry/units.ts';
import { jobStore } from '../job/job-store.ts';
import { estimateStore } from '../worker/estimate-client.ts';
import { holdMaps, type LiveFace, letMapsGo, onTouched } from './live-faces.ts';
import { liveTotals } from './live-totals-store.ts';
import { retally, type TileVolumes, tileVolumes } from './tile-volumes.ts';

/** Metal lost on a face since the last estimate, and its first moments about the shaft. */
interface Change {
  readonly part: string;
  readonly volume: Mm3;
  readonly x: Mm4;
  readonly y: Mm4;
}

const faceKey = ({ part, face }: LiveFace): string => `${part}:${face.name}`;

/** Changes of strokes that are in the job and not yet in the estimate, and of the one in hand. */
const taken = new Map<string, Change>();
const inHand = new Map<string, Change>();
let watched: TileVolumes | null = null;
let pointerDepth: Mm | null = null;
let isWaiting = false;
let isTaking = false;

/** To be called before a tool writes into a map: what stands there now is what changes count from. */
export function watchFace(live: LiveFace): void {
  holdMaps();
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
  if (isTaken) for (const [key, change] of inHand) taken.set(key, sum(taken.get(key), change));
  dropStroke();
  return isTaken;
}

/** The stroke in hand is called off. */
export function dropStroke(): void {
  letMapsGo();
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
  const volume = retally(watched, block);
  // A dab of the brush is small beside the part: its middle is where it pulls.
  const { grid } = live.face;
  const u = grid.u0 + ((block.row0 + block.row1 + 1) / 2) * grid.du;
  const v = grid.v0 + (block.column0 + block.columns / 2) * grid.dv;
  const [x, y] = live.face.position(u, v, 0);
  inHand.set(key, sum(inHand.get(key), { part: live.part, volume, x: volume * x, y: volume * y }));
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
    const lostPull: Record<string, readonly [Mm4, Mm4]> = {};
    for (const [key, { part, volume, x, y }] of [...taken, ...inHand]) {
      lostChange[key] = (lostChange[key] ?? 0) + volume;
      const [pullX, pullY] = lostPull[part] ?? [0, 0];
      lostPull[part] = [pullX + x, pullY + y];
    }
    liveTotals.setState({ lostChange, lostPull, pointerDepth });
  });
}

function sum(before: Change | undefined, change: Change): Change {
  if (before === undefined) return change;
  return {
    part: change.part,
    volume: before.volume + change.volume,
    x: before.x + change.x,
    y: before.y + change.y,
  };
}

function nextFrame(run: () => void): void {
  if (typeof requestAnimationFrame === 'function') requestAnimationFrame(run);
  else queueMicrotask(run);
}
