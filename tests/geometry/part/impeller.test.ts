import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { replay } from '../../../geometry/depth/replay.ts';
import type { Impeller } from '../../../geometry/job/job.ts';
import { lostMetal } from '../../../geometry/moments/integrate.ts';
import { metalBetween } from '../../../geometry/moments/row-sums.ts';
import type { Face } from '../../../geometry/part/face.ts';
import { impeller } from '../../../geometry/part/impeller.ts';
import { TURN, toDegrees, toRadians, wrapTurn } from '../../../geometry/units.ts';
import { evenly, impellerFace, madeImpeller } from '../made.ts';

const lostFrom = (name: string, depth: number, shape: Impeller) => {
  const face = impellerFace(name, shape);
  return lostMetal(face, replay(face, [evenly(name, depth)]));
};
const angleOf = ({ x, y }: { x: number; y: number }) => toDegrees(wrapTurn(Math.atan2(y, x)));

// Closed form V = b [d L +- Theta (d t/2 - d^2/2)] for a level vane; first moments and the sloping vane by an exact polygon and by
// quadrature of other code, to the digits given. 65 to 150 mm, 22 to 28 deg, 8 mm thick.
describe('2 mm off a side of a vane', () => {
  test('pressure side, level at 30 mm: 12 436.173 mm3, 1 187 010.9 mm4 at 293.11116 deg', () => {
    const lost = lostFrom('vane-1/pressure', 2, madeImpeller());
    expect(lost.volume).toBeCloseTo(12436.173, 3);
    expect(Math.hypot(lost.x, lost.y)).toBeCloseTo(1187010.9, 1);
    expect(angleOf(lost)).toBeCloseTo(293.11116, 5);
  });
  test('suction side: 11 812.525 mm3, 1 079 350.2 mm4 at 290.99332 deg', () => {
    const lost = lostFrom('vane-1/suction', 2, madeImpeller());
    expect(lost.volume).toBeCloseTo(11812.525, 3);
    expect(Math.hypot(lost.x, lost.y)).toBeCloseTo(1079350.2, 1);
    expect(angleOf(lost)).toBeCloseTo(290.99332, 5);
  });
  test('height 40 to 26 mm: 13 800.227 and 13 086.025 mm3', () => {
    const sloping = madeImpeller({ heightInlet: 40, heightOutlet: 26 });
    const pressure = lostFrom('vane-1/pressure', 2, sloping);
    const suction = lostFrom('vane-1/suction', 2, sloping);
    // Cells under the sloping top are cut by straight pieces: 1e-6.
    expect(pressure.volume).toBeCloseTo(13800.227, 2);
    expect(suction.volume).toBeCloseTo(13086.025, 2);
    expect(Math.hypot(pressure.x, pressure.y) / 1273767.1).toBeCloseTo(1, 6);
    expect(angleOf(pressure)).toBeCloseTo(296.76183, 3);
    expect(Math.hypot(suction.x, suction.y) / 1154256).toBeCloseTo(1, 6);
    expect(angleOf(suction)).toBeCloseTo(294.56446, 3);
  });
  test('the whole vane is b t L from either side: what bends out on one side bends in on the other', () => {
    for (const side of ['pressure', 'suction']) {
      expect(lostFrom(`vane-1/${side}`, 8, madeImpeller()).volume).toBeCloseTo(48497.395, 3);
      const sloping = madeImpeller({ heightInlet: 40, heightOutlet: 26 });
      expect(lostFrom(`vane-1/${side}`, 8, sloping).volume / 53772.5).toBeCloseTo(1, 6);
    }
  });
});

