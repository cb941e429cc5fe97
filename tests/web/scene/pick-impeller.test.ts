import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { depthAt } from '../../../geometry/depth/depth-at.ts';
import { replay } from '../../../geometry/depth/replay.ts';
import type { Mark } from '../../../geometry/job/job.ts';
import { vaneFaceOf } from '../../../geometry/part/vane-mesh.ts';
import type { Vec3 } from '../../../geometry/units.ts';
import type { Ray } from '../../../web/scene/camera.ts';
import { isHiddenBehind } from '../../../web/scene/hidden-behind.ts';
import { pick, pickBeyond } from '../../../web/scene/pick.ts';
import type { LiveFace, LivePart } from '../../../web/wear/live-faces.ts';
import { bodyOf, impellerPart } from '../../geometry/part/impellers.ts';
import { even } from '../even.ts';

const WEAR: readonly Mark[] = [
  {
    kind: 'edge',
    face: 'vane-*/leading-edge',
    profile: [
      [0, 3],
      [40, 12],
    ],
    blend: 'deepest',
  },
  {
    kind: 'edge',
    face: 'vane-1/trailing-edge',
    profile: [
      [0, 10],
      [26, 4],
    ],
    blend: 'deepest',
  },
  {
    kind: 'edge',
    face: 'vane-*/tip',
    profile: [
      [40, 2],
      [120, 6],
    ],
    blend: 'deepest',
  },
  {
    kind: 'patch',
    face: 'vane-*/pressure',
    first: [30, 90],
    second: [5, 25],
    depth: [3, 3],
    blend: 'deepest',
  },
  // With the pressure side this goes right through the vane.
  {
    kind: 'patch',
    face: 'vane-2/suction',
    first: [50, 80],
    second: [8, 20],
    depth: [5.5, 5.5],
    blend: 'deepest',
  },
  {
    kind: 'patch',
    face: 'shroud/front',
    first: [80, 120],
    second: [0, 6.28],
    depth: [3, 3],
    blend: 'deepest',
  },
];

const KINDS = {
  usual: {},
  'turning the other way': { rotation: 'counter-clockwise', vanes: { camber: 'arc' } },
  'open, square-nosed, tapered': {
    shroudThickness: 0,
    vanes: { nose: 'square', thicknessInlet: 10, thicknessOutlet: 7, count: 7 },
  },
} as const satisfies Record<string, Parameters<typeof impellerPart>[0]>;

function liveOf(shape: Parameters<typeof impellerPart>[0], marks: readonly Mark[]): LivePart {
  const part = impellerPart(shape, 1);
  return { part, faces: part.faces.map((face) => ({ part: 'impeller', face, map: replay(face, marks) })) };
}

/** The metal as it is drawn, point by point, by the definitions of the shapes: what a vane has lost is the union of its faces' loss. */
function isMetal({ part, faces }: LivePart, times: number, point: Vec3): boolean {
  const { shape, vanes } = bodyOf(part);
  const [x, y, z] = point;
  const r = Math.hypot(x, y);
  if (r >= shape.boreRadius && r <= shape.hubRadius && z <= shape.hubHeight && z >= -shape.shroudThickness)
    return true;
  const live = (name: string) => faces.find(({ face }) => face.name === name) as LiveFace;
  const drawn = (name: string, u: number, v: number) =>
    times * depthAt(live(name).map, live(name).face, u, v);
  if (shape.shroudThickness > 0 && r >= shape.hubRadius && r <= shape.outerRadius && z <= 0 && z >= -10) {
    const v = Math.atan2(y, x);
    const worn = live('shroud/front').face.holds(r, v) ? drawn('shroud/front', r, v) : 0;
    if (z <= -worn) return true;
  }
  return vanes.some((vane) => {
    const { s, n } = vane.locate(point);
    if (s < 0 || s > vane.length || z < 0 || z > vane.height(s) || Math.abs(n) > vane.halfThickness(s))
      return false;
    const on = `vane-${vane.number}`;
    const half = vane.thickness(s) / 2;
    const nose = Math.min(vane.noseThickness / 2, Math.abs(n));
    return (
      half - n >= drawn(`${on}/pressure`, s, z) &&
      half + n >= drawn(`${on}/suction`, s, z) &&
      vane.height(s) - z >= drawn(`${on}/tip`, s, n) &&
      s - vane.noseAt(nose) >= drawn(`${on}/leading-edge`, z, n) &&
      vane.length - s >= drawn(`${on}/trailing-edge`, z, n)
    );
  });
}

