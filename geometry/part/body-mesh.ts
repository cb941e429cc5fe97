/**
 * The parts of the picture that never wear: rim, hole walls and back of a plate, as arrays to draw. Where a wall meets the running
 * face its vertices ride on it, so that the edge sinks with the wear.
 */
import earcut from 'earcut';
import { type Mm, TURN, type Vec3 } from '../units.ts';
import type { Face } from './face.ts';
import type { Mesh } from './mesh.ts';
import type { Loop, Part } from './part.ts';
import { polygonArea } from './polygon.ts';

export interface BodyMesh extends Mesh {
  /** Place of a vertex in the texture of the running face above it, share of the grid along v, then along u; two a vertex. */
  readonly place: Float32Array;
  /** Where a vertex goes when the running face is worn by 1 mm at its place, three a vertex; 0 away from the face. */
  readonly inward: Float32Array;
  /** Triangles from this index on are not cut out at the holes: the cover at their places says where they are. */
  readonly uncutFrom: number;
}

/** Enough for a bolt hole. */
const HOLE_SEGMENTS = 64;

/**
 * Walls and back of a plate. The bore wall is a face of its own and not among them.
 * @param segments  sides of the polygon that stands for the outer edge and the bore; one less than the columns of the face's mesh
 *                  makes the two meet vertex on vertex
 * Accuracy: flat plates are cut exactly along their polygons (earcut); with the meshes of its faces a round plate without holes is
 * watertight. The back of a dished plate is the same cone, `thickness` lower.
 */
export function bodyMesh(part: Part, { segments = 255 }: { readonly segments?: number } = {}): BodyMesh {
  const draft: Draft = { part, position: [], normal: [], place: [], inward: [], index: [] };
  const rings = part.body.loops.map((loop) => ringOf(loop, segments));
  for (const [i, loop] of part.body.loops.entries()) {
    if (loop.role !== 'bore') addWall(draft, loop, rings[i]);
  }
  if (isFlat(part)) addFlatBack(draft, rings);
  const uncutFrom = draft.index.length;
  if (!isFlat(part)) addConeBack(draft, rings);
  return {
    position: Float32Array.from(draft.position),
    normal: Float32Array.from(draft.normal),
    place: Float32Array.from(draft.place),
    inward: Float32Array.from(draft.inward),
    index: Uint32Array.from(draft.index),
    uncutFrom,
  };
}

type Ring = readonly (readonly [x: Mm, y: Mm])[];

interface Draft {
  readonly part: Part;
  readonly position: number[];
  readonly normal: number[];
  readonly place: number[];
  readonly inward: number[];
  readonly index: number[];
}

const STAYS: Vec3 = [0, 0, 0];

/** The corners of a loop, counter-clockwise, first not repeated. */
function ringOf(loop: Loop, segments: number): Ring {
  if (loop.kind === 'polygon') {
    return polygonArea(loop.corners) > 0 ? loop.corners : loop.corners.toReversed();
  }
  const count = loop.role === 'hole' ? HOLE_SEGMENTS : segments;
  const [x, y] = loop.centre;
  return Array.from({ length: count }, (_, i) => {
    const angle = (TURN * i) / count;
    return [x + loop.radius * Math.cos(angle), y + loop.radius * Math.sin(angle)] as const;
  });
}

/** A wall from the face down to the back. Circles are rounded by their normals, corners of a polygon stay sharp. */
function addWall(draft: Draft, loop: Loop, ring: Ring): void {
  const { body, faces } = draft.part;
  const outward = loop.role === 'edge' ? 1 : -1;
  for (let i = 0; i < ring.length; i++) {
    const ends = [ring[i], ring[(i + 1) % ring.length]];
    const [[ax, ay], [bx, by]] = ends;
    const length = Math.hypot(bx - ax, by - ay);
    const first = draft.position.length / 3;
    for (const [x, y] of ends) {
      const normal: Vec3 =
        loop.kind === 'circle'
          ? [
              (outward * (x - loop.centre[0])) / loop.radius,
              (outward * (y - loop.centre[1])) / loop.radius,
              0,
            ]
          : [(outward * (by - ay)) / length, (outward * (ax - bx)) / length, 0];
      const top = body.height(x, y);
      const place = placeOn(faces[0], x, y);
      addVertex(draft, [x, y, top], normal, place, inwardAt(faces[0], place));
      addVertex(draft, [x, y, top - body.thickness], normal, place, STAYS);
    }
    const [top, bottom, nextTop, nextBottom] = [first, first + 1, first + 2, first + 3];
    draft.index.push(
      ...(outward > 0
        ? [top, bottom, nextBottom, top, nextBottom, nextTop]
        : [top, nextBottom, bottom, top, nextTop, nextBottom]),
    );
  }
}

