import type { Face } from './face.ts';

/** Triangles as plain arrays, three indices each, counter-clockwise seen from outside the metal. */
export interface Mesh {
  /** x, y, z a vertex, mm, part frame. */
  readonly position: Float32Array;
  /** Unit vector out of the metal, three a vertex. */
  readonly normal: Float32Array;
  readonly index: Uint32Array;
}

/** What the vertices of a body carry beside their position. */
export interface Riding {
  /** x, y, z, mm, part frame. */
  readonly position: Float32Array;
  /** Place of a vertex in the texture of the face it rides on, share of the grid along v, then along u; two a vertex. */
  readonly place: Float32Array;
  /** Where a vertex goes when that face is worn by 1 mm at its place, three a vertex; 0 away from the face. */
  readonly inward: Float32Array;
}

export interface BodyMesh extends Mesh, Riding {
  /** The face its edges sink with; null when nothing of it moves. */
  readonly rides: Face | null;
  /** Two vertices a line: the edges along the faces and the back, the corners of an outline. */
  readonly edges: Riding;
  /** Triangles from this index up to `innerFrom` are not cut out at the holes: the cover at their places says where they are. */
  readonly uncutFrom: number;
  /** Triangles from this index on lie inside the metal as new: they show where wear has laid them open. */
  readonly innerFrom: number;
}