describe('tip and edges of a vane', () => {
  test('1 mm off the tip: 1616.580 mm3, 151 027.8 mm4 at 292.0906 deg', () => {
    const lost = lostFrom('vane-1/tip', 1, madeImpeller());
    expect(lost.volume).toBeCloseTo(1616.58, 3);
    expect(Math.hypot(lost.x, lost.y)).toBeCloseTo(151027.8, 1);
    expect(angleOf(lost)).toBeCloseTo(292.0906, 4);
  });
  test('5 mm off a level edge is t b d at either end', () => {
    // What bends out bends in across the thickness: closed form 8 x 30 x 5.
    for (const edge of ['leading', 'trailing']) {
      expect(lostFrom(`vane-1/${edge}-edge`, 5, madeImpeller()).volume).toBeCloseTo(1200, 6);
    }
  });
  test('the leading edge of a sloping vane loses only what is there: less as the vane falls away', () => {
    // Quadrature of b(s) t over s = 0..5, b linear in the camber's radius, ds = dr / sin beta.
    const sloping = madeImpeller({ heightInlet: 40, heightOutlet: 26 });
    const n = 2000;
    let volume = 0;
    let s = 0;
    let r = 65;
    for (; s < 5; s += 5 / n) {
      const beta = toRadians(22 + (6 * (r - 65)) / 85);
      r += (5 / n) * Math.sin(beta);
      volume += (5 / n) * 8 * (40 - (14 * (r - 65)) / 85);
    }
    expect(lostFrom('vane-1/leading-edge', 5, sloping).volume / volume).toBeCloseTo(1, 3);
  });
  test('a round nose is t^2/2 (1 - pi/4) less than a square one, per mm of height', () => {
    // 274.690 mm3 at t 8, height 40; curvature of the camber neglected.
    const square = lostFrom('vane-1/tip', 40, madeImpeller({ heightInlet: 40, heightOutlet: 40 })).volume;
    const round = madeImpeller({ heightInlet: 40, heightOutlet: 40, nose: 'round' });
    for (const face of ['tip', 'pressure', 'suction', 'leading-edge', 'trailing-edge']) {
      const depth = face.endsWith('edge') ? 250 : face === 'tip' ? 40 : 8;
      // From the side the nose is met row by row: within 3 % of itself at a cell of 0.5 mm.
      expect(Math.abs(square - lostFrom(`vane-1/${face}`, depth, round).volume - 274.69)).toBeLessThan(8);
    }
  });
});

describe('areas', () => {
  // Side: b (L +- Theta t / 2), Theta 1.73235732; tip t L; edges t b, a round nose pi t / 2 b. Closed forms.
  test('of a square-nosed level vane', () => {
    const shape = madeImpeller();
    expect(impellerFace('vane-1/pressure', shape).area).toBeCloseTo(30 * (202.07248 + 1.73235732 * 4), 3);
    expect(impellerFace('vane-1/suction', shape).area).toBeCloseTo(30 * (202.07248 - 1.73235732 * 4), 3);
    expect(impellerFace('vane-1/tip', shape).area).toBeCloseTo(8 * 202.07248, 2);
    expect(impellerFace('vane-1/leading-edge', shape).area).toBeCloseTo(240, 9);
  });
  test('a round nose has the half round for a leading edge', () => {
    expect(impellerFace('vane-1/leading-edge', madeImpeller({ nose: 'round' })).area).toBeCloseTo(
      Math.PI * 4 * 30,
      1,
    );
  });
  test('the shroud front is the annulus less the footprints inside it', () => {
    // A lattice over one footprint, (1 - k n) ds dn each, of which the square end stands out past the rim on one side.
    const { faces, body } = impeller(madeImpeller(), null);
    const area = faces[0].area;
    const annulus = Math.PI * (150 ** 2 - 30 ** 2);
    if (body.kind !== 'impeller') throw new Error('needs an impeller');
    const [vane] = body.vanes;
    let under = 0;
    const [ds, dn] = [vane.length / 4000, 8 / 80];
    for (let s = ds / 2; s < vane.length; s += ds) {
      for (let n = dn / 2 - 4; n < 4; n += dn) {
        const [x, y] = vane.position(s, n, 0);
        if (Math.hypot(x, y) < 150) under += (1 - vane.camber(s).k * n) * ds * dn;
      }
    }
    expect(under).toBeGreaterThan(0.97 * 8 * 202);
    expect(area / (annulus - 5 * under)).toBeCloseTo(1, 4);
    expect(impellerFace('shroud/back', madeImpeller()).area).toBeCloseTo(annulus, 6);
  });
  test('no point of a footprint is on the shroud', () => {
    const face = impellerFace('shroud/front', madeImpeller());
    expect(face.holds(65.5, toRadians(-1))).toBe(false);
    expect(face.holds(100, toRadians(-57.8))).toBe(false);
    expect(face.holds(100, toRadians(-37))).toBe(true);
    expect(face.holds(40, 0)).toBe(true);
  });
});

