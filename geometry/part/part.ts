import type { Impeller } from '../job/job.ts';
import type { FacePoint, Mm } from '../units.ts';
import type { Face } from './face.ts';
import type { VaneShape } from './vane-shape.ts';

/** A part as the later stages see it: its faces, the corners two of them share, and a body to draw. */
export interface Part {
  readonly id: string;
  readonly faces: readonly Face[];
  readonly corners: readonly Corner[];
  /** Where metal can be drilled off for balance beside the faces that wear; null on a part that has no such rim. */
  readonly rim: Face | null;
  /** Nominal solid for the parts of the picture that never wear, see `Body`. */
  readonly body: Body;
}

/**
 * Faces that meet at an edge: metal near it lies below several of them, and is lost or filled once. What lies below `over` and below
 * any of the `sides` counts in the sides.
 */
export interface Corner {
  readonly over: Face;
  readonly sides: readonly Side[];
  /** Every face that may have taken metal behind `over`, counted before it or after; none where depth and wall say it all. */
  readonly besides: readonly Side[];
}

export interface Side {
  readonly face: Face;
  /** Takes a point below `over` to the place on this face it lies behind and how deep it is there. */
  seenFrom(u: number, v: number, depth: Mm): SidePlace;
}

export interface SidePlace {
  readonly u: number;
  readonly v: number;
  /** Distance behind the side face, mm; negative in front of it. */
  readonly depth: Mm;
}

/** What a picture of the part needs beside its worn faces. */
export type Body = PlateBody | ImpellerBody;

/** Closed loops and how far down the back lies. */
export interface PlateBody {
  readonly kind: 'plate';
  readonly thickness: Mm;
  /** Loops in x, y: the outer edge first, then bore and holes; circles stay circles. */
  readonly loops: readonly Loop[];
  /** Height of the running face at a place, mm. */
  height(x: Mm, y: Mm): Mm;
}

/** Hub, bore, shroud and vanes as sizes; the vanes in order, each with its own shape. */
export interface ImpellerBody {
  readonly kind: 'impeller';
  /** Of the shroud; what an exaggerated depth may not pass. */
  readonly thickness: Mm;
  readonly shape: Impeller;
  readonly vanes: readonly VaneShape[];
}

export type Loop =
  | {
      readonly kind: 'circle';
      readonly centre: readonly [Mm, Mm];
      readonly radius: Mm;
      readonly role: 'edge' | 'bore' | 'hole';
    }
  | { readonly kind: 'polygon'; readonly corners: readonly FacePoint[]; readonly role: 'edge' | 'hole' };
