/**
 * Hub, bore and rim of an impeller and what its vanes stand on, as arrays to draw. The halves of the rim ride on the front and on the
 * back of the shroud, so that its edges sink with the wear.
 */
import { type FacePoint, type Mm, TURN, type Vec3 } from '../units.ts';
import type { Face } from './face.ts';
import type { BodyMesh } from './mesh.ts';
import type { ImpellerBody } from './part.ts';
import { polygonArea } from './polygon.ts';
import { vaneBottom } from './vane-mesh.ts';
import type { VaneShape } from './vane-shape.ts';
import { type VaneStation, vaneStations } from './vane-stations.ts';

/**
 * With the meshes of the shroud's faces and of the vanes' the surface is closed: shroud and hub one solid, each vane another that
 * stands on it. Within the metal, for where it has worn away: the hub down to the back, and below each vane what it stands on.
 * @param segments  pieces a whole circle is divided into
 */
export function impellerBodyMeshes(
  body: ImpellerBody,
  faces: readonly Face[],
  segments: number,
): readonly BodyMesh[] {
  const { shape, vanes } = body;
  const { hubRadius, boreRadius, hubHeight, shroudThickness, outerRadius } = shape;
  const hub = draft(segments);
  const top = hubHeight;
  const back = -shroudThickness;
  addWall(hub, hubRadius, 0, top, 1);
  addRing(hub, boreRadius, hubRadius, top, 1);
  addRing(hub, boreRadius, hubRadius, back, -1);
  addWall(hub, boreRadius, back, top, -1);
  for (const vane of vanes) addBottom(hub, vane);
  for (const [radius, z] of [
    [hubRadius, top],
    [boreRadius, top],
    [boreRadius, back],
    [hubRadius, 0],
  ] as const) {
    addCircle(hub, radius, z);
  }
  const innerFrom = hub.index.length;
  if (shroudThickness === 0) return [pieceOf(hub, null, innerFrom)];
  addWall(hub, hubRadius, back, 0, 1);
  for (const vane of vanes) addFoot(hub, vane, outerRadius, back);
  const rims = [
    { face: named(faces, 'shroud/front'), from: 0, to: back / 2 },
    { face: named(faces, 'shroud/back'), from: back, to: back / 2 },
  ].map(({ face, from, to }) => {
    const rim = draft(segments);
    addRim(rim, face, outerRadius, from, to);
    return pieceOf(rim, face, rim.index.length);
  });
  return [pieceOf(hub, null, innerFrom), ...rims];
}

interface Draft {
  readonly segments: number;
  readonly position: number[];
  readonly normal: number[];
  readonly place: number[];
  readonly inward: number[];
  readonly index: number[];
  /** Two vertices a line. */
  readonly edges: {
    readonly position: number[];
    readonly place: number[];
    readonly inward: number[];
  };
}

const draft = (segments: number): Draft => ({
  segments,
  position: [],
  normal: [],
  place: [],
  inward: [],
  index: [],
  edges: { position: [], place: [], inward: [] },
});

function pieceOf(made: Draft, rides: Face | null, innerFrom: number): BodyMesh {
  const { edges } = made;
  return {
    rides,
    position: Float32Array.from(made.position),
    normal: Float32Array.from(made.normal),
    place: Float32Array.from(made.place),
    inward: Float32Array.from(made.inward),
    index: Uint32Array.from(made.index),
    edges: {
      position: Float32Array.from(edges.position),
      place: Float32Array.from(edges.place),
      inward: Float32Array.from(edges.inward),
    },
    uncutFrom: innerFrom,
    innerFrom,
  };
}

function named(faces: readonly Face[], name: string): Face {
  const face = faces.find((known) => known.name === name);
  if (face === undefined) throw new Error(`impellerBodyMeshes: needs the face ${name}, got none`);
  return face;
}

const STAYS: Vec3 = [0, 0, 0];

/** @returns its index */
function addVertex(
  made: Draft,
  position: Vec3,
  normal: Vec3,
  { share = 0, inward = STAYS }: { readonly share?: number; readonly inward?: Vec3 } = {},
): number {
  made.position.push(position[0], position[1], position[2]);
  made.normal.push(normal[0], normal[1], normal[2]);
  made.place.push(share, 1);
  made.inward.push(inward[0], inward[1], inward[2]);
  return made.position.length / 3 - 1;
}

/** Points of a circle, the last on the first to the last bit. */
function circle(segments: number, radius: Mm): readonly (readonly [x: Mm, y: Mm, share: number])[] {
  return Array.from({ length: segments + 1 }, (_, i) => {
    const angle = (TURN * (i % segments)) / segments;
    return [radius * Math.cos(angle), radius * Math.sin(angle), i / segments];
  });
}

/** A round wall about the shaft from one height up to another. @param outward  1 for the outside of metal, -1 for a hole */
function addWall(made: Draft, radius: Mm, low: Mm, high: Mm, outward: 1 | -1): void {
  if (radius === 0 || high <= low) return;
  const rows = circle(made.segments, radius).map(([x, y]) => {
    const normal: Vec3 = [(outward * x) / radius, (outward * y) / radius, 0];
    return [addVertex(made, [x, y, low], normal), addVertex(made, [x, y, high], normal)] as const;
  });
  addStrip(made, rows, outward);
}

