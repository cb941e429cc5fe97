/** Rim, hole walls and back of a plate and the lines of its edges, as arrays to draw. */
import earcut from 'earcut';
import { type Mm, TURN, type Vec3 } from '../units.ts';
import type { Face } from './face.ts';
import type { BodyMesh, Riding } from './mesh.ts';
import type { Loop, PlateBody } from './part.ts';
import { polygonArea } from './polygon.ts';

/** Enough for a bolt hole. */
const HOLE_SEGMENTS = 64;
/** Height of the part of an outline's wall that never sinks, as a share of the thickness. */
const FOOT = 0.1;

/**
 * Walls and back of a plate. The bore wall is a face of its own and not among them.
 * @param segments  pieces the outer edge, the bore and each outline are divided into; for a circle one less than the columns of the
 *                  face's mesh makes the two meet vertex on vertex
 * Accuracy: flat plates are cut exactly along their polygons (earcut); with the meshes of its faces a round plate without holes is
 * watertight. The back of a dished plate is the same cone, `thickness` lower.
 */
export function plateBodyMesh(body: PlateBody, running: Face, segments: number): BodyMesh {
  const draft: Draft = { body, running, position: [], normal: [], place: [], inward: [], index: [] };
  const edges: Draft = { ...draft, position: [], normal: [], place: [], inward: [] };
  const rings = body.loops.map((loop) => ringOf(loop, segments));
  for (const [i, loop] of body.loops.entries()) {
    if (loop.kind === 'polygon') addFlatWalls(draft, loop.role, rings[i]);
    else if (loop.role !== 'bore') addRoundWall(draft, loop, rings[i]);
    addEdges(edges, rings[i]);
  }
  if (isFlat(running)) addFlatBack(draft, rings);
  const uncutFrom = draft.index.length;
  if (!isFlat(running)) addConeBack(draft, rings);
  return {
    ...riding(draft),
    rides: running,
    normal: Float32Array.from(draft.normal),
    index: Uint32Array.from(draft.index),
    uncutFrom,
    innerFrom: draft.index.length,
    edges: riding(edges),
  };
}

function riding({ position, place, inward }: Draft): Riding {
  return {
    position: Float32Array.from(position),
    place: Float32Array.from(place),
    inward: Float32Array.from(inward),
  };
}

type Circle = Extract<Loop, { kind: 'circle' }>;
type Ring = readonly RingPoint[];

interface RingPoint {
  readonly x: Mm;
  readonly y: Mm;
  /** A corner of an outline, drawn as an edge down the wall. */
  readonly isCorner: boolean;
}

interface Draft {
  readonly body: PlateBody;
  readonly running: Face;
  readonly position: number[];
  readonly normal: number[];
  readonly place: number[];
  readonly inward: number[];
  readonly index: number[];
}

const STAYS: Vec3 = [0, 0, 0];

/**
 * Points along a loop, counter-clockwise, first not repeated. Long sides of a polygon are divided, so that their upper edge can sink
 * where the face beside it is worn.
 */
function ringOf(loop: Loop, segments: number): Ring {
  if (loop.kind === 'polygon') {
    const corners = polygonArea(loop.corners) > 0 ? loop.corners : loop.corners.toReversed();
    const sides = corners.map((corner, i) => [corner, corners[(i + 1) % corners.length]] as const);
    const length = ([[ax, ay], [bx, by]]: (typeof sides)[number]) => Math.hypot(bx - ax, by - ay);
    const piece = sides.reduce((sum, side) => sum + length(side), 0) / segments;
    return sides.flatMap((side) => {
      const [[ax, ay], [bx, by]] = side;
      const pieces = Math.max(1, Math.round(length(side) / piece));
      return Array.from({ length: pieces }, (_, i) => {
        const share = i / pieces;
        return { x: ax + share * (bx - ax), y: ay + share * (by - ay), isCorner: i === 0 };
      });
    });
  }
  const count = loop.role === 'hole' ? HOLE_SEGMENTS : segments;
  const [x, y] = loop.centre;
  return Array.from({ length: count }, (_, i) => {
    const angle = (TURN * i) / count;
    const [dx, dy] = [loop.radius * Math.cos(angle), loop.radius * Math.sin(angle)];
    return { x: x + dx, y: y + dy, isCorner: false };
  });
}

/** A round wall from the face down to the back, its corners rounded by their normals. */
function addRoundWall(draft: Draft, { role, centre, radius }: Circle, ring: Ring): void {
  const outward = role === 'edge' ? 1 : -1;
  for (let i = 0; i < ring.length; i++) {
    const first = draft.position.length / 3;
    for (const point of [ring[i], ring[(i + 1) % ring.length]]) {
      const normal: Vec3 = [
        (outward * (point.x - centre[0])) / radius,
        (outward * (point.y - centre[1])) / radius,
        0,
      ];
      addTop(draft, point, normal);
      addBottom(draft, point, normal);
    }
    addTriangle(draft, outward, first, first + 1, first + 3);
    addTriangle(draft, outward, first, first + 3, first + 2);
  }
}

