/**
 * Where the shroud can give metal and how much, from the worn maps: filler is no metal, worn places are left alone, and the wall that
 * must stay is never cut into.
 */
import { cellAt } from '../depth/depth-at.ts';
import { type DepthMap, SAMPLES } from '../depth/depth-map.ts';
import { DAMAGE } from '../fill/label.ts';
import type { BlindHoles, Correction } from '../job/job.ts';
import type { Face } from '../part/face.ts';
import type { Mm, Rad } from '../units.ts';
import { type Shroud, shroudSizes, wallToLeave } from './shroud.ts';
import type { Spot } from './spots.ts';
import { turnBetween } from './vector.ts';

export interface ShroudRoom {
  readonly inner: Mm;
  readonly outer: Mm;
  readonly thickness: Mm;
  /** The wall that must stay, mm. */
  readonly leave: Mm;
  /** True where the back is sound: on the shroud, neither worn nor cut nor drilled under. */
  isSound(radius: Mm, angle: Rad): boolean;
  /** How deep a sound place of the back may be cut, mm; 0 where it may not. Nothing is cut under a thin vane root. */
  depthOnBack(radius: Mm, angle: Rad): Mm;
  /** How deep the vane side is worn there, mm. */
  wornFront(radius: Mm, angle: Rad): Mm;
  /** How deep the back is worn or cut there, mm. */
  goneFromBack(radius: Mm, angle: Rad): Mm;
  /** True in a hole drilled from the rim. */
  isDrilled(radius: Mm, angle: Rad): boolean;
  /** True where neither a vane nor a pad stands on the vane side. */
  isClear(radius: Mm, angle: Rad): boolean;
}

/** Wear of the vane side this near to a vane thins its root, mm. From memory: about the fillet a cast vane stands in. */
const ROOT: Mm = 3;
/** A root is thin where more than this share of the shroud is worn away beside it. From memory: castings vary by as much. */
const THIN = 0.1;

/**
 * @param back   the back as worn, the corrections taken cut into it
 * @param taken  the corrections taken
 */
export function shroudRoom(shroud: Shroud, back: DepthMap, taken: readonly Correction[]): ShroudRoom {
  const { inner, outer, thickness } = shroudSizes(shroud);
  const leave = wallToLeave(shroud);
  const front = shroud.front.face;
  const wornFront = (radius: Mm, angle: Rad): Mm => deepestAt(front, shroud.front.map, radius, angle);
  const goneFromBack = (radius: Mm, angle: Rad): Mm => deepestAt(shroud.back.face, back, radius, angle);
  const isVane = (radius: Mm, angle: Rad): boolean => {
    const cell = cellAt(front, radius, angle);
    return cell >= 0 && front.cover !== null && front.cover[cell] < 1;
  };
  const isDrilled = (radius: Mm, angle: Rad): boolean => inRimHole(taken, outer, radius, angle);
  const isSound = (radius: Mm, angle: Rad): boolean =>
    radius > inner - EDGE_DUST &&
    radius < outer + EDGE_DUST &&
    goneFromBack(radius, angle) <= DAMAGE &&
    !isDrilled(radius, angle);
  const wallAt = onceEachCell(front, (radius, angle) => {
    const worn = wornFront(radius, angle);
    const isThinRoot = worn > THIN * thickness && isNear(isVane, radius, angle);
    return isThinRoot ? 0 : Math.max(0, thickness - leave - worn);
  });
  return {
    inner,
    outer,
    thickness,
    leave,
    wornFront,
    goneFromBack,
    isDrilled,
    isSound,
    isClear: (radius, angle) =>
      cellAt(front, radius, angle) >= 0 && !isVane(radius, angle) && !isUnderPad(taken, radius, angle),
    depthOnBack: (radius, angle) => (isSound(radius, angle) ? wallAt(radius, angle) : 0),
  };
}

