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
    let under = 0;
    fc.assert(
      fc.property(place, place, (x, y) => {
        const expected = vanes.some((vane) => {
          const { s, n } = vane.locate([x, y, 0]);
          return s >= 0 && s <= vane.length && Math.abs(n) < vane.halfThickness(s);
        });
        if (expected) under += 1;
        expect(isUnder(x, y)).toBe(expected);
      }),
      { numRuns: 1500 },
    );
    expect(under).toBeGreaterThan(10);
  });
});