/**
 * The flat walls of an outline. Along the face they are divided and may sink as far as the lowest tenth; below that they run from corner
 * to corner, as the back does.
 */
function addFlatWalls(draft: Draft, role: Loop['role'], ring: Ring): void {
  const outward = role === 'edge' ? 1 : -1;
  const corners = ring.flatMap(({ isCorner }, i) => (isCorner ? [i] : []));
  for (const [k, from] of corners.entries()) {
    const to = corners[k + 1] ?? ring.length;
    const side = Array.from({ length: to - from + 1 }, (_, i) => ring[(from + i) % ring.length]);
    const [a, b] = [side[0], side[side.length - 1]];
    const length = Math.hypot(b.x - a.x, b.y - a.y);
    const normal: Vec3 = [(outward * (b.y - a.y)) / length, (outward * (a.x - b.x)) / length, 0];
    const first = draft.position.length / 3;
    addBottom(draft, a, normal);
    addBottom(draft, b, normal);
    for (const point of side) {
      addTop(draft, point, normal);
      addBottom(draft, point, normal, FOOT);
    }
    for (let i = 0; i + 1 < side.length; i++) {
      const top = first + 2 + 2 * i;
      addTriangle(draft, outward, top, top + 1, top + 3);
      addTriangle(draft, outward, top, top + 3, top + 2);
      addTriangle(draft, outward, top + 1, first, top + 3);
    }
    addTriangle(draft, outward, first + 1 + 2 * side.length, first, first + 1);
  }
}

/** @param outward  1 when the corners are counter-clockwise seen from outside the metal, -1 when clockwise */
function addTriangle(draft: Draft, outward: number, a: number, b: number, c: number): void {
  if (outward > 0) draft.index.push(a, b, c);
  else draft.index.push(a, c, b);
}

/** Lines along a loop at the face and at the back; down the corners too where it has corners. */
function addEdges(edges: Draft, ring: Ring): void {
  for (const [i, point] of ring.entries()) {
    const next = ring[(i + 1) % ring.length];
    addTop(edges, point, STAYS);
    addTop(edges, next, STAYS);
    addBottom(edges, point, STAYS);
    addBottom(edges, next, STAYS);
    if (!point.isCorner) continue;
    addTop(edges, point, STAYS);
    addBottom(edges, point, STAYS);
  }
}

/** A vertex at the running face, which it rides on. */
function addTop(draft: Draft, { x, y }: RingPoint, normal: Vec3): void {
  const { body, running } = draft;
  const place = placeOn(running, x, y);
  addVertex(draft, [x, y, body.height(x, y)], normal, place, inwardAt(running, place));
}

/** A vertex at the back, or a share of the thickness above it; it never moves. */
function addBottom(draft: Draft, { x, y }: RingPoint, normal: Vec3, above = 0): void {
  const { body, running } = draft;
  const z = body.height(x, y) - body.thickness * (1 - above);
  addVertex(draft, [x, y, z], normal, placeOn(running, x, y), STAYS);
}

/** A flat back, cut out along all loops. */
function addFlatBack(draft: Draft, rings: readonly Ring[]): void {
  const first = draft.position.length / 3;
  // Along the back sides need no division, and earcut would leave such points out.
  const corners = rings.map((ring) => ring.filter(({ isCorner }) => isCorner || !ring[0].isCorner));
  const points = corners.flat();
  const starts = corners.map((_, i) => corners.slice(0, i).reduce((sum, ring) => sum + ring.length, 0));
  for (const point of points) addBottom(draft, point, [0, 0, -1]);
  const places = points.map(({ x, y }) => [x, y] as const);
  const triangles = earcut(places.flat(), starts.slice(1));
  for (let i = 0; i < triangles.length; i += 3) {
    const [a, b, c] = [triangles[i], triangles[i + 1], triangles[i + 2]];
    const seenFromBelow = polygonArea([places[a], places[b], places[c]]) < 0;
    draft.index.push(first + a, first + (seenFromBelow ? b : c), first + (seenFromBelow ? c : b));
  }
}

/** The back of a cone: its generators are straight, so one strip from the edge to the bore is exact. */
function addConeBack(draft: Draft, rings: readonly Ring[]): void {
  const { body, running } = draft;
  const { grid } = running;
  const [edge, bore] = ['edge', 'bore'].map(
    (role) => rings[body.loops.findIndex((loop) => loop.role === role)],
  );
  const first = draft.position.length / 3;
  for (let i = 0; i <= edge.length; i++) {
    const across = i / edge.length;
    const [nx, ny, nz] = running.normal(grid.u0, grid.v0 + across * grid.columns * grid.dv);
    for (const [ring, along] of [[edge, 1] as const, [bore, 0] as const]) {
      const { x, y } = ring[i % edge.length];
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

function isFlat({ picture }: Face): boolean {
  return picture.kind === 'plane' || picture.slant === 1;
}
