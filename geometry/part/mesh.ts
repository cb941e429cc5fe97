/** Triangles as plain arrays, three indices each, counter-clockwise seen from outside the metal. */
export interface Mesh {
  /** x, y, z a vertex, mm, part frame. */
  readonly position: Float32Array;
  /** Unit vector out of the metal, three a vertex. */
  readonly normal: Float32Array;
  readonly index: Uint32Array;
}
