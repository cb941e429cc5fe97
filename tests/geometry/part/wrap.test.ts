import { describe, expect, test } from 'vitest';
import { drawnWraps, wrapWarnings } from '../../../geometry/part/wrap.ts';
import { toDegrees, toRadians } from '../../../geometry/units.ts';
import { madeImpeller, VANES } from '../made.ts';

const warned = (degrees: number, camber: 'linear' | 'arc') =>
  wrapWarnings(madeImpeller({ wrap: toRadians(degrees), camber })).map(({ code, text }) => `${code} ${text}`);

describe('a measured wrap', () => {
  // 65 to 150 mm, 22 to 28 deg: 105.256763 deg with a linear blade angle, 80.5844442 deg as one arc (closed form and quadrature).
  test('either camber draws its own', () => {
    const { linear, arc } = drawnWraps(VANES, 150);
    expect(toDegrees(linear)).toBeCloseTo(105.256763, 5);
    expect(toDegrees(arc)).toBeCloseTo(80.5844442, 6);
  });
  test('within 5 deg of the drawn one says nothing', () => {
    expect(warned(101, 'linear')).toEqual([]);
    expect(warned(85, 'arc')).toEqual([]);
  });
  test('that the other camber fits better says so', () => {
    expect(warned(82, 'linear')).toEqual([
      'wrap-off impeller: the vanes wrap 82 deg as measured, but are drawn with 105 deg. Camber "arc" draws 81 deg and fits better.',
    ]);
    expect(warned(104, 'arc')[0]).toContain('Camber "linear" draws 105 deg and fits better.');
  });
  test('that neither fits asks for the angles', () => {
    expect(warned(140, 'linear')[0]).toContain('measure the blade angles again');
  });
});
