import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { underVanes } from '../../../geometry/part/under-vanes.ts';
import { toRadians } from '../../../geometry/units.ts';
import { bodyOf, impellerPart } from './impellers.ts';

/** A place within reach of the vanes. */
const place = fc.integer({ min: -160_000, max: 160_000 }).map((micrometres) => micrometres / 1000);

describe('what lies under the vanes', () => {
  test.each([
    ['usual', {}],
    ['turning the other way', { rotation: 'counter-clockwise', vanes: { firstAngle: toRadians(77) } }],
    [
      'flat angles',
      { vanes: { inletAngle: toRadians(8), outletAngle: toRadians(12), count: 3, thicknessOutlet: 14 } },
    ],
    ['twelve', { vanes: { count: 12, thicknessInlet: 5, camber: 'arc', nose: 'square' } }],
    ['one', { vanes: { count: 1 } }],
  ] as const)('is what each vane says for itself: %s', (_, shape) => {
    const { vanes } = bodyOf(impellerPart(shape));
    const isUnder = underVanes(vanes);
    const isExpected = (x: number, y: number) =>
      vanes.some((vane) => {
        const { s, n } = vane.locate([x, y, 0]);
        return s >= 0 && s <= vane.length && Math.abs(n) < vane.halfThickness(s);
      });
    fc.assert(
      fc.property(place, place, (x, y) => isUnder(x, y) === isExpected(x, y)),
      {
        numRuns: 1500,
      },
    );
    // Few places anywhere lie under a vane: on and beside each of them too.
    for (const vane of vanes) {
      for (let i = 1; i < 20; i++) {
        const along = (vane.length * i) / 20;
        const half = vane.halfThickness(along);
        for (const n of [0, 0.9 * half, -0.9 * half, 1.1 * half, -1.1 * half]) {
          const [x, y] = vane.position(along, n, 0);
          expect(isUnder(x, y)).toBe(isExpected(x, y));
        }
        const [x, y] = vane.position(along, 0, 0);
        expect(isUnder(x, y)).toBe(true);
      }
    }
  });
});
