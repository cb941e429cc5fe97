import { stepAlong } from '../depth/chart.ts';
import type { Section } from '../job/job.ts';
import { type Face, toGridPoint } from '../part/face.ts';
import { type FacePoint, type Fraction, type Mm, TURN } from '../units.ts';

/** A straightedge on a face, place by place; `i` counts them from one end to the other. */
export interface SectionLine {
  /** Ends where it begins: a ring. */
  readonly isClosed: boolean;
  /** From end to end along the face, straight across what is no face, mm. */
  readonly length: Mm;
  /** Grid points of the places; those where the face ends are among them. */
  readonly u: Float64Array;
  readonly v: Float64Array;
  /** Distance of each place from the first, mm. */
  readonly at: Float64Array;
  /** 1 where there is face: not in a hole, not past an edge. */
  readonly on: Uint8Array;
  /** Where the line comes nearest to a point of the face: the distance along it, and how far off it passes in the flat picture, mm. */
  near(point: FacePoint): { readonly at: Mm; readonly off: Mm };
  /** The grid point at a distance along it. */
  place(at: Mm): GridPoint;
}

type GridPoint = readonly [u: number, v: number];
type FlatPoint = readonly [x: Mm, y: Mm];

/** Places a cell of the map. */
const PLACES_A_CELL = 2;
/** No line has more: that is a ring of 5 m in steps of a quarter of a mm. */
const MOST_PLACES = 20_000;
/** Where the face ends is found to this share of the line: 1e-7 mm on a line of 100 mm. */
const FOUND: Fraction = 1e-9;

/**
 * Lays a section over its face. Straight means straight in the flat picture: in x, y of a round face (seen along the shaft) and across its bore,
 * in the unrolled bore the short way round, along and height on a vane. Lengths are true: along the slope on a cone.
 * Accuracy: places lie half a cell apart or closer, ends of the face 1e-9 of the line; a hole narrower than half a cell may be missed.
 * Source: tests/geometry/sheet/section-line.test.ts
 */
export function sectionLine(face: Face, section: Section): SectionLine {
  const path = pathOf(face, section);
  const steps = Math.min(
    MOST_PLACES,
    Math.max(1, Math.ceil((PLACES_A_CELL * path.flatLength) / cellSize(face))),
  );
  const shares = sharesOf(face, path, steps);
  const u = new Float64Array(shares.length);
  const v = new Float64Array(shares.length);
  const at = new Float64Array(shares.length);
  const on = new Uint8Array(shares.length);
  for (const [i, share] of shares.entries()) {
    [u[i], v[i]] = path.place(share);
    on[i] = isOn(face, u[i], v[i]) ? 1 : 0;
    if (i > 0) at[i] = at[i - 1] + lengthOf(face, path.flatLength * (share - shares[i - 1]), u[i - 1], u[i]);
  }
  const between = (from: ArrayLike<number>, to: ArrayLike<number>, value: number): number => {
    const next = Math.max(1, firstAbove(from, value));
    const share = (value - from[next - 1]) / (from[next] - from[next - 1] || 1);
    return to[next - 1] + Math.min(1, Math.max(0, share)) * (to[next] - to[next - 1]);
  };
  return {
    isClosed: path.isClosed,
    length: at[at.length - 1],
    u,
    v,
    at,
    on,
    near(point) {
      const { share, off } = path.near(flatPlace(face, ...toGridPoint(face, point)));
      return { at: between(shares, at, share), off };
    },
    place: (distance) => path.place(between(at, shares, distance)),
  };
}

interface Path {
  readonly isClosed: boolean;
  /** In the flat picture. */
  readonly flatLength: Mm;
  place(share: Fraction): GridPoint;
  near(at: FlatPoint): { readonly share: Fraction; readonly off: Mm };
}

function pathOf(face: Face, section: Section): Path {
  if (section.kind === 'line') {
    const [u, v] = toGridPoint(face, section.from);
    const [u1, v1] = toGridPoint(face, section.to);
    const from = flatPlace(face, u, v);
    const to = flatPlace(face, u1, v + (face.picture.kind === 'plane' ? stepAlong(face, v, v1) : v1 - v));
    return straight(from, to, (share) =>
      gridPlace(face, mixed(from[0], to[0], share), mixed(from[1], to[1], share)),
    );
  }
  const runs = section.kind === 'along-first' ? 0 : 1;
  const { from, to, isAngle } = face.coordinates[runs];
  const point = (value: number): GridPoint =>
    toGridPoint(face, runs === 0 ? [value, section.at] : [section.at, value]);
  const place = (share: Fraction) => point(mixed(from, to, share));
  const isClosed = isAngle && to - from > TURN - 1e-9;
  if (isAngle && face.picture.kind === 'polar') return ring(section.at, from, to, isClosed, place);
  const [start, end] = [flatPlace(face, ...point(from)), flatPlace(face, ...point(to))];
  return { ...straight(start, end, place), isClosed };
}

