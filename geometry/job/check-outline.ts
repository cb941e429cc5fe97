import {
  type Corner,
  crossingSides,
  distinctCorners,
  isFlat,
  isInside,
  isLine,
  meetingSides,
  type Segment,
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
  const outer = placed(distinctCorners(edge));
  const faults: Fault[] = [];
  const before: (Placed & { readonly field: string })[] = [];
  for (const { corners, field } of holes) {
    const hole = { ...placed(distinctCorners(corners)), field };
    const inside = isInside(hole.corners[0], outer.corners) && !sidesMeet(outer, hole);
    const other = before.find((known) => overlap(known, hole));
    if (!inside) faults.push({ field, found: 'a hole that leaves the plate', needs: 'inside the edge' });
    else if (other)
      faults.push({ field, found: `a hole that overlaps ${other.field}`, needs: 'clear of it' });
    before.push(hole);
  }
  return faults;
}

/** A polygon and the box it lies in: most of two polygons' sides are told apart by their boxes. */
interface Placed {
  readonly corners: readonly Corner[];
  readonly box: Box;
}

interface Box {
  readonly x0: number;
  readonly x1: number;
  readonly y0: number;
  readonly y1: number;
}

function placed(corners: readonly Corner[]): Placed {
  let [x0, x1, y0, y1] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const [x, y] of corners) {
    x0 = Math.min(x0, x);
    x1 = Math.max(x1, x);
    y0 = Math.min(y0, y);
    y1 = Math.max(y1, y);
  }
  return { corners, box: { x0, x1, y0, y1 } };
}

function overlap(a: Placed, b: Placed): boolean {
  const boxesMeet =
    a.box.x0 <= b.box.x1 && b.box.x0 <= a.box.x1 && a.box.y0 <= b.box.y1 && b.box.y0 <= a.box.y1;
  return (
    boxesMeet && (isInside(a.corners[0], b.corners) || isInside(b.corners[0], a.corners) || sidesMeet(a, b))
  );
}

/** True when a side of one polygon meets a side of the other; only those within reach of the other's box are looked at. */
function sidesMeet(a: Placed, b: Placed): boolean {
  const near = sidesBy(a.corners, b.box);
  return near.length > 0 && crossingSides(near, sidesBy(b.corners, a.box));
}

function sidesBy(corners: readonly Corner[], { x0, x1, y0, y1 }: Box): Segment[] {
  const near: Segment[] = [];
  for (let i = 0; i < corners.length; i++) {
    const [start, end] = [corners[i], corners[(i + 1) % corners.length]];
    const beside = (start[0] < x0 && end[0] < x0) || (start[0] > x1 && end[0] > x1);
    const above = (start[1] < y0 && end[1] < y0) || (start[1] > y1 && end[1] > y1);
    if (!beside && !above) near.push({ start, end });
  }
  return near;
}

function sideWords(corners: readonly Corner[], side: Side): string {
  const corner = (index: number): string =>
    `[${corners[index].map((value) => Number(value.toFixed(2))).join(', ')}]`;
  return `the side from ${corner(side.from)} to ${corner(side.to)}`;
}
