import type { FacePoint, Mm, Mm2 } from '../units.ts';

/** A connected patch of one face with depth over the damage threshold, and what becomes of it. */
export interface Region {
  /** `face-1`: the face and its rank there, deepest first. */
  readonly id: string;
  readonly part: string;
  readonly face: string;
  /** Its deepest point. */
  readonly at: FacePoint;
  readonly area: Mm2;
  readonly deepest: Mm;
  readonly action: 'fill' | 'leave';
  /** The person chose the action; otherwise the limit did. */
  readonly overruled: boolean;
}
