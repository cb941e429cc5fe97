import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { depthAt } from '../../../geometry/depth/depth-at.ts';
import { replay } from '../../../geometry/depth/replay.ts';
import type { WearPlateFile } from '../../../geometry/job/job-file.ts';
import { measured } from '../../../geometry/job/measured.ts';
import { toGridPoint } from '../../../geometry/part/face.ts';
import { polygonHolds } from '../../../geometry/part/polygon.ts';
import type { Vec3 } from '../../../geometry/units.ts';
import type { Ray } from '../../../web/scene/camera.ts';
import { pick, pickBeyond } from '../../../web/scene/pick.ts';
import { surfaceOf } from '../../../web/scene/surface.ts';
import type { LiveFace, LivePart } from '../../../web/wear/live-faces.ts';
import { even } from '../even.ts';
import { jobOf, PLATES, partOf } from '../tools/plates.ts';

/** Its hole stands clear of the wear: what is worn at the very edge of a hole is a matter of half a cell. */
const ROUND: WearPlateFile = {
  ...PLATES.round,
  boltHoles: [{ count: 1, circleDiameter: 150, holeDiameter: 22, startAngle: 250 }],
};
const CASES = {
  flat: ROUND,
  dished: { ...ROUND, coneAngle: 7 },
  domed: { ...ROUND, coneAngle: -7 },
  outline: PLATES.outline,
} as const satisfies Record<string, WearPlateFile>;
type CaseName = keyof typeof CASES;

const WORN = {
  round: [
    { kind: 'patch', face: 'face', first: [55, 200], second: [20, 200], depth: 4 },
    { kind: 'pit', face: 'face', at: [70, 300], diameter: 24, depth: 6, form: 'bowl' },
    { kind: 'patch', face: 'bore', first: [90, 250], second: [3, 12], depth: 3 },
  ],
  outline: [{ kind: 'patch', face: 'face', first: [50, 110], second: [0, 45], depth: 4 }],
} as const;

function livePartOf(name: CaseName, isWorn: boolean): LivePart {
  const plate = CASES[name];
  const part = partOf(plate);
  const wear = isWorn ? structuredClone(WORN[name === 'outline' ? 'outline' : 'round']) : [];
  const { marks } = measured(jobOf(plate, wear as never)).parts[0];
  return { part, faces: part.faces.map((face) => ({ part: 'plate', face, map: replay(face, marks) })) };
}

/** The metal as it is drawn, point by point: an answer by other means. */
function isMetal({ part, faces }: LivePart, times: number, [x, y, z]: Vec3): boolean {
  const { body } = part;
  if (body.kind !== 'plate') throw new Error('isMetal: needs a plate');
  for (const loop of body.loops) {
    const inside =
      loop.kind === 'circle'
        ? Math.hypot(x - loop.centre[0], y - loop.centre[1]) < loop.radius
        : polygonHolds(loop.corners, x, y);
    if (inside !== (loop.role === 'edge')) return false;
  }
  const gap = body.height(x, y) - z;
  if (gap < 0 || gap > body.thickness) return false;
  return faces.every(({ face, map }) => {
    const [nx, , nz] = face.normal(50, 0);
    if (Math.abs(nz) < 1e-9) {
      const radius = face.picture.kind === 'plane' ? face.picture.columnScale : 0;
      const top = face.position(0, 0, 0)[2];
      return Math.hypot(x, y) - radius > times * depthAt(map, face, top - z, Math.atan2(y, x));
    }
    const depth = gap * nz;
    // The normals of a cone lean: past the last of them the metal goes with the face's own edge.
    const lean = Math.min(99.99, Math.max(40.01, Math.hypot(x, y) + depth * nx));
    const [u, v] = face.picture.kind === 'polar' ? [lean, Math.atan2(y, x)] : [y, x];
    return depth > times * depthAt(map, face, u, v);
  });
}