const at = ({ from, along }: Ray, t: number): Vec3 => [
  from[0] + t * along[0],
  from[1] + t * along[1],
  from[2] + t * along[2],
];

/** Distance at which a walk along the ray comes into metal; null when it never does. */
function walk(part: LivePart, times: number, ray: Ray, step = 0.1): number | null {
  for (let t = 0; t < 800; t += step) {
    const [x, y, z] = at(ray, t);
    if (z > 46 || z < -12 || Math.hypot(x, y) > 158) continue;
    // A sliver at a corner is for either to miss.
    if (isMetal(part, times, [x, y, z]) && isMetal(part, times, at(ray, t + 0.4))) return t;
  }
  return null;
}

/** The ray moved sideways and up, mm. */
function shifted({ from, along }: Ray, right: number, up: number): Ray {
  const level = Math.hypot(along[0], along[1]);
  const side: Vec3 = [-along[1] / level, along[0] / level, 0];
  const over: Vec3 = [side[1] * along[2], -side[0] * along[2], side[0] * along[1] - side[1] * along[0]];
  return { along, from: [0, 1, 2].map((k) => from[k] + right * side[k] + up * over[k]) as unknown as Vec3 };
}

const rayTo = (eye: Vec3, target: Vec3): Ray => {
  const off: Vec3 = [target[0] - eye[0], target[1] - eye[1], target[2] - eye[2]];
  const length = Math.hypot(...off);
  return { from: eye, along: [off[0] / length, off[1] / length, off[2] / length] };
};

const eyes = fc
  .tuple(even(0, 6.28), even(0.15, 1.57))
  .map(
    ([turn, tilt]): Vec3 => [
      400 * Math.cos(tilt) * Math.cos(turn),
      400 * Math.cos(tilt) * Math.sin(turn),
      400 * Math.sin(tilt),
    ],
  );
const targets = fc.tuple(even(-150, 150), even(-150, 150), even(0, 40));

