import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type PointKind, parsePoints, pointsText } from '../../../web/panels/points-text.ts';

const XY: PointKind = ['length', 'length'];
const POLAR: PointKind = ['length', 'angle'];

describe('points as text', () => {
  it.each([
    [
      '0 0\n100 0',
      [
        [0, 0],
        [100, 0],
      ],
    ],
    [
      '0\t0\n100\t-20,5',
      [
        [0, 0],
        [100, -20.5],
      ],
    ],
    [
      '10; 20\r\n30;40\r\n',
      [
        [10, 20],
        [30, 40],
      ],
    ],
    ['10,20', [[10, 20]]],
    ['10, 20', [[10, 20]]],
    ['10,5 20,25', [[10.5, 20.25]]],
    [
      '1 2\n\n  \n3 4',
      [
        [1, 2],
        [3, 4],
      ],
    ],
  ])('reads %j', (text, points) => {
    expect(parsePoints(text, XY, 'mm')).toEqual({ points });
  });

  it.each(['1 2\n3', '1 2\n3 4 5', '1 2\nthree 4'])('names the line that is none: %j', (text) => {
    expect(parsePoints(text, XY, 'mm')).toEqual({ problem: expect.stringMatching(/^line 2, "/) });
  });

  it('reads lengths in the units of the screen and leaves angles alone', () => {
    expect(parsePoints('2 45', POLAR, 'in')).toEqual({ points: [[50.8, 45]] });
  });

  it('gives back what it shows, to the last place it shows', () => {
    const value = fc.double({ min: -5000, max: 5000, noNaN: true });
    const points = fc.array(fc.tuple(value, value), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(points, fc.constantFrom('mm', 'in'), (given, units) => {
        const read = parsePoints(pointsText(given, POLAR, units), POLAR, units);
        if (!('points' in read)) throw new Error(read.problem);
        expect(read.points).toHaveLength(given.length);
        for (const [i, [length, angle]] of read.points.entries()) {
          // Three places of a mm or four of an inch; three of a degree.
          expect(Math.abs(length - given[i][0])).toBeLessThanOrEqual(units === 'mm' ? 0.00051 : 0.0013);
          expect(Math.abs(angle - given[i][1])).toBeLessThanOrEqual(0.00051);
        }
      }),
    );
  });
});