/** Walks along the ray until it is in metal. */
function walk(part: LivePart, times: number, { from, along }: Ray, step = 0.02): Vec3 | null {
  const at = (t: number): Vec3 => [from[0] + t * along[0], from[1] + t * along[1], from[2] + t * along[2]];
  for (let t = 0; t < 700; t += step) {
    const point = at(t);
    if (Math.abs(point[2]) > 40 || Math.hypot(point[0], point[1]) > 160) continue;
    if (isMetal(part, times, point)) return at(t - step / 2);
  }
  return null;
}

const rayTo = (eye: Vec3, target: Vec3): Ray => {
  const off: Vec3 = [target[0] - eye[0], target[1] - eye[1], target[2] - eye[2]];
  const length = Math.hypot(...off);
  return { from: eye, along: [off[0] / length, off[1] / length, off[2] / length] };
};

const eyes = fc
  .tuple(even(0, 6.28), even(0.1, 1.57), fc.boolean())
  .map(([turn, above, isBehind]) => [turn, isBehind ? -above : above] as const)
  .map(
    ([turn, tilt]): Vec3 => [
      300 * Math.cos(tilt) * Math.cos(turn),
      300 * Math.cos(tilt) * Math.sin(turn),
      300 * Math.sin(tilt),
    ],
  );
const targets = fc.tuple(even(-100, 100), even(-100, 100), even(-18, 4));

describe('picking', () => {
  test.each([
    ['flat', false, 1],
    ['flat', true, 1],
    ['flat', true, 2.5],
    ['dished', true, 1],
    ['domed', true, 1],
    ['outline', true, 1],
  ] as const)(
    '%s, worn %s, drawn %d times: the first metal on the ray, if it is a face',
    (name, isWorn, times) => {
      const part = livePartOf(name, isWorn);
      let onFaces = 0;
      fc.assert(
        fc.property(eyes, targets, (eye, target) => {
          const ray = rayTo(eye, target);
          const hit = pick(part, ray, { times, deepest: 6 });
          const metal = walk(part, times, ray);
          if (hit === null) {
            // Metal that is met must then be rim, back, hole wall, or the side of a worn place at the face's edge.
            if (metal !== null) expect(isOnFace(part, times, metal)).toBe(false);
            return;
          }
          if (isAtEdge(hit.live, hit.u, hit.v)) return;
          expect(metal).not.toBeNull();
          if (metal === null) return;
          const { u, v } = surfaceOf(hit.live.face).below(metal);
          if (isAtEdge(hit.live, u, v)) return;
          onFaces += 1;
          const place = hit.live.face.position(
            hit.u,
            hit.v,
            times * depthAt(hit.live.map, hit.live.face, hit.u, hit.v),
          );
          // The walk stops within its step of the surface.
          const off = distanceToRay(ray, place);
          expect(off).toBeLessThan(0.1);
          expect(
            Math.abs(hit.distance - Math.hypot(metal[0] - eye[0], metal[1] - eye[1], metal[2] - eye[2])),
          ).toBeLessThan(0.5);
        }),
        { numRuns: 300 },
      );
      expect(onFaces).toBeGreaterThan(5);
    },
    60_000,
  );

  test('a hole is missed, its rim is not', () => {
    const part = livePartOf('flat', false);
    const down = (x: number, y: number) =>
      pick(part, { from: [x, y, 200], along: [0, 0, -1] }, { times: 1, deepest: 0 });
    expect(down(-25.7, -70.5)).toBeNull();
    expect(down(85, 0)?.point).toEqual([85, 0]);
    expect(down(0, 0)).toBeNull();
    expect(down(120, 0)).toBeNull();
  });

  test('nothing is seen through the metal: from behind the face is not there, the bore is', () => {
    const part = livePartOf('flat', false);
    expect(pick(part, { from: [60, 0, -200], along: [0, 0, 1] }, { times: 1, deepest: 0 })).toBeNull();
    const through = pick(part, rayTo([-60, 0, -90], [40, 0, -8]), { times: 1, deepest: 0 });
    expect(through?.live.face.name).toBe('bore');
    expect(through?.point).toEqual([expect.closeTo(0, 6), expect.closeTo(8, 6)]);
  });

  test('beyond its edges and over its holes a face goes on', () => {
    const part = livePartOf('flat', false);
    const [face] = part.faces;
    expect(pickBeyond(part, face, { from: [90, 0, 200], along: [0, 0, -1] })).toEqual([90, 0]);
    expect(pickBeyond(part, face, { from: [0, 130, 200], along: [0, 0, -1] })).toEqual([130, Math.PI / 2]);
    expect(pickBeyond(part, face, { from: [0, 130, 200], along: [0, 0, 1] })).toBeNull();
  });

  test('a point of the face is found again from anywhere it is seen from', () => {
    const part = livePartOf('dished', false);
    const [face] = part.faces;
    fc.assert(
      fc.property(even(45, 80), even(0, 3.8), eyes, (r, v, eye) => {
        const place = face.face.position(r, v, 0);
        const hit = pick(part, rayTo([eye[0], eye[1], Math.abs(eye[2]) + 120], place), {
          times: 1,
          deepest: 0,
        });
        expect(hit?.live.face.name).toBe('face');
        const [u] = toGridPoint(face.face, hit?.point ?? [0, 0]);
        expect(u).toBeCloseTo(r, 6);
      }),
    );
  });
});

