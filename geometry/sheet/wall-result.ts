import type { WallEstimate, WallVerdict } from '../clearance/thin-places.ts';
import type { FacePoint } from '../units.ts';

/** What is left of one wall, in the file's units. */
export interface WallResult {
  /** Of its two sides the one worn deeper at its thinnest place. */
  readonly face: string;
  /** The other side; null where only one wears. */
  readonly behind: string | null;
  readonly at: FacePoint;
  readonly asNew: number;
  readonly remaining: number;
  /** null when the job gives no least thickness. */
  readonly limit: number | null;
  /** Thinner than the limit, cm2. */
  readonly under: number;
  readonly verdict: WallVerdict;
  /** Connected areas thinner than the limit or worn through, thinnest first. */
  readonly places: readonly {
    readonly at: FacePoint;
    readonly remaining: number;
    readonly area: number;
  }[];
}

const MM2_PER_CM2 = 100;

/** @param pointOn  a point of a face in the file's units */
export function wallsResult(
  walls: readonly WallEstimate[],
  pointOn: (face: string, at: FacePoint) => FacePoint,
): WallResult[] {
  return walls.map(({ face, behind, at, asNew, remaining, limit, under, verdict, places }) => ({
    face,
    behind,
    at: pointOn(face, at),
    asNew,
    remaining,
    limit,
    under: under / MM2_PER_CM2,
    verdict,
    places: places.map((place) => ({
      at: pointOn(face, place.at),
      remaining: place.remaining,
      area: place.area / MM2_PER_CM2,
    })),
  }));
}
