import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Profile,
  withoutPoint,
  withPointAdded,
  withPointAt,
  withPointDrawn,
} from '../../../../web/panels/wear/profile-edits.ts';
import { even } from '../../even.ts';

const SPAN = [0, 40] as const;
const PROFILE: Profile = [
  [0, 2],
  [15, 9],
  [40, 4],
];

const isAscending = (profile: Profile) => profile.every(([at], i) => i === 0 || at >= profile[i - 1][0]);

describe('the profile of an edge', () => {
  it('stays in order, on the edge and below the surface wherever a point is drawn', () => {
    fc.assert(
      fc.property(fc.nat(2), even(-80, 120), even(-20, 60), (i, at, loss) => {
        const drawn = withPointDrawn(PROFILE, i, [at, loss], SPAN);
        expect(isAscending(drawn)).toBe(true);
        expect(drawn.every(([along, depth]) => along >= 0 && along <= 40 && depth >= 0)).toBe(true);
        expect(drawn.filter((_, k) => k !== i)).toEqual(PROFILE.filter((_, k) => k !== i));
      }),
    );
  });

  it('takes a point between its neighbours', () => {
    expect(withPointDrawn(PROFILE, 1, [21.26, 12.34], SPAN)[1]).toEqual([21.3, 12.3]);
    expect(withPointAt(PROFILE, [20, 7])).toEqual({
      at: 2,
      profile: [
        [0, 2],
        [15, 9],
        [20, 7],
        [40, 4],
      ],
    });
    expect(withPointAt(PROFILE, [40, 1]).at).toBe(3);
  });

  it('puts a new point on the line, in the middle of its longest piece', () => {
    expect(withPointAdded(PROFILE, SPAN)[2]).toEqual([27.5, 6.5]);
    expect(withPointAdded([[10, 3]], SPAN)).toEqual([
      [10, 3],
      [40, 3],
    ]);
  });

  it('keeps its last point', () => {
    expect(withoutPoint(PROFILE, 0)).toHaveLength(2);
    expect(withoutPoint([[10, 3]], 0)).toEqual([[10, 3]]);
  });
});
