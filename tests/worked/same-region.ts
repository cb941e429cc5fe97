import type { ExpectedFace, ExpectedRegion } from './expected.ts';

/** The parts of a region in the result that tell which one it is. */
export interface FoundRegion {
  readonly at: readonly [number, number];
  readonly area: number;
  readonly lostVolume: number;
}

/** Slack about a region's box, mm: one cell of a large plate. */
const SLACK = 1;

/** The region of `found` whose deepest point lies in the box of `region` and that is most like it in size; undefined when none does. */
export function sameRegion<T extends FoundRegion>(
  found: readonly T[],
  region: ExpectedRegion,
  face: ExpectedFace,
): T | undefined {
  const [u0, u1, v0, v1] = region.box;
  const inBox = found.filter(({ at }) => {
    const [u, v] = unfolded(at, face);
    return u > u0 - SLACK && u < u1 + SLACK && v > v0 - SLACK && v < v1 + SLACK;
  });
  const unlike = ({ area, lostVolume }: T) =>
    Math.abs(area / region.area - 1) + Math.abs(lostVolume / region.lostVolume - 1);
  return inBox.toSorted((a, b) => unlike(a) - unlike(b))[0];
}

function unfolded([first, second]: readonly [number, number], face: ExpectedFace): [number, number] {
  if (face.kind === 'plain') return [first, second];
  if (face.kind === 'bore') return [((first * Math.PI) / 180) * (face.radius ?? 0), second];
  const angle = (second * Math.PI) / 180;
  return [first * Math.cos(angle), first * Math.sin(angle)];
}