/** A flat ring about the shaft. @param up  1 when it is seen from above, -1 from below */
function addRing(made: Draft, inner: Mm, outer: Mm, z: Mm, up: 1 | -1): void {
  const within = circle(made.segments, inner);
  const rows = circle(made.segments, outer).map(([x, y], i) => {
    const [nearX, nearY] = within[i];
    return [addVertex(made, [x, y, z], [0, 0, up]), addVertex(made, [nearX, nearY, z], [0, 0, up])] as const;
  });
  addStrip(made, rows, up);
}

/** Squares between pairs of vertices in turn; one of no width is left out. */
function addStrip(made: Draft, rows: readonly (readonly [number, number])[], outward: 1 | -1): void {
  for (let i = 0; i + 1 < rows.length; i++) {
    const [[a, b], [c, d]] = [rows[i], rows[i + 1]];
    if (outward > 0) made.index.push(a, c, d, a, d, b);
    else made.index.push(a, d, c, a, b, d);
  }
}

/** Half of the rim: at `from` it rides on a face of the shroud, at `to` it stays. */
function addRim(made: Draft, face: Face, radius: Mm, from: Mm, to: Mm): void {
  const points = circle(made.segments, radius);
  const [, , up] = face.normal(radius, 0);
  const inward: Vec3 = [0, 0, -up];
  const rows = points.map(([x, y, share]) => {
    const normal: Vec3 = [x / radius, y / radius, 0];
    const rides = addVertex(made, [x, y, from], normal, { share, inward });
    const stays = addVertex(made, [x, y, to], normal, { share });
    return from < to ? ([rides, stays] as const) : ([stays, rides] as const);
  });
  addStrip(made, rows, 1);
  addCircle(made, radius, from, inward);
}

/** The line of a round edge. */
function addCircle({ edges, segments }: Draft, radius: Mm, z: Mm, inward: Vec3 = STAYS): void {
  if (radius === 0) return;
  const points = circle(segments, radius);
  for (let i = 0; i < segments; i++) {
    for (const [x, y, share] of [points[i], points[i + 1]]) {
      edges.position.push(x, y, z);
      edges.place.push(share, 1);
      edges.inward.push(...inward);
    }
  }
}

function addBottom(made: Draft, vane: VaneShape): void {
  const { position, index } = vaneBottom(vane);
  const first = made.position.length / 3;
  for (let i = 0; i < position.length; i += 3) {
    addVertex(made, [position[i], position[i + 1], position[i + 2]], [0, 0, -1]);
  }
  for (const vertex of index) made.index.push(first + vertex);
}

/** Shorter than this, mm, a piece of wall is none. */
const SLIVER: Mm = 1e-6;
/** The foot stands this far, mm, within what the shroud's own faces show, so that nothing of it shines through them. */
const WITHIN: Mm = 0.02;

/** What a vane stands on, within the rim: a top for when the vane is gone, walls for when the shroud about it is. */
function addFoot(made: Draft, vane: VaneShape, rim: Mm, back: Mm): void {
  const most = rim - WITHIN;
  const top = -WITHIN;
  const within = (x: Mm, y: Mm): FacePoint => {
    const share = Math.min(1, most / Math.hypot(x, y));
    return [x * share, y * share];
  };
  const { position, index } = vaneBottom(vane);
  const first = made.position.length / 3;
  const places: FacePoint[] = [];
  for (let i = 0; i < position.length; i += 3) {
    const [x, y] = within(position[i], position[i + 1]);
    places.push([x, y]);
    addVertex(made, [x, y, top], [0, 0, 1]);
  }
  for (let i = 0; i < index.length; i += 3) {
    const [a, b, c] = [index[i], index[i + 2], index[i + 1]];
    // Drawn in to the rim, some have no width left.
    if (polygonArea([places[a], places[b], places[c]]) > SLIVER)
      made.index.push(first + a, first + b, first + c);
  }
  const outline = footOutline(vane).map(([x, y]) => within(x, y));
  const loop = polygonArea(outline) > 0 ? outline : outline.toReversed();
  for (const [i, [x, y]] of loop.entries()) {
    const [nextX, nextY] = loop[(i + 1) % loop.length];
    const length = Math.hypot(nextX - x, nextY - y);
    // Along the rim it is the rim's own wall.
    const isRim = [Math.hypot(x, y), Math.hypot(nextX, nextY)].every((r) => r > most - SLIVER);
    if (isRim || length < SLIVER) continue;
    const normal: Vec3 = [(nextY - y) / length, (x - nextX) / length, 0];
    const [a, b, c, d] = [
      addVertex(made, [x, y, back], normal),
      addVertex(made, [nextX, nextY, back], normal),
      addVertex(made, [nextX, nextY, top], normal),
      addVertex(made, [x, y, top], normal),
    ];
    made.index.push(a, b, c, a, c, d);
  }
}

/** Round a vane at the vertices of its mesh: out along the pressure side, across the outer end, back along the suction side. */
function footOutline(vane: VaneShape): readonly FacePoint[] {
  const { along, across } = vaneStations(vane);
  const at = ({ x, y, nx, ny, half }: VaneStation, share: number): FacePoint => [
    x + share * half * nx,
    y + share * half * ny,
  ];
  const last = along[along.length - 1];
  return [
    ...along.map((station) => at(station, 1)),
    ...across
      .slice(1, -1)
      .toReversed()
      .map((share) => at(last, share)),
    ...along.toReversed().map((station) => at(station, -1)),
  ];
}
