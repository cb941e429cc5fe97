import type { Patch } from '../job/job.ts';
import type { Face } from '../part/face.ts';
import { type Mm, TURN } from '../units.ts';
import { blockWithin, type CellBlock, stepAlong } from './chart.ts';
import type { DepthMap } from './depth-map.ts';
import { isOnMetal, type Press, pressCut, pressWhole, type Run } from './press.ts';

/**
 * A box in the face's two coordinates, of one depth or ramping along the first. Writes into `map`.
 * An angle range runs counter-clockwise from its first to its second value and may pass 360; a whole turn or more is the ring.
 * @returns  false when it touches no cell of the face
 * Accuracy: edges true to 1/32 cell. Source: job format, "Mark"; tests/geometry/depth/patch.test.ts
 */
export function applyPatch(map: DepthMap, face: Face, patch: Patch): boolean {
  const { grid } = map;
  const isAlongV = face.columnsAre === 'first';
  const [uRange, vRange] = isAlongV ? [patch.second, patch.first] : [patch.first, patch.second];
  const across = range(uRange, face, false);
  const along = range(vRange, face, grid.wraps);
  const block = blockWithin(
    face,
    across.from,
    across.from + across.length,
    along.from,
    along.from + along.length,
  );
  if (block === null) return false;
  const ramped = isAlongV ? along : across;
  const [depth0, depth1] = patch.depth;
  const isEven = depth0 === depth1;
  const depthPast = (past: number): Mm =>
    isEven ? depth0 : depth0 + (depth1 - depth0) * (past / ramped.length);
  const mark: Press = {
    blend: patch.blend,
    depthAt: (u, v) => {
      const du = across.offset(u);
      const dv = along.offset(v);
      if (du < 0 || du > across.length || dv < 0 || dv > along.length) return -1;
      return depthPast(isAlongV ? dv : du);
    },
  };
  // A ramp is deepest at one end, its own or the face's: the cells there are sampled, so that the end's depth is met to 1/64 cell.
  const first = isAlongV ? grid.v0 : grid.u0;
  const last = isAlongV ? grid.v0 + grid.columns * grid.dv : grid.u0 + grid.rows * grid.du;
  const ends =
    grid.wraps && isAlongV
      ? [0, ramped.length]
      : [0, ramped.length, ramped.offset(first), ramped.offset(last)];
  const endsRamp = (past: number, step: number): boolean =>
    !isEven && ends.some((end) => Math.abs(past - end) < step);
  const stretches = stretchesOf(face, block, along, !isEven && isAlongV ? endsRamp : null);
  let touches = false;
  for (let row = block.row0; row <= block.row1; row++) {
    const u = grid.u0 + (row + 0.5) * grid.du;
    const past = across.offset(u);
    const held = share(across, past, grid.du);
    if (held === 'none') continue;
    const isCutRow = held === 'cut' || (!isAlongV && endsRamp(past, grid.du));
    const wall = face.wall(u);
    for (const { column, count, isCut, past: pastV } of stretches) {
      const run: Run = { row, column, count };
      touches ||= isOnMetal(face, run);
      if (isCutRow || isCut) pressCut(map, face, run, mark, wall);
      else pressWhole(map, face, run, mark, wall, depthPast(isAlongV ? pastV : past), isEven);
    }
  }
  return touches;
}

/** Columns beside each other of which the patch holds the same: all, or a part that is to be sampled. */
interface Stretch {
  readonly column: number;
  count: number;
  readonly isCut: boolean;
  /** How far the middle of the first column lies past the start of the patch. */
  readonly past: number;
}

/** @param endsRamp  where a ramp runs along the columns: each then has a depth of its own */
function stretchesOf(
  { grid }: Face,
  block: CellBlock,
  along: Range,
  endsRamp: ((past: number, step: number) => boolean) | null,
): Stretch[] {
  const stretches: Stretch[] = [];
  let open: Stretch | null = null;
  for (let k = 0; k < block.columns; k++) {
    const column = (block.column0 + k) % grid.columns;
    const past = along.offset(grid.v0 + (column + 0.5) * grid.dv);
    const held = share(along, past, grid.dv);
    if (held === 'none') {
      open = null;
      continue;
    }
    const isCut = held === 'cut' || endsRamp?.(past, grid.dv) === true;
    if (endsRamp === null && open !== null && open.isCut === isCut) open.count += 1;
    else {
      open = { column, count: 1, isCut, past };
      stretches.push(open);
    }
  }
  return stretches;
}

interface Range {
  readonly from: number;
  readonly length: number;
  /** How far a value lies past `from`; for an angle in the turn that is centred on the range. */
  offset(value: number): number;
}

function range([from, to]: readonly [number, number], face: Face, turns: boolean): Range {
  if (!turns) return { from, length: to - from, offset: (value) => value - from };
  const whole = to - from >= TURN - 1e-9;
  const length = whole ? TURN : to < from ? to - from + TURN : to - from;
  const middle = from + length / 2;
  return { from, length, offset: (value) => stepAlong(face, middle, value) + length / 2 };
}

function share(range: Range, offset: number, width: number): 'all' | 'none' | 'cut' {
  const low = offset - width / 2;
  const high = offset + width / 2;
  if (range.length >= TURN && high - low < TURN && range.length === TURN) return 'all';
  if (high <= 0 || low >= range.length) return 'none';
  return low >= -1e-9 && high <= range.length + 1e-9 ? 'all' : 'cut';
}
