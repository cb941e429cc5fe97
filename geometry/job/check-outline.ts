import {
  type Corner,
  distinctCorners,
  isFlat,
  isInside,
  isLine,
  meetingSides,
  type Side,
} from './corners.ts';
import type { Fault } from './fault.ts';

/**
 * Faults of one closed polygon: too few corners, no area, sides that meet. At most one, the first that holds.
 * @param corners    as the file writes them
 * @param inPicture  where the corners lie in the flat picture in which the sides are straight; there already when left out
 */
export function checkPolygon(
  corners: readonly Corner[],
  field: string,
  inPicture: (corners: readonly Corner[]) => readonly Corner[] = (there) => there,
): Fault[] {
  const distinct = distinctCorners(corners);
  if (distinct.length < 3) {
    return [{ field, found: `a polygon of ${distinct.length} different corners`, needs: 'one of 3 or more' }];
  }
  const drawn = inPicture(distinct);
  const meeting = meetingSides([drawn]);
  // A bow tie has no area either, but that its sides cross is what can be put right.
  if (isFlat(drawn) && (meeting === null || isLine(drawn))) {
    return [{ field, found: 'a polygon without area', needs: 'one that encloses an area' }];
  }
  if (meeting === null) return [];
  const needs = 'a polygon whose sides do not cross or touch';
  const found = `${sideWords(distinct, meeting[0])} meets ${sideWords(distinct, meeting[1])}`;
  return [{ field, found, needs, problem: `${found}; needs ${needs}` }];
}

/** Faults of the holes of a plate against its edge and each other; every polygon is sound in itself. */
export function checkHoles(
  edge: readonly Corner[],
  holes: readonly { readonly corners: readonly Corner[]; readonly field: string }[],
): Fault[] {
  const sound = holes.map(({ corners, field }) => ({ corners: distinctCorners(corners), field }));
  const outer = distinctCorners(edge);
  const faults: Fault[] = [];
  const placed: typeof sound = [];
  for (const hole of sound) {
    const inside = isInside(hole.corners[0], outer) && meetingSides([outer, hole.corners]) === null;
    const other = placed.find(({ corners }) => overlap(corners, hole.corners));
    const { field } = hole;
    if (!inside) faults.push({ field, found: 'a hole that leaves the plate', needs: 'inside the edge' });
    else if (other)
      faults.push({ field, found: `a hole that overlaps ${other.field}`, needs: 'clear of it' });
    placed.push(hole);
  }
  return faults;
}

function overlap(a: readonly Corner[], b: readonly Corner[]): boolean {
  return boxesMeet(a, b) && (isInside(a[0], b) || isInside(b[0], a) || meetingSides([a, b]) !== null);
}

function boxesMeet(a: readonly Corner[], b: readonly Corner[]): boolean {
  return [0, 1].every((i) => {
    const range = (corners: readonly Corner[]) => corners.map((corner) => corner[i]);
    const [left, right] = [range(a), range(b)];
    return Math.min(...left) <= Math.max(...right) && Math.min(...right) <= Math.max(...left);
  });
}

function sideWords(corners: readonly Corner[], side: Side): string {
  const corner = (index: number): string =>
    `[${corners[index].map((value) => Number(value.toFixed(2))).join(', ')}]`;
  return `the side from ${corner(side.from)} to ${corner(side.to)}`;
}
