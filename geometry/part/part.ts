import type { FacePoint, Mm } from '../units.ts';
import type { Face } from './face.ts';

/** A part as the later stages see it: its faces, the corners two of them share, and a body to draw. */
export interface Part {
  readonly id: string;
  readonly faces: readonly Face[];
  readonly corners: readonly Corner[];
  /** Nominal solid for the parts of the picture that never wear, see `Body`. */
  readonly body: Body;
}

/**
 * Two faces that meet at an edge: metal near it lies below both, and is lost or filled once.
 * `seenFrom(u, v, depth)` takes a point below `over` to the place on `side` it lies behind and how deep it is there.
 */
export interface Corner {
  readonly over: Face;
  readonly side: Face;
  /** No point further than `depth` behind the side is reached from rows of `over` beyond this many mm of u from its first row edge. */
  seenFrom(u: number, v: number, depth: Mm): SidePlace;
}

export interface SidePlace {
  readonly u: number;
  readonly v: number;
  /** Distance behind the side face, mm; negative in front of it. */
  readonly depth: Mm;
}

/** What a picture of the part needs beside its worn faces: closed loops and how far down the back lies. */
export interface Body {
  readonly thickness: Mm;
  /** Loops in x, y: the outer edge first, then bore and holes; circles stay circles. */
  readonly loops: readonly Loop[];
  /** Height of the running face at a place, mm. */
  height(x: Mm, y: Mm): Mm;
}

export type Loop =
  | {
      readonly kind: 'circle';
      readonly centre: readonly [Mm, Mm];
      readonly radius: Mm;
      readonly role: 'edge' | 'bore' | 'hole';
    }
  | { readonly kind: 'polygon'; readonly corners: readonly FacePoint[]; readonly role: 'edge' | 'hole' };