/** A cell's metal by midpoint sums with the volume element taken from differences of `position`: nothing of the engine's laws. */
function byQuadrature(face: Face, row: number, column: number, from: number, to: number) {
  const sum = { volume: 0, x: 0, y: 0, z: 0, xz: 0, yz: 0 };
  const { grid } = face;
  const n = 12;
  const h = 1e-4;
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) {
      for (let k = 0; k < n; k++) {
        const u = grid.u0 + (row + (i + 0.5) / n) * grid.du;
        const v = grid.v0 + (column + (j + 0.5) / n) * grid.dv;
        const d = from + ((k + 0.5) / n) * (to - from);
        const along = (a: readonly number[], b: readonly number[]) =>
          a.map((value, w) => (value - b[w]) / (2 * h));
        const a = along(face.position(u + h, v, d), face.position(u - h, v, d));
        const b = along(face.position(u, v + h, d), face.position(u, v - h, d));
        const c = along(face.position(u, v, d + h), face.position(u, v, d - h));
        const det =
          a[0] * (b[1] * c[2] - b[2] * c[1]) -
          a[1] * (b[0] * c[2] - b[2] * c[0]) +
          a[2] * (b[0] * c[1] - b[1] * c[0]);
        const piece = (Math.abs(det) * grid.du * grid.dv * (to - from)) / n ** 3;
        const [x, y, z] = face.position(u, v, d);
        sum.volume += piece;
        sum.x += piece * x;
        sum.y += piece * y;
        sum.z += piece * z;
        sum.xz += piece * x * z;
        sum.yz += piece * y * z;
      }
    }
  }
  return sum;
}

describe('volume and first moments of one cell agree with quadrature of position', () => {
  const shape = madeImpeller(
    { heightInlet: 40, heightOutlet: 26, thicknessInlet: 8, thicknessOutlet: 6, firstAngle: 0.3 },
    { rotation: 'clockwise' },
  );
  for (const name of [
    'shroud/front',
    'shroud/back',
    'shroud/rim',
    'vane-2/pressure',
    'vane-2/suction',
    'vane-2/tip',
    'vane-2/leading-edge',
    'vane-2/trailing-edge',
  ]) {
    test(name, () => {
      const face = impellerFace(name, shape, 2);
      const { grid } = face;
      const [row, column] = [Math.floor(grid.rows / 3), Math.floor(grid.columns / 3)];
      const [u, v] = [grid.u0 + (row + 0.5) * grid.du, grid.v0 + (column + 0.5) * grid.dv];
      const metal = metalBetween(face, row, column, u, v, 0.5, 3);
      const sum = byQuadrature(face, row, column, 0.5, 3);
      for (const of of ['volume', 'x', 'y', 'z', 'xz', 'yz'] as const) {
        // Midpoint sums and 2 mm cells taken as even along the depth: 1e-3 of the metal at its distance.
        const far = of === 'volume' ? 1 : of.length === 1 ? 150 : 150 * 40;
        expect(Math.abs(metal[of] - sum[of]) / (sum.volume * far)).toBeLessThan(1e-3);
      }
    });
  }
});

