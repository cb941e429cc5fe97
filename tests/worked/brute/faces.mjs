/**
 * The worked faces of a wear plate, for the brute-force calculation. Lengths mm, angles radians, depth into the metal.
 * A face is sampled in its own two coordinates (u, v): true x, y on the running face, arc length and distance below the face on the bore.
 */

const TURN = 2 * Math.PI;
export const radians = (deg) => (deg * Math.PI) / 180;
const degrees = (rad) => ((((rad * 180) / Math.PI) % 360) + 360) % 360;
/** The same angle in [-pi, pi). */
export const nearZero = (angle) => angle - TURN * Math.floor((angle + Math.PI) / TURN);

/** Even-odd rule; `ring` is a list of [x, y]. */
export function insideRing(ring, x, y) {
  let inside = false;
  for (let i = 0, j = ring.length - 1; i < ring.length; j = i, i += 1) {
    const [xi, yi] = ring[i];
    const [xj, yj] = ring[j];
    if (yi > y !== yj > y && x < ((xj - xi) * (y - yi)) / (yj - yi) + xi) inside = !inside;
  }
  return inside;
}

export function facesOf(plate) {
  const holes = boltHoles(plate);
  if (plate.outline !== undefined) return [outlineFace(plate, holes)];
  return [runningFace(plate, holes), boreWall(plate)];
}

function boltHoles(plate) {
  return (plate.boltHoles ?? []).flatMap((ring) =>
    Array.from({ length: ring.count }, (_, i) => {
      const angle = radians(ring.startAngle ?? 0) + (TURN * i) / ring.count;
      const reach = ring.circleDiameter / 2;
      return [reach * Math.cos(angle), reach * Math.sin(angle), ring.holeDiameter / 2];
    }),
  );
}

const clearOf = (holes, x, y) => holes.every(([hx, hy, r]) => (x - hx) ** 2 + (y - hy) ** 2 > r * r);

function runningFace(plate, holes) {
  const outer = plate.outerDiameter / 2;
  const bore = plate.boreDiameter / 2;
  const slope = radians(plate.coneAngle ?? 0);
  const [sin, cos] = [Math.sin(slope), Math.cos(slope)];
  return {
    name: 'face',
    bounds: [-outer, outer, -outer, outer],
    round: 0,
    kind: 'polar',
    stretch: 1 / cos,
    wall: plate.thickness,
    thickness: plate.thickness,
    outer,
    bore,
    slope,
    inside: (x, y) => {
      const r2 = x * x + y * y;
      return r2 <= outer * outer && r2 >= bore * bore && clearOf(holes, x, y);
    },
    /** Growth of area per mm along the inward normal: the offset circle has radius r + t sin a. */
    growth: (x, y) => (sin === 0 ? 0 : sin / Math.hypot(x, y)),
    place: (x, y, t) => {
      const r = Math.hypot(x, y);
      const far = 1 + (t * sin) / r;
      return [x * far, y * far, ((r - outer) * sin) / cos - t * cos];
    },
    numbers: (x, y) => [Math.hypot(x, y), degrees(Math.atan2(y, x))],
    from: ([radius, deg]) => [radius * Math.cos(radians(deg)), radius * Math.sin(radians(deg))],
    /** The flat picture near direction `ref`: true x, y when flat, the cone unrolled along its slope when not. */
    picture:
      sin === 0
        ? (x, y) => [x, y]
        : (x, y, ref) => {
            const [rho, turn] = [Math.hypot(x, y) / cos, nearZero(Math.atan2(y, x) - ref) * cos];
            return [rho * Math.cos(turn), rho * Math.sin(turn)];
          },
    plain: sin === 0,
    direction: (x, y) => Math.atan2(y, x),
  };
}

function boreWall(plate) {
  const [outer, bore] = [plate.outerDiameter / 2, plate.boreDiameter / 2];
  const top = (bore - outer) * Math.tan(radians(plate.coneAngle ?? 0));
  return {
    name: 'bore',
    bounds: [0, TURN * bore, 0, plate.thickness],
    round: TURN * bore,
    kind: 'bore',
    stretch: 1,
    wall: outer - bore,
    radius: bore,
    top,
    inside: (_, below) => below >= 0 && below <= plate.thickness,
    growth: () => 1 / bore,
    place: (arc, below, t) => [
      (bore + t) * Math.cos(arc / bore),
      (bore + t) * Math.sin(arc / bore),
      top - below,
    ],
    numbers: (arc, below) => [degrees(arc / bore), below],
    from: ([deg, below]) => [(((radians(deg) % TURN) + TURN) % TURN) * bore, below],
    picture: (arc, below, ref) => [nearZero(arc / bore - ref) * bore, below],
    plain: false,
    direction: (arc) => arc / bore,
  };
}

function outlineFace(plate, holes) {
  const { edge, holes: windows = [] } = plate.outline;
  const [xs, ys] = [edge.map((p) => p[0]), edge.map((p) => p[1])];
  return {
    name: 'face',
    bounds: [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)],
    round: 0,
    kind: 'plain',
    stretch: 1,
    wall: plate.thickness,
    inside: (x, y) =>
      insideRing(edge, x, y) && windows.every((ring) => !insideRing(ring, x, y)) && clearOf(holes, x, y),
    growth: () => 0,
    place: (x, y, t) => [x, y, -t],
    numbers: (x, y) => [x, y],
    from: ([x, y]) => [x, y],
    picture: (x, y) => [x, y],
    plain: true,
    direction: () => 0,
  };
}