describe('picking on an impeller', () => {
  test.each([
    ['usual', false, 1],
    ['usual', true, 1],
    ['turning the other way', true, 1.3],
    ['open, square-nosed, tapered', true, 1],
  ] as const)(
    '%s, worn %s, drawn %d times: the first metal on the ray',
    (kind, isWorn, times) => {
      const part = liveOf(
        KINDS[kind],
        isWorn
          ? WEAR.filter(({ face }) => kind !== 'open, square-nosed, tapered' || !face.startsWith('shroud'))
          : [],
      );
      let onVanes = 0;
      let missed = 0;
      let settled = 0;
      fc.assert(
        fc.property(eyes, targets, (eye, target) => {
          const ray = rayTo(eye, target);
          const hit = pick(part, ray, { times, deepest: 20 });
          // What a hair's breadth aside would be something else is a matter of taste.
          const aside = [-0.4, 0.4].flatMap((off) => [shifted(ray, off, 0), shifted(ray, 0, off)]);
          const isSettled = aside.every((other) => {
            const there = pick(part, other, { times, deepest: 20 });
            if (there === null || hit === null) return there === hit;
            return there.live.face === hit.live.face && Math.abs(there.distance - hit.distance) < 3;
          });
          if (!isSettled) return;
          settled += 1;
          const met = walk(part, times, ray);
          if (hit === null) {
            // Hub, rim, back, the bottom of a vane, what a vane stands on, or the wall of a worn place: no face.
            missed += 1;
            if (met !== null) expect(isOpenVane(part, times, ray, met)).toBe(false);
            return;
          }
          const { face, map } = hit.live;
          if (vaneFaceOf(face.name) !== null) onVanes += 1;
          // The place that was found is the one on the ray.
          const place = face.position(hit.u, hit.v, times * depthAt(map, face, hit.u, hit.v));
          const there = at(ray, hit.distance);
          const off = Math.hypot(place[0] - there[0], place[1] - there[1], place[2] - there[2]);
          // At the wall of a worn place the depth jumps within a cell.
          const isSteep = steepness(hit.live, hit.u, hit.v) > 0.3 || isAtEdge(hit.live, hit.u, hit.v);
          if (!isSteep) expect(off).toBeLessThan(0.1);
          if (!isSteep) expect(met).not.toBeNull();
          const [nx, ny, nz] = face.normal(hit.u, hit.v);
          const facing = -(nx * ray.along[0] + ny * ray.along[1] + nz * ray.along[2]);
          // A ray that grazes the face comes into it slowly.
          if (met !== null && !isSteep) expect(Math.abs(met - hit.distance) * facing).toBeLessThan(0.2);
        }),
        { numRuns: 120 },
      );
      expect(onVanes).toBeGreaterThan(5);
      expect(settled - missed).toBeGreaterThan(12);
    },
    60_000,
  );

  test('sides, tip and edges are told apart', () => {
    const part = liveOf({}, []);
    const [vane] = bodyOf(part.part).vanes;
    const nameAt = (s: number, n: number, z: number, along: Vec3) => {
      const place = vane.position(s, n, z);
      const from: Vec3 = [place[0] - 30 * along[0], place[1] - 30 * along[1], place[2] - 30 * along[2]];
      return pick(part, { from, along }, { times: 1, deepest: 0 })?.live.face.name;
    };
    const { nx, ny, tx, ty } = vane.camber(100);
    expect(nameAt(100, 4, 15, [-nx, -ny, 0])).toBe('vane-1/pressure');
    expect(nameAt(100, -4, 15, [nx, ny, 0])).toBe('vane-1/suction');
    expect(nameAt(100, 1, vane.height(100), [0, 0, -1])).toBe('vane-1/tip');
    const first = vane.camber(0);
    expect(nameAt(0, 0, 20, [first.tx, first.ty, 0])).toBe('vane-1/leading-edge');
    const last = vane.camber(vane.length);
    expect(nameAt(vane.length, 0, 20, [-last.tx, -last.ty, 0])).toBe('vane-1/trailing-edge');
    // Along the vane's own direction, through its metal, nothing behind is seen.
    expect(nameAt(60, 0, 20, [tx, ty, 0])).not.toBe('vane-1/trailing-edge');
  });

  test('never through to the far side: the side that faces away is not found', () => {
    const part = liveOf({}, []);
    const { vanes } = bodyOf(part.part);
    fc.assert(
      fc.property(eyes, fc.nat(4), even(12, 190), even(1, 24), (eye, k, s, z) => {
        const vane = vanes[k];
        const near = vane.camber(s);
        for (const [name, sign] of [
          ['pressure', 1],
          ['suction', -1],
        ] as const) {
          const place = vane.position(s, (sign * vane.thickness(s)) / 2, z);
          const ray = rayTo(eye, place);
          const hit = pick(part, ray, { times: 1, deepest: 0 });
          if (hit === null) continue;
          const out = hit.live.face.normal(hit.u, hit.v);
          expect(out[0] * ray.along[0] + out[1] * ray.along[1] + out[2] * ray.along[2]).toBeLessThan(0.02);
          const isHere = hit.live.face.name === `vane-${k + 1}/${name}` && Math.abs(hit.u - s) < 1;
          const facing = sign * (near.nx * (eye[0] - place[0]) + near.ny * (eye[1] - place[1]));
          if (facing < -20) expect(isHere).toBe(false);
          // Seen, if nothing stands before it, at just this place.
          else if (facing > 20 && isHere) {
            expect(hit.u).toBeCloseTo(s, 4);
            expect(hit.v).toBeCloseTo(z, 4);
          }
        }
      }),
      { numRuns: 200 },
    );
  });

  test('through a hole worn right through a vane the next thing is met', () => {
    const part = liveOf({}, WEAR);
    const vane = bodyOf(part.part).vanes[1];
    const [x, y, z] = vane.position(65, 0, 14);
    const { nx, ny } = vane.camber(65);
    const hit = pick(
      part,
      { from: [x + 40 * nx, y + 40 * ny, z], along: [-nx, -ny, 0] },
      { times: 1, deepest: 20 },
    );
    expect(hit?.live.face.name.startsWith('vane-2/') ?? false).toBe(false);
    const sound = pick(
      liveOf({}, []),
      { from: [x + 40 * nx, y + 40 * ny, z], along: [-nx, -ny, 0] },
      { times: 1, deepest: 0 },
    );
    expect(sound?.live.face.name).toBe('vane-2/pressure');
  });

  test('a face of a vane goes on past its edges', () => {
    const part = liveOf({}, []);
    const vane = bodyOf(part.part).vanes[0];
    const faceOf = (name: string) =>
      part.faces.find(({ face }) => face.name === `vane-1/${name}`) as LiveFace;
    const { nx, ny } = vane.camber(80);
    const over = vane.position(80, 4, 55);
    const beside: Ray = { from: [over[0] + 30 * nx, over[1] + 30 * ny, over[2]], along: [-nx, -ny, 0] };
    expect(pickBeyond(part, faceOf('pressure'), beside)).toEqual([
      expect.closeTo(80, 3),
      expect.closeTo(55, 6),
    ]);
    // From behind it is not met.
    const behind: Ray = { from: [over[0] - 30 * nx, over[1] - 30 * ny, over[2]], along: [nx, ny, 0] };
    const back = pickBeyond(part, faceOf('pressure'), behind);
    expect(back === null || Math.abs(back[0] - 80) > 5).toBe(true);
    const past = vane.position(100, 9, 0);
    const [along, across] =
      pickBeyond(part, faceOf('tip'), { from: [past[0], past[1], 200], along: [0, 0, -1] }) ?? [];
    expect(along).toBeCloseTo(100, 3);
    expect(across).toBeCloseTo(9, 6);
    const nose = vane.camber(0);
    const low = vane.position(0, 11, 47);
    const ray: Ray = {
      from: [low[0] - 30 * nose.tx, low[1] - 30 * nose.ty, low[2]],
      along: [nose.tx, nose.ty, 0],
    };
    expect(pickBeyond(part, faceOf('leading-edge'), ray)).toEqual([
      expect.closeTo(47, 6),
      expect.closeTo(11, 3),
    ]);
  });
});

