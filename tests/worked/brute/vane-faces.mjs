/**
 * The five faces of a vane in its own coordinates (s, n, z), and the two of the shroud. (u, v) are the two numbers of a point on a vane
 * face and true x, y on the shroud. A vane face says of every place on it how much metal lies in a thin layer `t` under it.
 * A side reaches from s = 0 to the outer end: a round nose loses what a mark there takes of it, but only from s = t / 2 on has the side
 * any area. An edge is as thick and as high as the vane is at that end. `reach` takes the other reading: that an edge's loss goes on past
 * it, as far as the vane is thicker or higher elsewhere.
 */
import { vaneCoordinates } from './camber.mjs';
import { radians } from './faces.mjs';

const TURN = 2 * Math.PI;
/** Midpoints to a column: over a few mm the camber bends so little that more change nothing in five figures. */
const LAYERS = 16;

const flat = {
  kind: 'plain',
  round: 0,
  stretch: 1,
  plain: true,
  numbers: (u, v) => [u, v],
  from: ([p, q]) => [p, q],
  picture: (u, v) => [u, v],
  direction: () => 0,
  skin: () => 1,
  /** Layers to a column that is not the same polynomial from end to end; 0 for one that is. */
  layers: () => 0,
};

/** Faces of a vane with its leading edge at angle 0, named without the vane's number. */
export function vaneFaces(vane, reach) {
  const solid = (s, n, z) =>
    s >= vane.nose(n) &&
    s <= vane.length &&
    Math.abs(n) <= vane.thickness(s) / 2 &&
    z >= 0 &&
    z <= vane.height(s);
  const swell = (s, n) => 1 - vane.curvature(s) * n;
  const inPart = (s, n, z) => ({ at: vane.place(s, n, z), swell: solid(s, n, z) ? swell(s, n) : 0 });
  const most = { t: Math.max(vane.t1, vane.t2), b: Math.max(vane.b1, vane.b2) };
  const side = (name, sign) => {
    return {
      ...flat,
      name,
      bounds: [0, vane.length, 0, most.b],
      layers: (s) => (s < vane.sideStart ? LAYERS : 0),
      inside: (s, z) => s >= 0 && s <= vane.length && z >= 0 && z <= vane.height(s),
      wallAt: (s) => vane.thickness(s),
      skin: (s) => (s < vane.sideStart ? 0 : swell(s, (sign * vane.thickness(s)) / 2)),
      layer: (s, z, t) => inPart(s, sign * (vane.thickness(s) / 2 - t), z),
      under: (s, n, z) => [s, z, vane.thickness(s) / 2 - sign * n],
    };
  };
  const tip = {
    ...flat,
    name: 'tip',
    bounds: [0, vane.length, -most.t / 2, most.t / 2],
    inside: (s, n) => s >= vane.nose(n) && s <= vane.length && Math.abs(n) <= vane.thickness(s) / 2,
    wallAt: (s) => vane.height(s),
    skin: swell,
    layer: (s, n, t) => inPart(s, n, vane.height(s) - t),
    under: (s, n, z) => [s, n, vane.height(s) - z],
  };
  const edge = (name, t, b, more) => {
    const ends = reach ? [most.b, most.t] : [b, t];
    return {
      ...flat,
      name,
      bounds: [0, ends[0], -ends[1] / 2, ends[1] / 2],
      layers: () => LAYERS,
      inside: (z, n) => z >= 0 && z <= ends[0] && Math.abs(n) <= ends[1] / 2,
      ...more,
    };
  };
  const arc = (n) => (vane.t1 / 2) * Math.asin(Math.min(1, Math.max(-1, (2 * n) / vane.t1)));
  const leading = edge('leading-edge', vane.t1, vane.b1, {
    wallAt: (_, n) => vane.length - vane.nose(n),
    // The half round of the nose stands steep at its ends: the mean over the square, or what of it lies on the face.
    skin: (_z, _n, low, high) =>
      vane.round ? (arc(high) - arc(low)) / (Math.min(high, vane.t1 / 2) - Math.max(low, -vane.t1 / 2)) : 1,
    layer: (z, n, t) => inPart(vane.nose(n) + t, n, z),
    under: (s, n, z) => [z, n, s - vane.nose(n)],
  });
  const trailing = edge('trailing-edge', vane.t2, vane.b2, {
    wallAt: () => vane.length,
    layer: (z, n, t) => inPart(vane.length - t, n, z),
    under: (s, n, z) => [z, n, vane.length - s],
  });
  return [side('pressure', 1), side('suction', -1), tip, leading, trailing];
}

