import fc from 'fast-check';
import { expect, test } from 'vitest';
import { boxOf, holesNear } from '../../../geometry/part/holes-near.ts';

const number = fc.double({ min: -100, max: 100, noNaN: true });

test('every hole whose box holds a place is among those near it', () => {
  const corners = fc.array(fc.tuple(number, number), { minLength: 3, maxLength: 5 });
  fc.assert(
    fc.property(fc.array(corners, { maxLength: 30 }), number, number, (holes, x, y) => {
      const boxes = holes.map(boxOf);
      const near = holesNear(boxes)(x, y);
      for (const [i, { x0, x1, y0, y1 }] of boxes.entries()) {
        if (x >= x0 && x <= x1 && y >= y0 && y <= y1) expect(near).toContain(i);
      }
    }),
  );
});

test('of a field of holes only the few round a place are looked at', () => {
  const boxes = Array.from({ length: 10_000 }, (_, i) => {
    const [x, y] = [(i % 100) * 10, Math.floor(i / 100) * 10];
    return { x0: x, x1: x + 4, y0: y, y1: y + 4 };
  });
  const near = holesNear(boxes);
  expect(near(502, 302)).toContain(30 * 100 + 50);
  expect(near(502, 302).length).toBeLessThan(5);
  expect(near(2000, 302)).toEqual([]);
});
