import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Camber, camberLine } from '../../../geometry/part/camber.ts';
import { toDegrees, toRadians } from '../../../geometry/units.ts';
import { VANES } from '../made.ts';

const line = (r1: number, r2: number, b1: number, b2: number, camber: 'linear' | 'arc' = 'linear'): Camber =>
  camberLine(
    { ...VANES, inletRadius: r1, inletAngle: toRadians(b1), outletAngle: toRadians(b2), camber },
    r2,
  );

describe('a constant blade angle draws a logarithmic spiral', () => {
  // Closed forms: wrap ln(r2/r1) / tan b, arc (r2 - r1) / sin b, curvature cos b / r, r = r1 exp(theta tan b).
  const spiral = line(65, 150, 25, 25);
  test('wrap 1.79333968 rad, arc 201.127135 mm', () => {
    expect(spiral.wrap).toBeCloseTo(1.79333968, 8);
    expect(toDegrees(spiral.wrap)).toBeCloseTo(102.750795, 6);
    expect(spiral.length).toBeCloseTo(201.127135, 6);
  });
  test('curvature at its ends, and the radius at 1 rad', () => {
    expect(spiral.at(0).turning).toBeCloseTo(0.0139431967, 9);
    expect(spiral.at(spiral.length).turning).toBeCloseTo(0.00604205191, 9);
    // At 1 rad the spiral has run (r - r1) / sin b.
    const s = (103.616329 - 65) / Math.sin(toRadians(25));
    expect(Math.atan2(spiral.at(s).y, spiral.at(s).x)).toBeCloseTo(1, 6);
    expect(spiral.radius(s)).toBeCloseTo(103.616329, 6);
  });
});

describe('a blade angle linear in radius', () => {
  // Arc: closed form (1/k) ln[tan(b/2) / tan(b1/2)]; wrap by quadrature of other code (16-panel Simpson and finer), to 1e-6 deg.
  for (const [r1, r2, b1, b2, wrap, arc, turning, k1, k2] of [
    [65, 150, 22, 28, 105.256763, 202.07248, 1.73235732, 0.0138028527, 0.00530792967],
    [65, 150, 18, 35, 105.285075, 197.239426, 1.54086524, 0.0135529659, 0.00345885416],
    [40, 100, 20, 30, 118.270944, 143.855011, 1.88968446, 0.0224974192, 0.007205813],
  ] as const) {
    test(`${r1} to ${r2}, ${b1} to ${b2} deg`, () => {
      const camber = line(r1, r2, b1, b2);
      expect(toDegrees(camber.wrap)).toBeCloseTo(wrap, 5);
      expect(camber.length).toBeCloseTo(arc, 5);
      const k = toRadians(b2 - b1) / (r2 - r1);
      const closed = Math.log(Math.tan(toRadians(b2) / 2) / Math.tan(toRadians(b1) / 2)) / k;
      expect(camber.length).toBeCloseTo(closed, 8);
      expect(camber.at(0).turning).toBeCloseTo(k1, 9);
      expect(camber.at(camber.length).turning).toBeCloseTo(k2, 9);
      // Total turning = wrap - (b2 - b1): the tangent points theta + 90 deg - beta. Here from the tangents themselves, piece by piece.
      let turned = 0;
      for (let i = 0; i < 500; i++) {
        const [a, b] = [camber.at((camber.length * i) / 500), camber.at((camber.length * (i + 1)) / 500)];
        turned += Math.atan2(a.tx * b.ty - a.ty * b.tx, a.tx * b.tx + a.ty * b.ty);
      }
      expect(turned).toBeCloseTo(turning, 6);
    });
  }
  test('the first row passes radius 100 after 57.7928518 deg and 88.7996830 mm', () => {
    const camber = line(65, 150, 22, 28);
    expect(camber.lengthAt(100)).toBeCloseTo(88.799683, 3);
    const { x, y } = camber.at(88.799683);
    expect(Math.hypot(x, y)).toBeCloseTo(100, 5);
    expect(toDegrees(Math.atan2(y, x))).toBeCloseTo(57.7928518, 5);
  });
});

describe('a single arc', () => {
  // rho = (r2^2 - r1^2) / (2 (r2 cos b2 - r1 cos b1)), centre at d by the cosine rule: derived; classical (from memory).
  test('65 to 150, 22 to 28 deg: radius 126.601679, wrap 80.5844442 deg, arc 164.802991 mm', () => {
    const arc = line(65, 150, 22, 28, 'arc');
    expect(toDegrees(arc.wrap)).toBeCloseTo(80.5844442, 6);
    expect(arc.length).toBeCloseTo(164.802991, 6);
    for (const share of [0, 0.3, 1])
      expect(1 / arc.at(arc.length * share).turning).toBeCloseTo(126.601679, 6);
  });
  test('40 to 100, 20 to 30 deg: wrap 85.1706404 deg, arc 112.420978 mm', () => {
    const arc = line(40, 100, 20, 30, 'arc');
    expect(toDegrees(arc.wrap)).toBeCloseTo(85.1706404, 6);
    expect(arc.length).toBeCloseTo(112.420978, 6);
  });
  test('all its points lie on one circle', () => {
    const arc = line(65, 150, 22, 28, 'arc');
    const start = arc.at(0);
    // The centre lies across the tangent, on the side the arc turns to.
    const [cx, cy] = [start.x - 126.601679 * start.ty, start.y + 126.601679 * start.tx];
    for (let i = 0; i <= 10; i++) {
      const { x, y } = arc.at((arc.length * i) / 10);
      expect(Math.hypot(x - cx, y - cy)).toBeCloseTo(126.601679, 5);
    }
  });
  test('it runs outward all the way, whatever its end angles', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 100, noNaN: true }),
        fc.double({ min: 1.01, max: 6, noNaN: true }),
        fc.double({ min: 5, max: 85, noNaN: true }),
        fc.double({ min: 5, max: 85, noNaN: true }),
        (r1, times, b1, b2) => {
          const arc = line(r1, r1 * times, b1, b2, 'arc');
          const radii = Array.from({ length: 50 }, (_, i) => arc.radius((arc.length * i) / 49));
          expect(radii.every((r, i) => Number.isFinite(r) && (i === 0 || r > radii[i - 1]))).toBe(true);
          expect(radii[49]).toBeCloseTo(r1 * times, 5);
        },
      ),
    );
  });
});

test('past its ends the camber runs on straight', () => {
  const camber = line(65, 150, 22, 28);
  const end = camber.at(camber.length);
  const past = camber.at(camber.length + 3);
  expect(past.x).toBeCloseTo(end.x + 3 * end.tx, 9);
  expect(past.y).toBeCloseTo(end.y + 3 * end.ty, 9);
  expect(past.turning).toBe(0);
});