/** So near the edge of the face, or the side of a worn place, that the walk's step may miss it. */
function isAtEdge({ face, map }: LiveFace, u: number, v: number): boolean {
  // Below the edge of a dished face its normals lean past the rim, by 4 mm x sin 7 degrees.
  const margin = 0.6;
  const across = margin / (face.picture.kind === 'polar' ? u : face.picture.columnScale);
  const depth = depthAt(map, face, u, v);
  return [
    [margin, 0],
    [-margin, 0],
    [0, across],
    [0, -across],
  ].some(
    ([du, dv]) => !face.holds(u + du, v + dv) || Math.abs(depthAt(map, face, u + du, v + dv) - depth) > 0.3,
  );
}

/** True where a face lies open: a little outward from it there is no metal for a good way. */
function isOnFace({ faces }: LivePart, times: number, [x, y, z]: Vec3): boolean {
  return faces.some(({ face, map }) => {
    const isBore = Math.abs(face.normal(50, 0)[2]) < 1e-9;
    const top = face.position(0, 0, 0)[2];
    const [u, v] = isBore
      ? [top - z, Math.atan2(y, x)]
      : face.picture.kind === 'polar'
        ? [Math.hypot(x, y), Math.atan2(y, x)]
        : [y, x];
    // Near an edge or the side of a worn place it is a matter of taste.
    const margin = 1.5;
    const around = [
      [0, 0],
      [margin, 0],
      [-margin, 0],
      [0, margin],
      [0, -margin],
    ] as const;
    const scale = face.picture.kind === 'polar' ? 1 / u : 1 / face.picture.columnScale;
    const depths = around.map(([du, dv]) =>
      face.holds(u + du, v + dv * scale) ? depthAt(map, face, u + du, v + dv * scale) : Number.NaN,
    );
    if (depths.some(Number.isNaN) || Math.max(...depths) - Math.min(...depths) > 0.05) return false;
    const [px, py, pz] = face.position(u, v, times * depths[0]);
    return Math.hypot(px - x, py - y, pz - z) < 0.05;
  });
}

function distanceToRay({ from, along }: Ray, point: Vec3): number {
  const off = [point[0] - from[0], point[1] - from[1], point[2] - from[2]];
  const t = off[0] * along[0] + off[1] * along[1] + off[2] * along[2];
  return Math.hypot(off[0] - t * along[0], off[1] - t * along[1], off[2] - t * along[2]);
}
