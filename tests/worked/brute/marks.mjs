/** Wear marks evaluated at one point of a face, straight from their formulas. (u, v) as in faces.mjs; depth mm. */
import { insideRing, nearZero, radians } from './faces.mjs';
import { krigingOf } from './kriging.mjs';

const TURN = 2 * Math.PI;
const FAR = Infinity;

/**
 * A mark made ready for one face: `reach` is a box of (u, v) it stays inside, `depthAt(u, v)` its own depth there or NaN outside it,
 * `after(u, v, d)` the depth once it has met what is there, `corners` the points where its depth may peak.
 */
export function readyMark(mark, face) {
  const shape = shapeOf(mark, face);
  return { ...shape, mark, after: (u, v, d) => blend(mark, shape.depthAt(u, v), d) };
}

function blend(mark, own, before) {
  if (Number.isNaN(own)) return before;
  if (mark.kind === 'smooth') return before;
  if (mark.clear === true) return mark.edge === 'soft' ? before * (1 - own) : 0;
  if (mark.blend === 'add') return before + own;
  if (mark.blend === 'replace') return own;
  return Math.max(before, own);
}

function shapeOf(mark, face) {
  switch (mark.kind) {
    case 'patch':
      return patch(mark, face);
    case 'area':
      return area(mark, face);
    case 'pit': {
      const at = pathOn([mark.at], face, mark.diameter / 2);
      const form = { cone: (s) => 1 - s, bowl: (s) => 1 - s * s, flat: () => 1 }[mark.form];
      return brush(at, mark.diameter / 2, (s) => mark.depth * form(s), face, [mark.at]);
    }
    case 'stroke': {
      const depth = mark.clear === true ? 1 : mark.depth;
      const form = mark.edge === 'soft' ? (s) => depth * (1 - s * s) ** 2 : () => depth;
      return brush(pathOn(mark.path, face, mark.radius), mark.radius, form, face, mark.path);
    }
    case 'edge':
      return edge(mark, face);
    case 'readings':
      return readings(mark, face);
    case 'smooth': {
      const form = (s) => mark.strength * (1 - s * s) ** 2;
      return brush(pathOn(mark.path, face, mark.radius), mark.radius, form, face, []);
    }
    default:
      throw new Error(`no such mark here: ${mark.kind}`);
  }
}

function brush(path, radius, form, face, points) {
  return {
    reach: path.reach,
    corners: points.map(face.from),
    depthAt: (u, v) => {
      const x = path.distance(u, v);
      return x > radius ? NaN : form(x / radius);
    },
  };
}

/** Distance to a path of straight lines in the flat picture, each line drawn in the picture unrolled about its own first point. */
function pathOn(points, face, radius) {
  const placed = points.map(face.from);
  const lines = placed.slice(placed.length > 1 ? 1 : 0).map((end, i) => {
    const start = placed[placed.length > 1 ? i : 0];
    const ref = face.direction(...start);
    const [[ax, ay], [bx, by]] = [face.picture(...start, ref), face.picture(...end, ref)];
    const long = (bx - ax) ** 2 + (by - ay) ** 2;
    return { ref, ax, ay, dx: bx - ax, dy: by - ay, long };
  });
  const us = placed.map((p) => p[0]);
  const vs = placed.map((p) => p[1]);
  const margin = radius * 1.02 + 1;
  const whole = face.round > 0 ? [-FAR, FAR] : [Math.min(...us) - margin, Math.max(...us) + margin];
  return {
    reach: [...whole, Math.min(...vs) - margin, Math.max(...vs) + margin],
    distance: (u, v) => {
      let least = FAR;
      for (const line of lines) {
        const [x, y] = face.plain ? [u, v] : face.picture(u, v, line.ref);
        const along = line.long === 0 ? 0 : ((x - line.ax) * line.dx + (y - line.ay) * line.dy) / line.long;
        const s = Math.min(1, Math.max(0, along));
        const d2 = (x - line.ax - s * line.dx) ** 2 + (y - line.ay - s * line.dy) ** 2;
        if (d2 < least) least = d2;
      }
      return Math.sqrt(least);
    },
  };
}

/** A polygon in the flat picture; round the bore each corner is taken the short way from the one before. */
function area(mark, face) {
  const inside = polygon(mark.outline, face);
  return {
    reach: [-FAR, FAR, -FAR, FAR],
    corners: [],
    depthAt: (u, v) => (inside(u, v) ? mark.depth : NaN),
  };
}

function polygon(outline, face) {
  const placed = outline.map(face.from);
  const ref = face.direction(...placed[0]);
  const ring = placed.map(([u, v]) => face.picture(u, v, ref));
  return (u, v) => insideRing(ring, ...face.picture(u, v, ref));
}

/** The surface between gauge readings; none of it stands above the new face. */
function readings(mark, face) {
  const inside = mark.within === undefined ? () => true : polygon(mark.within, face);
  const surface = krigingOf(mark, face);
  return {
    reach: [-FAR, FAR, -FAR, FAR],
    corners: surface.read.map(({ at }) => at),
    depthAt: (u, v) => (inside(u, v) ? Math.max(0, surface.mean(u, v)) : NaN),
  };
}

function patch(mark, face) {
  const angular = { polar: 1, bore: 0, plain: -1 }[face.kind];
  const spans = [mark.first, mark.second].map(([from, to], i) => {
    if (i !== angular) return (value) => (value >= from && value <= to ? (value - from) / (to - from) : NaN);
    const wide = to - from >= 360 ? TURN : radians((((to - from) % 360) + 360) % 360) || TURN;
    return (rad) => {
      const past = nearZero(rad - radians(from) - Math.PI) + Math.PI;
      return past <= wide ? past / wide : NaN;
    };
  });
  const [d1, d2] = Array.isArray(mark.depth) ? mark.depth : [mark.depth, mark.depth];
  return {
    reach: [-FAR, FAR, -FAR, FAR],
    corners: mark.first.flatMap((p) => mark.second.map((q) => face.from([p, q]))),
    depthAt: (u, v) => {
      const first = face.kind === 'polar' ? Math.hypot(u, v) : face.kind === 'bore' ? u / face.radius : u;
      const second = face.kind === 'polar' ? Math.atan2(v, u) : v;
      const along = spans[0](first);
      return Number.isNaN(along) || Number.isNaN(spans[1](second)) ? NaN : d1 + (d2 - d1) * along;
    },
  };
}

/** Loss against the face's first coordinate, straight between the points of the profile, the same all the way across. */
function edge({ profile }, face) {
  return {
    reach: [profile[0][0] - 1, profile.at(-1)[0] + 1, -FAR, FAR],
    corners: profile.map(([p]) => face.from([p, 0])),
    depthAt: (u) => {
      const i = profile.findIndex(([p], k) => k > 0 && u <= p);
      if (i < 0 || u < profile[0][0]) return NaN;
      const [[p, a], [q, b]] = [profile[i - 1], profile[i]];
      return a + ((b - a) * (u - p)) / (q - p);
    },
  };
}
