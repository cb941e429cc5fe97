import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Vec3 } from '../../../geometry/units.ts';
import { presetRig, type Rig, sightOf, slid, turned, zoomed } from '../../../web/scene/camera.ts';
import { even } from '../even.ts';

const screen = { width: 900, height: 600 };
const rigs: fc.Arbitrary<Rig> = fc.record({
  target: fc.tuple(even(-50, 50), fc.constant(3), fc.constant(-9)),
  distance: even(100, 2000),
  turn: even(-7, 7),
  tilt: even(-Math.PI / 2, Math.PI / 2),
});
const places = fc.tuple(even(0, 900), even(0, 600));

describe('the eye', () => {
  test('a ray through a place holds the points that fall there', () => {
    fc.assert(
      fc.property(rigs, places, even(10, 3000), (rig, [x, y], far) => {
        const sight = sightOf(rig, screen);
        const { from, along } = sight.ray(x, y);
        const point = from.map((value, k) => value + far * along[k]) as unknown as Vec3;
        const [px, py] = sight.project(point);
        expect(px).toBeCloseTo(x, 5);
        expect(py).toBeCloseTo(y, 5);
      }),
    );
  });

  test('its axes stand square to one another and run right-handed at every tilt', () => {
    fc.assert(
      fc.property(rigs, (rig) => {
        const { right, up, into } = sightOf(rig, screen);
        const cross = [
          right[1] * up[2] - right[2] * up[1],
          right[2] * up[0] - right[0] * up[2],
          right[0] * up[1] - right[1] * up[0],
        ];
        for (let k = 0; k < 3; k++) expect(cross[k] + into[k]).toBeCloseTo(0, 9);
      }),
    );
  });

  test('in front of the face x runs to the right and y up; from the side z runs up', () => {
    const front = sightOf(presetRig('front', [0, 0, 0], 100, screen), screen);
    expect(front.right).toEqual([1, expect.closeTo(0), 0]);
    expect(front.up).toEqual([expect.closeTo(0), 1, expect.closeTo(0)]);
    expect(sightOf(presetRig('side', [0, 0, 0], 100, screen), screen).up[2]).toBeGreaterThan(0.99);
  });

  test.each(['front', 'angled', 'side'] as const)('the %s view holds a ball of the radius, on wide and tall screens', (name) => {
    for (const size of [screen, { width: 300, height: 700 }]) {
      const sight = sightOf(presetRig(name, [5, -3, -9], 160, size), size);
      fc.assert(
        fc.property(even(-1, 1), even(0, 6.3), (h, angle) => {
          const r = Math.sqrt(1 - h * h);
          const [x, y] = sight.project([5 + 160 * r * Math.cos(angle), -3 + 160 * r * Math.sin(angle), -9 + 160 * h]);
          expect(x).toBeGreaterThan(0);
          expect(x).toBeLessThan(size.width);
          expect(y).toBeGreaterThan(0);
          expect(y).toBeLessThan(size.height);
        }),
      );
    }
  });

  test('zooming leaves the place under the pointer where it is, in the plane of the target', () => {
    fc.assert(
      fc.property(rigs, places, even(0.5, 2), (rig, [x, y], factor) => {
        const before = sightOf(rig, screen);
        const point = [0, 1, 2].map(
          (k) =>
            rig.target[k] +
            (before.right[k] * (x - 450)) / before.scale +
            (before.up[k] * (300 - y)) / before.scale,
        ) as unknown as Vec3;
        const after = sightOf(zoomed(rig, factor, x, y, screen, [1, 1e5]), screen);
        const [px, py] = after.project(point);
        expect(px).toBeCloseTo(x, 4);
        expect(py).toBeCloseTo(y, 4);
      }),
    );
  });

  test('zooming stops at both ends of its reach', () => {
    const rig = presetRig('front', [0, 0, 0], 100, screen);
    expect(zoomed(rig, 1000, 0, 0, screen, [50, 900]).distance).toBe(50);
    expect(zoomed(rig, 0.001, 0, 0, screen, [50, 900]).distance).toBe(900);
  });

  test('sliding moves the target with the hand', () => {
    const rig = presetRig('angled', [0, 0, 0], 100, screen);
    const [x, y] = sightOf(slid(rig, 40, -25, screen), screen).project([0, 0, 0]);
    expect([x, y]).toEqual([expect.closeTo(490, 4), expect.closeTo(275, 4)]);
  });

  test('turning stops over the top and under the bottom', () => {
    const rig = presetRig('angled', [0, 0, 0], 100, screen);
    expect(turned(rig, 0, 1e6).tilt).toBe(Math.PI / 2);
    expect(turned(rig, 0, -1e6).tilt).toBe(-Math.PI / 2);
  });
});
