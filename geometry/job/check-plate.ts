import { holePolygon, holesOfCircle } from './bolt-circle.ts';
import { checkHoles, checkPolygon } from './check-outline.ts';
import type { Corner } from './corners.ts';
import { type Fault, missing, shown } from './fault.ts';
import { LARGEST_MM } from './field-kinds.ts';
import type { BoltCircleFile, WearPlateFile } from './job-file.ts';
import type { Readable } from './readable.ts';

type Plate = Readable<WearPlateFile>;

/** What the sizes of a wear plate must agree on. */
export function checkPlate(plate: Plate, field: string): Fault[] {
  const shape = plate.outline === undefined ? checkRound(plate, field) : checkOutlinePlate(plate, field);
  return [...shape, ...checkLeast(plate.leastThickness, plate.thickness, 'thickness', field)];
}

/** `leastThickness` can't be more than the wall there is as new. */
export function checkLeast(
  least: number | null | undefined,
  wall: number | null | undefined,
  wallName: string,
  field: string,
): Fault[] {
  if (least == null || wall == null || least <= wall) return [];
  return [{ field: `${field}.leastThickness`, found: shown(least), needs: `at most ${wallName} ${wall}` }];
}

function checkRound(plate: Plate, field: string): Fault[] {
  const { outerDiameter: outer, boreDiameter: bore, thickness, coneAngle } = plate;
  const faults: Fault[] = [];
  const needs = 'a length in mm, or an outline instead of the two diameters';
  if (outer === undefined) faults.push(missing(`${field}.outerDiameter`, needs));
  if (bore === undefined) faults.push(missing(`${field}.boreDiameter`, needs));
  if (outer != null && bore != null && bore >= outer) {
    faults.push({
      field: `${field}.boreDiameter`,
      found: shown(bore),
      needs: `smaller than outerDiameter ${outer}`,
    });
  }
  if (bore != null && thickness != null && coneAngle != null && coneAngle < 0) {
    // On a domed face the depth runs towards the shaft: behind the bore's edge it must not pass the axis.
    const reach = thickness * Math.sin((-coneAngle * Math.PI) / 180);
    if (reach >= bore / 2) {
      const found = shown(coneAngle);
      const wanted = `so slight a cone that a depth of thickness ${thickness} stays clear of the axis in a bore of ${bore}`;
      faults.push({ field: `${field}.coneAngle`, found, needs: wanted });
    }
  }
  return [...faults, ...checkCircles(plate, field)];
}

function checkCircles(plate: Plate, field: string): Fault[] {
  const { outerDiameter: outer, boreDiameter: bore, boltHoles } = plate;
  const faults: Fault[] = [];
  const circles = (boltHoles ?? []).map((circle, i) => ({ circle, at: `${field}.boltHoles[${i}]` }));
  for (const { circle, at } of circles) {
    if (circle === null) continue;
    const { circleDiameter, holeDiameter, count } = circle;
    if (holeDiameter == null) continue;
    if (outer != null && bore != null && bore < outer && holeDiameter >= (outer - bore) / 2) {
      const needs = `smaller than ${(outer - bore) / 2}, the metal between boreDiameter and outerDiameter`;
      faults.push({ field: `${at}.holeDiameter`, found: shown(holeDiameter), needs });
      continue;
    }
    if (circleDiameter == null) continue;
    const found = shown(circleDiameter);
    if (outer != null && circleDiameter + holeDiameter >= outer) {
      const needs = `less than ${outer - holeDiameter}, where holes of ${holeDiameter} lie inside outerDiameter ${outer}`;
      faults.push({ field: `${at}.circleDiameter`, found, needs });
    }
    if (bore != null && circleDiameter - holeDiameter <= bore) {
      const needs = `more than ${bore + holeDiameter}, where holes of ${holeDiameter} lie clear of boreDiameter ${bore}`;
      faults.push({ field: `${at}.circleDiameter`, found, needs });
    }
    const spacing = count == null || count < 2 ? null : circleDiameter * Math.sin(Math.PI / count);
    if (spacing !== null && spacing <= holeDiameter) {
      const needs = `smaller than ${Number(spacing.toFixed(2))}, the distance between neighbouring holes of the circle`;
      faults.push({ field: `${at}.holeDiameter`, found: shown(holeDiameter), needs });
    }
  }
  return [...faults, ...checkCirclePairs(circles)];
}

