import type { Vanes } from '../../geometry/job/job.ts';
import { toRadians } from '../../geometry/units.ts';
import { lofted } from './solids.ts';

/** The camber drawn by small straight steps, written from the definitions alone: beta linear in r, swept back against the rotation. */
function drawCamber(clockwise: boolean) {
  const step = 0.002;
  const sweep = clockwise ? 1 : -1;
  const places: { x: number; y: number; nx: number; ny: number; r: number }[] = [];
  let [r, theta] = [65, 0];
  const beta = (radius: number) => toRadians(22 + (6 * (radius - 65)) / 85);
  for (;;) {
    const b = beta(r);
    const [ex, ey] = [Math.cos(theta), Math.sin(theta)];
    // Across the camber, on the side it turns towards.
    const forward = clockwise ? -1 : 1;
    const nx = Math.cos(b) * ex + forward * Math.sin(b) * -ey;
    const ny = Math.cos(b) * ey + forward * Math.sin(b) * ex;
    places.push({ x: r * ex, y: r * ey, nx, ny, r });
    if (r >= 150) break;
    const middle = r + (step / 2) * Math.sin(b);
    theta += ((sweep * step) / middle) * Math.cos(beta(middle));
    r += step * Math.sin(beta(middle));
  }
  return { length: (places.length - 1) * step, at: (s: number) => places[Math.round(s / step)] };
}

const STATIONS = 500;

/** A vane and pieces of it as closed meshes, in the part frame. Nothing here uses the engine. */
export function vaneSolids(vanes: Vanes, clockwise: boolean) {
  const camber = drawCamber(clockwise);
  const within = (s: number) => Math.min(Math.max(s, 0), camber.length);
  const t = (s: number) =>
    vanes.thicknessInlet + ((vanes.thicknessOutlet - vanes.thicknessInlet) * within(s)) / camber.length;
  const b = (s: number) =>
    vanes.heightInlet + ((vanes.heightOutlet - vanes.heightInlet) * (camber.at(within(s)).r - 65)) / 85;
  const place = (s: number, n: number, z: number): readonly [number, number, number] => {
    const on = within(s);
    const { x, y, nx, ny } = camber.at(on);
    // Past the ends straight on: tangent = normal turned back by a quarter.
    const turn = clockwise ? 1 : -1;
    const [tx, ty] = [-turn * ny, turn * nx];
    return [x + n * nx + (s - on) * tx, y + n * ny + (s - on) * ty, z];
  };
  /** Sections across the vane from s0 to s1, four corners (n, z) each. */
  const along = (s0: number, s1: number, corners: (s: number) => readonly (readonly [number, number])[]) =>
    lofted(
      Array.from({ length: STATIONS + 1 }, (_, i) => {
        const s = s0 + ((s1 - s0) * i) / STATIONS;
        return corners(s).map(([n, z]) => place(s, n, z));
      }),
    );
  const box = (n0: number, n1: number, z0: number, z1: number) =>
    [
      [n0, z0],
      [n1, z0],
      [n1, z1],
      [n0, z1],
    ] as const;
  return {
    length: camber.length,
    whole: () => along(0, camber.length, (s) => box(-t(s) / 2, t(s) / 2, 0, b(s))),
    /** What lies within d of the side, from s0 to s1 and z0 to z1; a little more outside, so that no faces coincide. */
    side: (sign: number, d: number, s0: number, s1: number, z0: number, z1: number) =>
      along(s0, s1, (s) => box(sign * (t(s) / 2 - d), sign * (t(s) / 2 + 1), z0, z1)),
    tip: (d: number, s0: number, s1: number) => along(s0, s1, (s) => box(-9, 9, b(s) - d, b(s) + 1)),
    /** As far across and as high as the edge itself: the vane tapers towards its outer end. */
    edge: (from: number, to: number, half: number, top: number) =>
      along(from, to, () => box(-half, half, -1, top)),
  };
}