describe('both rotations', () => {
  test('mirror each other', () => {
    const turned = { heightInlet: 40, heightOutlet: 26, nose: 'round' as const };
    for (const face of ['vane-1/pressure', 'vane-1/suction', 'vane-1/tip', 'vane-1/leading-edge']) {
      const ccw = lostFrom(face, 1.5, madeImpeller(turned));
      const cw = lostFrom(face, 1.5, madeImpeller(turned, { rotation: 'clockwise' }));
      expect(cw.volume).toBeCloseTo(ccw.volume, 6);
      expect(cw.x / ccw.x).toBeCloseTo(1, 9);
      expect(cw.y / ccw.y).toBeCloseTo(-1, 9);
      expect(cw.z / ccw.z).toBeCloseTo(1, 9);
    }
  });
  test('turned clockwise the first vane leans the other way: 66.88884 deg', () => {
    expect(angleOf(lostFrom('vane-1/pressure', 2, madeImpeller({}, { rotation: 'clockwise' })))).toBeCloseTo(
      66.88884,
      4,
    );
  });
  test('the pressure side leads: its normal has a part along the rotation', () => {
    for (const rotation of ['clockwise', 'counter-clockwise'] as const) {
      const face = impellerFace('vane-1/pressure', madeImpeller({}, { rotation }));
      for (const u of [5, 100, 195]) {
        const [x, y] = face.position(u, 10, 0);
        const [nx, ny] = face.normal(u, 10);
        const forwards = (x * ny - y * nx) * (rotation === 'counter-clockwise' ? 1 : -1);
        expect(forwards).toBeGreaterThan(0);
      }
    }
  });
});

test('worn alike, each vane loses the same as the first, an Nth of a turn on', () => {
  const shape = madeImpeller({ count: 7, firstAngle: 0.2 });
  const first = lostFrom('vane-1/pressure', 2, shape);
  for (const k of [2, 5, 7]) {
    const other = lostFrom(`vane-${k}/pressure`, 2, shape);
    const angle = (TURN * (k - 1)) / 7;
    expect(other.volume).toBeCloseTo(first.volume, 6);
    expect(other.x).toBeCloseTo(first.x * Math.cos(angle) - first.y * Math.sin(angle), 3);
    expect(other.y).toBeCloseTo(first.x * Math.sin(angle) + first.y * Math.cos(angle), 3);
  }
});

test('below undoes position on every face, for any of 1 to 12 vanes', () => {
  const kinds = ['pressure', 'suction', 'tip', 'leading-edge', 'trailing-edge'];
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 12 }),
      fc.constantFrom(...kinds),
      fc.constantFrom('round' as const, 'square' as const),
      fc.constantFrom('linear' as const, 'arc' as const),
      fc.double({ min: 0.05, max: 0.95, noNaN: true }),
      fc.double({ min: 0.05, max: 0.95, noNaN: true }),
      fc.double({ min: 0, max: 2, noNaN: true }),
      (count, kind, nose, camber, a, b, depth) => {
        const shape = madeImpeller({ count, nose, camber, heightOutlet: 22, thicknessOutlet: 6 });
        const face = impellerFace(`vane-${count}/${kind}`, shape, 4);
        const { grid } = face;
        const u = grid.u0 + a * grid.rows * grid.du;
        const v = grid.v0 + b * grid.columns * grid.dv;
        const found = face.below(face.position(u, v, depth));
        expect(found.u).toBeCloseTo(u, 5);
        expect(found.v).toBeCloseTo(v, 5);
        expect(found.depth).toBeCloseTo(depth, 5);
      },
    ),
    { numRuns: 60 },
  );
});

test('an open impeller has no shroud: hub and vanes alone', () => {
  const { faces, rim } = impeller(madeImpeller({ count: 3 }, { shroudThickness: 0 }), 2);
  expect(rim).toBeNull();
  expect(faces).toHaveLength(15);
  expect(faces.some(({ name }) => name.startsWith('shroud'))).toBe(false);
});