describe('what stands before a place', () => {
  test('is another vane or the hub, never the vane itself nor the side towards the eye', () => {
    const part = liveOf({}, []);
    const { vanes } = bodyOf(part.part);
    fc.assert(
      fc.property(eyes, fc.nat(4), even(12, 190), even(2, 24), (eye, k, s, z) => {
        const live = part.faces.find(({ face }) => face.name === `vane-${k + 1}/pressure`) as LiveFace;
        const place = vanes[k].position(s, 4, z);
        const { nx, ny } = vanes[k].camber(s);
        if (nx * (eye[0] - place[0]) + ny * (eye[1] - place[1]) < 40) return;
        const hit = pick(part, rayTo(eye, place), { times: 1, deepest: 0 });
        const isFound = hit !== null && hit.live.face === live.face && Math.abs(hit.u - s) < 1;
        const isOwn = hit?.live.face.name.startsWith(`vane-${k + 1}/`) ?? false;
        const isHidden = isHiddenBehind(part.part, live.face, eye, place);
        if (isFound) expect(isHidden).toBe(false);
        else if (!isOwn) expect(isHidden).toBe(true);
      }),
      { numRuns: 200 },
    );
  });
});

/** True when the place where a ray comes into metal is a vane's, away from its foot, and on an even stretch of a face that looks at the eye. */
function isOpenVane({ part, faces }: LivePart, times: number, ray: Ray, distance: number): boolean {
  const point = at(ray, distance);
  return bodyOf(part).vanes.some((vane) => {
    const { s, n, z } = vane.locate(point);
    const half = vane.halfThickness(s);
    if (s < 0 || s > vane.length || z < 0.5 || z > vane.height(s) || Math.abs(n) > half) return false;
    const near = [
      ['pressure', s, z, half - n],
      ['suction', s, z, half + n],
      ['tip', s, n, vane.height(s) - z],
    ] as const;
    return near.some(([name, u, v, below]) => {
      const live = faces.find(({ face }) => face.name === `vane-${vane.number}/${name}`) as LiveFace;
      const [nx, ny, nz] = live.face.normal(u, v);
      const facing = -(nx * ray.along[0] + ny * ray.along[1] + nz * ray.along[2]);
      const drawn = times * depthAt(live.map, live.face, u, v);
      return facing > 0.3 && Math.abs(below - drawn) < 0.1 && steepness(live, u, v) < 0.05;
    });
  });
}

function isAtEdge({ face }: LiveFace, u: number, v: number): boolean {
  const reach = 0.6;
  const across = reach / (face.picture.kind === 'polar' ? u : 1);
  return [
    [reach, 0],
    [-reach, 0],
    [0, across],
    [0, -across],
  ].some(([du, dv]) => !face.holds(u + du, v + dv));
}

/** How much the depth changes within a little way of a place, mm. */
function steepness({ face, map }: LiveFace, u: number, v: number): number {
  const reach = 1.2;
  const across = reach / (face.picture.kind === 'polar' ? u : 1);
  const depth = depthAt(map, face, u, v);
  return Math.max(
    ...[
      [reach, 0],
      [-reach, 0],
      [0, across],
      [0, -across],
    ].map(([du, dv]) => Math.abs(depthAt(map, face, u + du, v + dv) - depth)),
  );
}