interface PlacedCircle {
  readonly circle: Readable<BoltCircleFile> | null;
  readonly at: string;
}

function checkCirclePairs(circles: readonly PlacedCircle[]): Fault[] {
  const faults: Fault[] = [];
  const drilled = circles.flatMap(({ circle, at }) => {
    const whole = circle === null ? null : wholeCircle(circle);
    return whole === null ? [] : [{ holes: holesOfCircle(whole), whole, at }];
  });
  for (const [i, later] of drilled.entries()) {
    const earlier = drilled.slice(0, i).find(({ holes, whole }) => {
      const apart = (whole.holeDiameter + later.whole.holeDiameter) / 2;
      if (Math.abs(whole.circleDiameter - later.whole.circleDiameter) / 2 >= apart) return false;
      return holes.some((a) => later.holes.some((b) => Math.hypot(a.x - b.x, a.y - b.y) < apart));
    });
    if (earlier === undefined) continue;
    faults.push({
      field: later.at,
      found: `a circle with holes that overlap those of ${earlier.at}`,
      needs: 'clear of them',
    });
  }
  return faults;
}

function checkOutlinePlate(plate: Plate, field: string): Fault[] {
  const faults: Fault[] = [];
  for (const name of ['outerDiameter', 'boreDiameter', 'coneAngle'] as const) {
    // An outline that could not be read may not be meant at all.
    const value = plate.outline === null ? null : plate[name];
    if (value == null || (name === 'coneAngle' && value === 0)) continue;
    const needs = name === 'coneAngle' ? '0 beside an outline, which is flat' : 'left out beside an outline';
    faults.push({
      field: `${field}.${name}`,
      found: shown(value),
      needs,
      problem: `${value} is to be ${needs}`,
    });
  }
  const edge = plate.outline?.edge;
  if (edge == null) return faults;
  const edgeFaults = [...checkExtent(edge, field), ...checkPolygon(edge, `${field}.outline.edge`)];
  const holes = outlineHoles(plate, field);
  const holeFaults = holes.map((hole) => checkPolygon(hole.corners, hole.field));
  const sound = holes.filter((_, i) => holeFaults[i].length === 0);
  const placing = edgeFaults.length === 0 ? checkHoles(edge, sound) : [];
  return [...faults, ...edgeFaults, ...holeFaults.flat(), ...placing];
}

/** An outline is no larger than a plate that is given by its diameter; a slip in the unit is. */
function checkExtent(edge: readonly Corner[], field: string): Fault[] {
  const extents = [0, 1].map((i) => {
    const along = edge.map((corner) => corner[i]);
    return Math.max(...along) - Math.min(...along);
  });
  const most = Math.max(...extents);
  if (most <= LARGEST_MM) return [];
  return [
    {
      field: `${field}.outline.edge`,
      found: `an outline ${most} mm long`,
      needs: `at most ${LARGEST_MM} mm`,
    },
  ];
}

function outlineHoles(plate: Plate, field: string): { corners: readonly Corner[]; field: string }[] {
  const drawn = (plate.outline?.holes ?? []).map((corners, i) => ({
    corners,
    field: `${field}.outline.holes[${i}]`,
  }));
  const drilled = (plate.boltHoles ?? []).flatMap((circle, i) => {
    const whole = circle === null ? null : wholeCircle(circle);
    if (whole === null) return [];
    return holesOfCircle(whole).map((hole) => ({
      corners: holePolygon(hole),
      field: `${field}.boltHoles[${i}]`,
    }));
  });
  return [...drawn, ...drilled];
}

/** The circle when all it takes to drill it could be read. */
function wholeCircle(circle: Readable<BoltCircleFile>): BoltCircleFile | null {
  const { count, circleDiameter, holeDiameter, startAngle } = circle;
  if (count == null || circleDiameter == null || holeDiameter == null || startAngle === null) return null;
  return { count, circleDiameter, holeDiameter, startAngle };
}