function straight(from: FlatPoint, to: FlatPoint, place: Path['place']): Path {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const square = dx * dx + dy * dy;
  return {
    isClosed: false,
    flatLength: Math.sqrt(square),
    place,
    near([x, y]) {
      const along = square > 0 ? ((x - from[0]) * dx + (y - from[1]) * dy) / square : 0;
      const share = Math.min(1, Math.max(0, along));
      return { share, off: Math.hypot(x - from[0] - share * dx, y - from[1] - share * dy) };
    },
  };
}

function ring(radius: Mm, from: number, to: number, isClosed: boolean, place: Path['place']): Path {
  const turn = to - from;
  return {
    isClosed,
    flatLength: radius * turn,
    place,
    near([x, y]) {
      const ahead = (Math.atan2(y, x) - from) / turn;
      return { share: ahead - Math.floor(ahead), off: Math.abs(Math.hypot(x, y) - radius) };
    },
  };
}

/** Shares of the line at which it is looked at: even steps, and both sides of every place where the face begins or ends. */
function sharesOf(face: Face, path: Path, steps: number): Float64Array {
  const holds = (share: Fraction) => isOn(face, ...path.place(share));
  const shares = [0];
  let before = holds(0);
  for (let i = 1; i <= steps; i++) {
    const share = i / steps;
    const now = holds(share);
    if (now !== before) {
      let [from, to] = [(i - 1) / steps, share];
      while (to - from > FOUND) {
        const middle = (from + to) / 2;
        if (holds(middle) === before) from = middle;
        else to = middle;
      }
      shares.push(from, to);
    }
    shares.push(share);
    before = now;
  }
  return Float64Array.from(shares);
}

/** An unrolled face goes on past its turn; any other ends at its edges. */
function isOn({ grid, holds }: Face, u: number, v: number): boolean {
  return holds(u, v) && (grid.wraps || (v >= grid.v0 && v <= grid.v0 + grid.columns * grid.dv));
}

/** Of a short piece, from its length in the flat picture: on a cone the rise comes to it, beyond the face it is level. */
function lengthOf({ grid, picture }: Face, flat: Mm, u0: number, u1: number): Mm {
  if (picture.kind === 'plane' || picture.slant === 1) return flat;
  const tan = Math.sqrt(1 - picture.slant ** 2) / picture.slant;
  const within = (u: number): number => Math.min(grid.u0 + grid.rows * grid.du, Math.max(grid.u0, u));
  return Math.hypot(flat, tan * (within(u1) - within(u0)));
}

/** The shorter side of a cell, mm; of a round face where it is wide. */
function cellSize({ grid, picture }: Face): Mm {
  const uEnd = grid.u0 + grid.rows * grid.du;
  const around = picture.kind === 'polar' ? Math.max(grid.u0, uEnd / 2) : picture.columnScale;
  return Math.min(grid.du, grid.dv * around);
}

function flatPlace({ picture }: Face, u: number, v: number): FlatPoint {
  return picture.kind === 'polar' ? [u * Math.cos(v), u * Math.sin(v)] : [v * picture.columnScale, u];
}

function gridPlace({ grid, picture }: Face, x: Mm, y: Mm): GridPoint {
  if (picture.kind === 'plane') return [y, x / picture.columnScale];
  const ahead = (Math.atan2(y, x) - grid.v0) / TURN;
  return [Math.sqrt(x * x + y * y), grid.v0 + (ahead - Math.floor(ahead)) * TURN];
}

const mixed = (from: number, to: number, share: Fraction): number => from + share * (to - from);

/** Index of the first value above `value` in ascending order, the last index where there is none. */
function firstAbove(values: ArrayLike<number>, value: number): number {
  let [low, high] = [0, values.length - 1];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (values[middle] > value) high = middle;
    else low = middle + 1;
  }
  return low;
}
