import { describe, expect, test } from 'vitest';
import { replay } from '../../../geometry/depth/replay.ts';
import { flatMap } from '../../../geometry/sheet/flat-map.ts';
import { contourPlaces } from '../../../web/scene/contour-places.ts';
import { createFlatView } from '../../../web/scene/flat-view.ts';
import { faceOf, pit } from '../../geometry/made.ts';

const SCREEN = { width: 600, height: 600 };

/** A wide hollow and a small pit, seen whole and from near the pit. */
const face = faceOf('face', { holes: [] });
const contours = flatMap(face, replay(face, [pit(110, 90, 90, 4.6, 'cone'), pit(110, 270, 12, 2.5, 'bowl')]));
const seen = (factor: number) => {
  const view = createFlatView();
  view.resize(SCREEN);
  view.zoom(factor, ...view.toScreen([0, 110]));
  const numbers = contourPlaces(contours, view.lay(), SCREEN, 48);
  return { view, numbers, depths: numbers.map(({ depth }) => depth).toSorted() };
};

describe('the numbers of the contour lines on the screen', () => {
  test('every line that is long enough on the screen has one: of the pit none when all of the face is seen', () => {
    const { depths, numbers, view } = seen(1);
    // The 4 mm line is 37 mm long, 48 px here.
    expect(depths).toEqual([1, 2, 3]);
    for (const { x, y } of numbers) expect(view.toFlat(x, y)[1]).toBeLessThan(0);
  });

  test('close by, the lines of the pit have theirs', () => {
    const { depths, numbers, view } = seen(12);
    expect(depths).toContain(2);
    for (const { x, y } of numbers) {
      const [fx, fy] = view.toFlat(x, y);
      expect(Math.hypot(fx, fy - 110)).toBeLessThan(6.5);
    }
  });

  test('they lie on their lines, in sight, and apart', () => {
    for (const factor of [1, 2, 5, 12, 30]) {
      const { numbers, view } = seen(factor);
      for (const [i, { depth, x, y }] of numbers.entries()) {
        expect(Math.min(x, y)).toBeGreaterThan(0);
        expect(Math.max(x, y)).toBeLessThan(600);
        for (const other of numbers.slice(0, i))
          expect(Math.hypot(other.x - x, other.y - y)).toBeGreaterThan(30);
        // Cone of 4.6 mm over 45 mm, bowl of 2.5 over 6 (job format, "pit"); samples lie 1 mm apart.
        const [fx, fy] = view.toFlat(x, y);
        const onCone = Math.abs(Math.hypot(fx, fy + 110) - 45 * (1 - depth / 4.6));
        const onBowl = Math.abs(Math.hypot(fx, fy - 110) - 6 * Math.sqrt(1 - Math.min(1, depth / 2.5)));
        expect(Math.min(onCone, onBowl)).toBeLessThan(0.8);
      }
    }
  });
});
