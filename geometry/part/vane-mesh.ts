/**
 * The faces of a vane as arrays to draw. The five and the bottom meet vertex on vertex; each vertex knows its place in the vane, so
 * that a picture can tell where one face has taken the metal behind another.
 */
import type { Mm } from '../units.ts';
import type { Face } from './face.ts';
import type { Mesh } from './mesh.ts';
import type { VaneShape } from './vane-shape.ts';
import { type VaneStation, type VaneStations, vaneStations } from './vane-stations.ts';

export type VaneFaceName = 'pressure' | 'suction' | 'tip' | 'leading-edge' | 'trailing-edge';

export interface VaneMesh extends Mesh {
  /** Two a vertex: share of the face's grid along v, then along u. */
  readonly place: Float32Array;
  /** Unit vector along v, three a vertex. */
  readonly across: Float32Array;
  /** s, n, z of each vertex on the face as new, mm. */
  readonly inVane: Float32Array;
  /** Triangles from this index on stand in front of a round nose: of them shows what wear has sunk into the metal. */
  readonly innerFrom: number;
}

/** The vane a face is on and which of its faces it is; null when it is on none. */
export function vaneFaceOf(face: string): { readonly vane: number; readonly name: VaneFaceName } | null {
  const found = /^vane-(\d+)\/(.*)$/.exec(face);
  return found && { vane: Number(found[1]), name: found[2] as VaneFaceName };
}

/**
 * A face of a vane. Accuracy: vertices lie on the face; between two of them, 1.5 mm or a 120th of the length apart, a curve bulges by
 * less than 0.01 mm.
 */
export function vaneMesh(shape: VaneShape, face: Face, name: VaneFaceName): VaneMesh {
  const stations = vaneStations(shape);
  switch (name) {
    case 'pressure':
      return side(face, stations, 1);
    case 'suction':
      return side(face, stations, -1);
    case 'tip':
      return tip(face, stations);
    case 'leading-edge':
      return leadingEdge(face, stations, shape.noseThickness / 2);
    case 'trailing-edge':
      return trailingEdge(face, stations);
  }
}

/** What a vane stands on, seen from below. */
export function vaneBottom(shape: VaneShape): Mesh {
  const { along, across } = vaneStations(shape);
  const vertices = along.flatMap((station) =>
    across.map((share): Vertex => ({ station, n: share * station.half, z: 0, normal: [0, 0, -1] })),
  );
  const { position, normal } = arraysOf(vertices);
  return {
    position,
    normal,
    index: squares({ position, normal }, [0, along.length], across.length),
  };
}

/** The edges of a vane: two vertices a line, and the place of each in the vane. */
export function vaneEdges(shape: VaneShape): Pick<VaneMesh, 'position' | 'inVane'> {
  const { along, heights, shoulder } = vaneStations(shape);
  const last = along[along.length - 1];
  const ends = shoulder === 0 ? [along[0], last] : [last];
  const sides = [1, -1] as const;
  const levels = [0, 1] as const;
  const at = (station: VaneStation, side: number, level: number): Vertex => ({
    station,
    n: side * station.half,
    z: level * station.height,
    normal: [0, 0, 0],
  });
  const lines = [
    ...sides.flatMap((side) => levels.map((level) => along.map((station) => at(station, side, level)))),
    ...ends.flatMap((end) =>
      levels.map((level) => [at(end, 1, level), at(end, 0, level), at(end, -1, level)]),
    ),
    ...ends.flatMap((end) => sides.map((side) => heights.map((height) => at(end, side, height)))),
  ];
  const pairs = lines.flatMap((line) => line.slice(1).flatMap((vertex, i) => [line[i], vertex]));
  const { position, inVane } = arraysOf(pairs);
  return { position, inVane };
}

type Three = readonly [number, number, number];

interface Vertex {
  readonly station: VaneStation;
  readonly n: Mm;
  readonly z: Mm;
  readonly normal: Three;
}

function side(face: Face, { along, heights, shoulder }: VaneStations, sign: 1 | -1): VaneMesh {
  const vertices = along.flatMap((station) => {
    const { thickness, taper, height, k, tx, ty, nx, ny } = station;
    const lean = taper / 2 / (1 - (k * sign * thickness) / 2);
    const normal = unit(sign * nx - lean * tx, sign * ny - lean * ty, 0);
    return heights.map(
      (share): Vertex => ({ station, n: (sign * thickness) / 2, z: share * height, normal }),
    );
  });
  return meshOf(face, vertices, heights.length, {
    shoulder,
    gridPoint: ({ station, z }) => [station.s, z],
    across: () => [0, 0, 1],
  });
}

function tip(face: Face, { along, across }: VaneStations): VaneMesh {
  const vertices = along.flatMap((station) => {
    const { half, height, rise, k, tx, ty } = station;
    return across.map((share): Vertex => {
      const lean = rise / (1 - k * share * half);
      return { station, n: share * half, z: height, normal: unit(-lean * tx, -lean * ty, 1) };
    });
  });
  return meshOf(face, vertices, across.length, {
    gridPoint: ({ station, n }) => [station.s, n],
    across: acrossCamber,
  });
}

