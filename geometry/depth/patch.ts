import type { Patch } from '../job/job.ts';
import type { Face } from '../part/face.ts';
import { TURN } from '../units.ts';
import { blockWithin, stepAlong } from './chart.ts';
import type { DepthMap } from './depth-map.ts';
import { type Imprint, pressImprint } from './press.ts';

/**
 * A box in the face's two coordinates, of one depth or ramping along the first. Writes into `map`.
 * An angle range runs counter-clockwise from its first to its second value and may pass 360; a whole turn or more is the ring.
 * Accuracy: edges true to 1/32 cell. Source: job format, "Mark"; tests/geometry/depth/patch.test.ts
 */
export function applyPatch(map: DepthMap, face: Face, patch: Patch): void {
  const [uRange, vRange] =
    face.columnsAre === 'first' ? [patch.second, patch.first] : [patch.first, patch.second];
  const across = range(uRange, face, false);
  const along = range(vRange, face, face.grid.wraps);
  const { grid } = map;
  const block = blockWithin(
    face,
    across.from,
    across.from + across.length,
    along.from,
    along.from + along.length,
  );
  if (block === null) return;
  const rampAlong = face.columnsAre === 'first' ? along : across;
  const [depth0, depth1] = patch.depth;
  // A ramp is deepest at one end: the cells that touch an end are sampled, so that the end's depth is met to 1/64 cell.
  const rampStep = face.columnsAre === 'first' ? grid.dv : grid.du;
  const endsRamp = (row: number, column: number): boolean => {
    if (depth0 === depth1) return false;
    const past =
      face.columnsAre === 'first'
        ? along.offset(grid.v0 + (column + 0.5) * grid.dv)
        : across.offset(grid.u0 + (row + 0.5) * grid.du);
    return past < rampStep || past > rampAlong.length - rampStep;
  };
  const imprint: Imprint = {
    block,
    blend: patch.blend,
    peak: null,
    reaches: (row, column) => {
      const u = share(across, across.offset(grid.u0 + (row + 0.5) * grid.du), grid.du);
      const v = share(along, along.offset(grid.v0 + (column + 0.5) * grid.dv), grid.dv);
      if (u === 'none' || v === 'none') return 'none';
      return u === 'all' && v === 'all' && !endsRamp(row, column) ? 'all' : 'cut';
    },
    depthAt: (u, v) => {
      const du = across.offset(u);
      const dv = along.offset(v);
      if (du < 0 || du > across.length || dv < 0 || dv > along.length) return -1;
      if (depth0 === depth1) return depth0;
      const along01 = (face.columnsAre === 'first' ? dv : du) / rampAlong.length;
      return depth0 + (depth1 - depth0) * along01;
    },
  };
  pressImprint(map, face, imprint);
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