/** A quantity that is even over a cell of the face, worked out where it is first asked for. */
function onceEachCell(face: Face, quantity: (radius: Mm, angle: Rad) => number): typeof quantity {
  const known = new Float32Array(face.grid.rows * face.grid.columns).fill(-1);
  return (radius, angle) => {
    const cell = cellAt(face, Math.min(radius, lastRow(face)), angle);
    if (cell < 0) return quantity(radius, angle);
    if (known[cell] < 0) known[cell] = quantity(radius, angle);
    return known[cell];
  };
}

/** Whether it is so within `ROOT` of a place, looked at in eight directions. */
function isNear(isSo: (radius: Mm, angle: Rad) => boolean, radius: Mm, angle: Rad): boolean {
  for (let i = 0; i < 8; i++) {
    const turn = (Math.PI / 4) * i;
    const [x, y] = [radius + ROOT * Math.cos(turn), ROOT * Math.sin(turn)];
    if (isSo(Math.hypot(x, y), angle + Math.atan2(y, x))) return true;
  }
  return false;
}

/** The same room with discs and sectors that are spoken for. */
export function withSpots(room: ShroudRoom, spots: readonly Spot[]): ShroudRoom {
  const isTaken = (radius: Mm, angle: Rad): boolean => spots.some((spot) => isIn(spot, radius, angle));
  return {
    ...room,
    isSound: (radius, angle) => !isTaken(radius, angle) && room.isSound(radius, angle),
    depthOnBack: (radius, angle) => (isTaken(radius, angle) ? 0 : room.depthOnBack(radius, angle)),
    isDrilled: (radius, angle) => isTaken(radius, angle) || room.isDrilled(radius, angle),
  };
}

/** A spot may end on the edge and miss it by float dust, mm. */
const EDGE_DUST: Mm = 1e-6;

function isIn(spot: Spot, radius: Mm, angle: Rad): boolean {
  if (spot.kind === 'disc') {
    const turn = angle - spot.angle;
    return Math.hypot(radius * Math.cos(turn) - spot.radius, radius * Math.sin(turn)) < spot.reach;
  }
  if (radius < spot.inner || radius > spot.outer) return false;
  return Math.abs(turnBetween((spot.from + spot.to) / 2, angle)) < (spot.to - spot.from) / 2;
}

function inRimHole(taken: readonly Correction[], rim: Mm, radius: Mm, angle: Rad): boolean {
  return taken.some(
    (correction) => correction.kind === 'holes' && isUnderRim(correction, rim, radius, angle),
  );
}

function isUnderRim({ face, at, radius: half, depth }: BlindHoles, rim: Mm, radius: Mm, angle: Rad): boolean {
  if (face !== 'shroud/rim') return false;
  return at.some(([centre]) => {
    const turn = angle - centre;
    return radius * Math.cos(turn) > rim - depth && Math.abs(radius * Math.sin(turn)) < half;
  });
}

function isUnderPad(taken: readonly Correction[], radius: Mm, angle: Rad): boolean {
  return taken.some((correction) => {
    if (correction.kind !== 'putty') return false;
    const [inner, outer] = correction.first;
    const [from, to] = correction.second;
    return isIn({ kind: 'sector', inner, outer, from, to }, radius, angle);
  });
}

/** The deepest of the cell a place lies in, mm; 0 off the face. */
function deepestAt(face: Face, map: DepthMap, radius: Mm, angle: Rad): Mm {
  const cell = cellAt(face, Math.min(radius, lastRow(face)), angle);
  if (cell < 0) return 0;
  const slot = map.slot[cell];
  if (slot < 0) return map.depth[cell];
  let deepest = 0;
  for (let i = slot * SAMPLES; i < (slot + 1) * SAMPLES; i++) deepest = Math.max(deepest, map.samples[i]);
  return deepest;
}

/** The rim itself belongs to the last row. */
function lastRow({ grid }: Face): Mm {
  return grid.u0 + (grid.rows - 0.5) * grid.du;
}