function leadingEdge(face: Face, { along, across, heights, shoulder }: VaneStations, half: Mm): VaneMesh {
  const [first] = along;
  // Round the nose from the suction side to the pressure side, or straight across a square one.
  const outline: readonly (readonly [station: VaneStation, n: Mm])[] =
    shoulder === 0
      ? across.map((share) => [first, share * first.half] as const)
      : [
          ...along
            .slice(0, shoulder + 1)
            .toReversed()
            .map((station) => [station, -station.half] as const),
          ...along.slice(1, shoulder + 1).map((station) => [station, station.half] as const),
        ];
  const rim = outline.map(([station, n]) => {
    const lean = shoulder === 0 ? 0 : Math.max(-1, Math.min(1, n / half));
    const back = -Math.sqrt(1 - lean * lean);
    const { tx, ty, nx, ny } = station;
    return { station, n, normal: [back * tx + lean * nx, back * ty + lean * ny, 0] as const };
  });
  const vertices = heights.flatMap((share) =>
    rim.map((point): Vertex => ({ ...point, z: share * point.station.height })),
  );
  return meshOf(face, vertices, outline.length, { gridPoint: ({ n, z }) => [z, n], across: acrossCamber });
}

function trailingEdge(face: Face, { along, across, heights }: VaneStations): VaneMesh {
  const station = along[along.length - 1];
  const vertices = heights.flatMap((height) =>
    across.map(
      (share): Vertex => ({
        station,
        n: share * station.half,
        z: height * station.height,
        normal: [station.tx, station.ty, 0],
      }),
    ),
  );
  return meshOf(face, vertices, across.length, { gridPoint: ({ n, z }) => [z, n], across: acrossCamber });
}

interface Laid {
  /** The first row of vertices that is there as new. */
  readonly shoulder?: number;
  readonly gridPoint: (vertex: Vertex) => readonly [u: number, v: number];
  readonly across: (vertex: Vertex) => Three;
}

function meshOf(face: Face, vertices: readonly Vertex[], columns: number, laid: Laid): VaneMesh {
  const { grid } = face;
  const { shoulder = 0, gridPoint, across: acrossAt } = laid;
  const arrays = arraysOf(vertices);
  const place = new Float32Array(vertices.length * 2);
  const across = new Float32Array(vertices.length * 3);
  const [wide, long] = [grid.columns * grid.dv, grid.rows * grid.du];
  for (let i = 0; i < vertices.length; i++) {
    const [u, v] = gridPoint(vertices[i]);
    place[i * 2] = (v - grid.v0) / wide;
    place[i * 2 + 1] = (u - grid.u0) / long;
    const [x, y, z] = acrossAt(vertices[i]);
    across[i * 3] = x;
    across[i * 3 + 1] = y;
    across[i * 3 + 2] = z;
  }
  const rows = vertices.length / columns;
  const main = squares(arrays, [shoulder, rows], columns);
  const index = new Uint32Array((rows - 1) * (columns - 1) * 6);
  index.set(main);
  if (shoulder > 0) index.set(squares(arrays, [0, shoulder + 1], columns), main.length);
  return { ...arrays, place, across, index, innerFrom: main.length };
}

function arraysOf(vertices: readonly Vertex[]): Pick<VaneMesh, 'position' | 'normal' | 'inVane'> {
  const position = new Float32Array(vertices.length * 3);
  const normal = new Float32Array(vertices.length * 3);
  const inVane = new Float32Array(vertices.length * 3);
  for (let i = 0, at = 0; i < vertices.length; i++, at += 3) {
    const { station, n, z, normal: out } = vertices[i];
    position[at] = station.x + n * station.nx;
    position[at + 1] = station.y + n * station.ny;
    position[at + 2] = z;
    normal[at] = out[0];
    normal[at + 1] = out[1];
    normal[at + 2] = out[2];
    inVane[at] = station.s;
    inVane[at + 1] = n;
    inVane[at + 2] = z;
  }
  return { position, normal, inVane };
}

/** Two triangles a square between rows from..to (not included), counter-clockwise seen from outside. */
function squares(
  { position, normal }: Pick<Mesh, 'position' | 'normal'>,
  [from, to]: readonly [number, number],
  columns: number,
): Uint32Array {
  // All squares of a face turn the same way; the last ones are never without width.
  const probe = (to - 2) * columns;
  const isTurned = turns(position, normal, probe, probe + columns, probe + columns + 1) < 0;
  const index = new Uint32Array((to - from - 1) * (columns - 1) * 6);
  let at = 0;
  for (let row = from; row + 1 < to; row++) {
    for (let column = 0; column + 1 < columns; column++) {
      const first = row * columns + column;
      const [next, beyond, beside] = [first + columns, first + columns + 1, first + 1];
      index[at] = first;
      index[at + 1] = isTurned ? beside : next;
      index[at + 2] = beyond;
      index[at + 3] = first;
      index[at + 4] = beyond;
      index[at + 5] = isTurned ? next : beside;
      at += 6;
    }
  }
  return index;
}

/** Above 0 when three vertices turn counter-clockwise seen against the first one's normal. */
function turns(position: Float32Array, normal: Float32Array, a: number, b: number, c: number): number {
  const off = (vertex: number) => [0, 1, 2].map((k) => position[vertex * 3 + k] - position[a * 3 + k]);
  const [ux, uy, uz] = off(b);
  const [vx, vy, vz] = off(c);
  return (
    (uy * vz - uz * vy) * normal[a * 3] +
    (uz * vx - ux * vz) * normal[a * 3 + 1] +
    (ux * vy - uy * vx) * normal[a * 3 + 2]
  );
}

const acrossCamber = ({ station }: Vertex): Three => [station.nx, station.ny, 0];

function unit(x: number, y: number, z: number): Three {
  const length = Math.hypot(x, y, z);
  return [x / length, y / length, z / length];
}
