import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Vec3 } from '../../../geometry/units.ts';
import { presetRig, type Rig, type Shown, sightOf, slid, turned, zoomed } from '../../../web/scene/camera.ts';
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
  const shown: Shown = {
    middle: [5, -3, -9],
    points: Array.from({ length: 40 }, (_, i): Vec3 => {
      const angle = (i / 20) * Math.PI;
      return [5 + 160 * Math.cos(angle), -3 + 160 * Math.sin(angle), i < 20 ? 0 : -18];
    }),
  };
  const covered = { top: 40, bottom: 90, side: 10 };

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
    const front = sightOf(presetRig('front', shown, screen, covered), screen);
    expect(front.right).toEqual([1, expect.closeTo(0), 0]);
    expect(front.up).toEqual([expect.closeTo(0), 1, expect.closeTo(0)]);
    expect(sightOf(presetRig('side', shown, screen, covered), screen).up[2]).toBeGreaterThan(0.99);
  });

  test.each(['front', 'angled', 'side'] as const)(
    'the %s view fills the uncovered part of wide and tall screens',
    (name) => {
      for (const size of [screen, { width: 300, height: 700 }]) {
        const { project } = sightOf(presetRig(name, shown, size, covered), size);
        const places = shown.points.map(project);
        const [left, right] = [Math.min(...places.map(([x]) => x)), Math.max(...places.map(([x]) => x))];
        const [top, bottom] = [Math.min(...places.map(([, y]) => y)), Math.max(...places.map(([, y]) => y))];
        // Sliding into the middle turns the view a little: a few px.
        expect(left).toBeGreaterThan(covered.side - 4);
        expect(right).toBeLessThan(size.width - covered.side + 4);
        expect(top).toBeGreaterThan(covered.top - 4);
        expect(bottom).toBeLessThan(size.height - covered.bottom + 4);
        const full = Math.max((right - left) / (size.width - 20), (bottom - top) / (size.height - 130));
        expect(full).toBeGreaterThan(0.95);
      }
    },
  );

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
    const rig = presetRig('front', shown, screen, covered);
    expect(zoomed(rig, 1000, 0, 0, screen, [50, 900]).distance).toBe(50);
    expect(zoomed(rig, 0.001, 0, 0, screen, [50, 900]).distance).toBe(900);
  });

  test('sliding moves the target with the hand', () => {
    const rig = presetRig('angled', shown, screen, covered);
    const [x, y] = sightOf(slid(rig, 40, -25, screen), screen).project(rig.target);
    expect([x, y]).toEqual([expect.closeTo(490, 4), expect.closeTo(275, 4)]);
  });

  test('turning stops over the top and under the bottom', () => {
    const rig = presetRig('angled', shown, screen, covered);
    expect(turned(rig, 0, 1e6).tilt).toBe(Math.PI / 2);
    expect(turned(rig, 0, -1e6).tilt).toBe(-Math.PI / 2);
  });
});
