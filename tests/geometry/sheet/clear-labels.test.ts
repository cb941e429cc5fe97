import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { clearLabels } from '../../../geometry/sheet/clear-labels.ts';

const SIZES = { height: 14, away: 8, most: 150 } as const;

describe('words beside points', () => {
  test('stand right of their point, left where there is no room, nowhere where there is none either', () => {
    const at = (x: number, y: number) => ({ x, y, width: 30 });
    expect(clearLabels([at(0, 0)], SIZES)).toEqual([{ index: 0, anchor: 'start', x: 8, y: 0 }]);
    expect(clearLabels([at(0, 0), at(20, 0)], SIZES)).toEqual([
      { index: 0, anchor: 'end', x: -8, y: 0 },
      { index: 1, anchor: 'start', x: 28, y: 0 },
    ]);
    expect(clearLabels([at(0, 0), at(20, 0), at(-20, 0)], SIZES).map(({ index }) => index)).toEqual([1, 2]);
  });

  test('lie on no other word and on no other point, however points lie', () => {
    const points = fc.array(
      fc.tuple(
        fc.integer({ max: 400, min: 0 }),
        fc.integer({ max: 300, min: 0 }),
        fc.integer({ max: 40, min: 8 }),
      ),
      { maxLength: 120 },
    );
    fc.assert(
      fc.property(points, (tuples) => {
        const list = tuples.map(([x, y, width]) => ({ x, y, width }));
        const boxes = clearLabels(list, SIZES).map(({ index, anchor, x, y }) => {
          const { width } = list[index];
          const from = anchor === 'start' ? x : x - width;
          return { index, x0: from, x1: from + width, y0: y - 7, y1: y + 7 };
        });
        for (const [i, a] of boxes.entries()) {
          for (const b of boxes.slice(0, i))
            expect(a.x0 < b.x1 && b.x0 < a.x1 && a.y0 < b.y1 && b.y0 < a.y1).toBe(false);
          for (const [j, { x, y }] of list.entries())
            expect(j !== a.index && x > a.x0 && x < a.x1 && y > a.y0 && y < a.y1).toBe(false);
        }
      }),
      { numRuns: 200 },
    );
  });

  test('are no more than asked for', () => {
    const grid = Array.from({ length: 2000 }, (_, i) => ({
      x: 100 * (i % 50),
      y: 50 * Math.floor(i / 50),
      width: 20,
    }));
    expect(clearLabels(grid, SIZES)).toHaveLength(150);
  });
});