/** A flat back, cut out along all loops. */
function addFlatBack(draft: Draft, rings: readonly Ring[]): void {
  const { body, faces } = draft.part;
  const first = draft.position.length / 3;
  const places = rings.flat();
  const starts = rings.map((_, i) => rings.slice(0, i).reduce((sum, ring) => sum + ring.length, 0));
  for (const [x, y] of places) {
    addVertex(draft, [x, y, body.height(x, y) - body.thickness], [0, 0, -1], placeOn(faces[0], x, y), STAYS);
  }
  const triangles = earcut(places.flat(), starts.slice(1));
  for (let i = 0; i < triangles.length; i += 3) {
    const [a, b, c] = [triangles[i], triangles[i + 1], triangles[i + 2]];
    const seenFromBelow = polygonArea([places[a], places[b], places[c]]) < 0;
    draft.index.push(first + a, first + (seenFromBelow ? b : c), first + (seenFromBelow ? c : b));
  }
}

/** The back of a cone: its generators are straight, so one strip from the edge to the bore is exact. */
function addConeBack(draft: Draft, rings: readonly Ring[]): void {
  const { body, faces } = draft.part;
  const { grid } = faces[0];
  const [edge, bore] = ['edge', 'bore'].map(
    (role) => rings[body.loops.findIndex((loop) => loop.role === role)],
  );
  const first = draft.position.length / 3;
  for (let i = 0; i <= edge.length; i++) {
    const across = i / edge.length;
    const [nx, ny, nz] = faces[0].normal(grid.u0, grid.v0 + across * grid.columns * grid.dv);
    for (const [ring, along] of [[edge, 1] as const, [bore, 0] as const]) {
      const [x, y] = ring[i % edge.length];
      const z = body.height(x, y) - body.thickness;
      addVertex(draft, [x, y, z], [-nx, -ny, -nz], [across, along], STAYS);
    }
  }
  for (let i = 0; i < edge.length; i++) {
    const [outer, inner, nextOuter, nextInner] = [0, 1, 2, 3].map((k) => first + i * 2 + k);
    draft.index.push(outer, inner, nextInner, outer, nextInner, nextOuter);
  }
}

function addVertex(draft: Draft, position: Vec3, normal: Vec3, place: readonly number[], inward: Vec3): void {
  draft.position.push(...position);
  draft.normal.push(...normal);
  draft.place.push(...place);
  draft.inward.push(...inward);
}

/** Place of (x, y) in the texture of the running face. */
function placeOn({ grid, picture }: Face, x: Mm, y: Mm): readonly [across: number, along: number] {
  const [u, v] = picture.kind === 'polar' ? [Math.hypot(x, y), Math.atan2(y, x)] : [y, x];
  const across = (v - grid.v0) / (grid.columns * grid.dv);
  return [grid.wraps ? across - Math.floor(across) : across, (u - grid.u0) / (grid.rows * grid.du)];
}

function inwardAt(face: Face, [across, along]: readonly [number, number]): Vec3 {
  const { grid } = face;
  const [x, y, z] = face.normal(
    grid.u0 + along * grid.rows * grid.du,
    grid.v0 + across * grid.columns * grid.dv,
  );
  return [-x, -y, -z];
}

function isFlat({ faces }: Part): boolean {
  const [{ picture }] = faces;
  return picture.kind === 'plane' || picture.slant === 1;
}