/** Front and back of the shroud; none on an open impeller. `firstAngle` and `count` place the vanes. */
export function shroudFaces(impeller, vane) {
  const { shroudThickness, hubDiameter, vanes } = impeller;
  if (shroudThickness === 0) return [];
  const [hub, outer] = [hubDiameter / 2, impeller.outerDiameter / 2];
  const ring = (x, y) => {
    const r2 = x * x + y * y;
    return r2 >= hub * hub && r2 <= outer * outer;
  };
  const footprint = footprints(vane, radians(vanes.firstAngle ?? 0), vanes.count);
  const face = (name, inside, layer) => ({
    ...flat,
    name,
    kind: 'polar',
    bounds: [-outer, outer, -outer, outer],
    numbers: (x, y) => [Math.hypot(x, y), ((Math.atan2(y, x) * 360) / TURN + 360) % 360],
    from: ([r, deg]) => [r * Math.cos(radians(deg)), r * Math.sin(radians(deg))],
    direction: (x, y) => Math.atan2(y, x),
    inside,
    wallAt: () => shroudThickness,
    layer,
  });
  return [
    face(
      'shroud/front',
      (x, y) => ring(x, y) && !footprint(x, y),
      (x, y, t) => ({ at: [x, y, -t], swell: 1 }),
    ),
    face('shroud/back', ring, (x, y, t) => ({ at: [x, y, t - shroudThickness], swell: 1 })),
  ];
}

/** Whether a vane stands on (x, y): the vane whose camber comes nearest at that radius is asked. */
function footprints(vane, first, count) {
  const pitch = TURN / count;
  const wide = Math.max(vane.t1, vane.t2);
  return (x, y) => {
    const r = Math.hypot(x, y);
    if (r < vane.inlet - wide || r > vane.outer + wide) return false;
    const s = vane.along(Math.min(vane.outer, Math.max(vane.inlet, r)));
    const off = Math.atan2(y, x) - first - vane.angle(s);
    const turn = off - pitch * Math.round(off / pitch) + vane.angle(s);
    // A vane's metal lies within half its thickness of its camber; three times the thickness is sure to be off it.
    if (r * Math.abs(turn - vane.angle(s)) * vane.flattest > 3 * wide) return false;
    const [along, aside] = vaneCoordinates(vane, r * Math.cos(turn), r * Math.sin(turn));
    return along >= vane.nose(aside) && Math.abs(aside) <= vane.thickness(along) / 2;
  };
}

/** True area of a face of a vane, mm2, by adding strips along s. */
export function vaneFaceArea(vane, name) {
  if (name === 'leading-edge') return vane.b1 * (vane.round ? (Math.PI * vane.t1) / 2 : vane.t1);
  if (name === 'trailing-edge') return vane.b2 * vane.t2;
  const sign = { pressure: 1, suction: -1, tip: 0 }[name];
  const start = name === 'tip' ? 0 : vane.sideStart;
  const strips = 20000;
  const h = (vane.length - start) / strips;
  let sum = 0;
  for (let i = 0; i < strips; i += 1) {
    const s = start + (i + 0.5) * h;
    const t = vane.thickness(s);
    if (name === 'tip') {
      const round = vane.round && s < vane.t1 / 2;
      const nose = round ? vane.t1 * Math.sqrt(1 - (1 - (2 * s) / vane.t1) ** 2) : t;
      sum += h * Math.min(t, nose);
    } else sum += h * vane.height(s) * (1 - (vane.curvature(s) * sign * t) / 2);
  }
  return sum;
}
