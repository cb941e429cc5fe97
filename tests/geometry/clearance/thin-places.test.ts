import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { WallEstimate } from '../../../geometry/clearance/thin-places.ts';
import { depthAt } from '../../../geometry/depth/depth-at.ts';
import { estimate } from '../../../geometry/estimate.ts';
import type { PartEstimate } from '../../../geometry/estimate-part.ts';
import type { Mark, WornPart } from '../../../geometry/job/job.ts';
import { toGridPoint } from '../../../geometry/part/face.ts';
import { TURN, toRadians } from '../../../geometry/units.ts';
import { evenly, job, madeImpeller, patch, pit, plate } from '../made.ts';

const partOf = (worn: WornPart, cell: number | null = 1): PartEstimate =>
  estimate({ ...job([]), parts: [worn] }, { cell }).parts[0];

const wallOf = (part: PartEstimate, name: string): WallEstimate => {
  const found = part.walls.find(({ face, behind }) => face === name || behind === name);
  if (!found) throw new Error(`no wall ${name}`);
  return found;
};

const pitOn = (face: string, at: readonly [number, number], depth: number): Mark => ({
  kind: 'pit',
  face,
  blend: 'deepest',
  at,
  radius: 3,
  depth,
  form: 'flat',
});

describe('a plate 18 mm thick that may go down to 10', () => {
  test('worn 5 mm by a patch keeps 13 mm and is sound', () => {
    const wall = wallOf(partOf(plate({}, [patch([90, 110], [0, 90], 5)])), 'face');
    expect(wall).toMatchObject({ face: 'face', behind: null, asNew: 18, verdict: 'sound', under: 0 });
    expect(wall.remaining).toBeCloseTo(13, 5);
    expect(wall.places).toEqual([]);
  });
  test('a ring sector worn 9 mm is under the limit over just its area', () => {
    const wall = wallOf(partOf(plate({ holes: [] }, [patch([90, 110], [0, 90], 9)]), null), 'face');
    expect(wall.verdict).toBe('under');
    // A quarter of pi (110^2 - 90^2), closed form; 0.1 % is what marks keep at the default cells.
    expect(wall.under / ((Math.PI * (110 ** 2 - 90 ** 2)) / 4)).toBeCloseTo(1, 3);
    expect(wall.places).toHaveLength(1);
    expect(wall.places[0].remaining).toBeCloseTo(9, 5);
  });
  test('a bolt hole through the thin place is no wall: its area is left out, and nothing there is worn through', () => {
    const wall = wallOf(partOf(plate({}, [patch([130, 160], [-20, 20], 9)]), null), 'face');
    const sector = ((160 ** 2 - 130 ** 2) * toRadians(40)) / 2;
    expect(wall.under / (sector - Math.PI * 49)).toBeCloseTo(1, 3);
    expect(wall.remaining).toBeCloseTo(9, 5);
  });
  test('worn exactly to the limit is not under it', () => {
    // 32-bit depths: 18 - 7.7 is 10.3 to seven digits.
    const worn = { ...plate({}, [patch([90, 110], [0, 90], 7.7)]), leastThickness: 10.3 };
    expect(wallOf(partOf(worn), 'face').verdict).toBe('sound');
  });
  test('a flat pit through it is worn through over its disc', () => {
    const wall = wallOf(partOf(plate({}, [pit(100, 50, 10, 18, 'flat')]), null), 'face');
    expect(wall).toMatchObject({ remaining: 0, verdict: 'through' });
    expect(wall.places).toHaveLength(1);
    expect(wall.under / (Math.PI * 25)).toBeCloseTo(1, 2);
  });
  test('a cone 9 mm deep is under the limit where it is deeper than 8', () => {
    // d(1 - x/R) > 8: x < R/9, R = 30: pi (30/9)^2.
    const wall = wallOf(partOf(plate({ holes: [] }, [pit(110, 50, 60, 9, 'cone')]), 0.25), 'face');
    expect(wall.under / (Math.PI * (30 / 9) ** 2)).toBeCloseTo(1, 1);
    const [place] = wall.places;
    expect(Math.abs(place.at[0] - 110)).toBeLessThan(0.3);
    expect(place.remaining).toBeGreaterThanOrEqual(9);
    expect(place.remaining).toBeLessThan(9.05);
  });
  test('its bore is a wall of its own, as thick as the ring', () => {
    const bore: Mark = { ...evenly('bore', 3), second: [-1000, 1000] };
    const wall = wallOf(partOf(plate({}, [bore])), 'bore');
    expect(wall.asNew).toBe(100);
    expect(wall.remaining).toBeCloseTo(97, 4);
  });
  test('without a limit only what is worn through is a place', () => {
    const worn = {
      ...plate({}, [patch([90, 110], [0, 90], 17), pit(130, 200, 8, 18, 'flat')]),
      leastThickness: null,
    };
    const wall = wallOf(partOf(worn), 'face');
    expect(wall.verdict).toBe('through');
    expect(wall.limit).toBeNull();
    expect(wall.places.map(({ remaining }) => remaining)).toEqual([0]);
    const sound = wallOf(partOf({ ...plate(), leastThickness: null }), 'face');
    expect(sound.verdict).toBe('no limit');
  });
  test('two places apart are two, thinnest first; one across the 0/360 line is one', () => {
    const marks = [patch([90, 110], [-20, 20], 9), patch([90, 110], [100, 120], 12)];
    const { places } = wallOf(partOf(plate({}, marks)), 'face');
    expect(places.map(({ remaining }) => Math.round(remaining))).toEqual([6, 9]);
  });
});

describe('both sides of a vane or a shroud are one wall', () => {
  const shape = (marks: readonly Mark[], more: Parameters<typeof madeImpeller>[1] = {}) =>
    madeImpeller({}, { leastThickness: 4.5, ...more }, marks);
  test('a sound impeller of five vanes has six walls', () => {
    const { walls } = partOf(shape([]));
    expect(walls.map(({ remaining }) => remaining)).toEqual([10, 8, 8, 8, 8, 8]);
    expect(walls.every(({ verdict }) => verdict === 'sound')).toBe(true);
  });
  test('8 mm worn 2.5 and 1.5 leaves 4, named by the side worn deeper', () => {
    const part = partOf(shape([evenly('vane-1/pressure', 1.5), evenly('vane-1/suction', 2.5)]));
    const wall = wallOf(part, 'vane-1/pressure');
    expect(wall).toMatchObject({ face: 'vane-1/suction', behind: 'vane-1/pressure', verdict: 'under' });
    expect(wall.remaining).toBeCloseTo(4, 5);
    expect(part.walls).toHaveLength(6);
  });
  test('a pit in one side opposite a pit in the other is worn through where they meet', () => {
    const part = partOf(shape([pitOn('vane-2/pressure', [80, 15], 5), pitOn('vane-2/suction', [80, 15], 4)]));
    const wall = wallOf(part, 'vane-2/suction');
    expect(wall.remaining).toBe(0);
    expect(wall.under / (Math.PI * 9)).toBeCloseTo(1, 1);
  });
  test('beside each other they are not', () => {
    const part = partOf(
      shape([pitOn('vane-2/pressure', [80, 15], 5), pitOn('vane-2/suction', [100, 15], 4)]),
    );
    expect(wallOf(part, 'vane-2/suction').remaining).toBeCloseTo(3, 5);
  });
  test('the shroud counts front and back, under a vane the back alone', () => {
    const both = partOf(shape([evenly('shroud/front', 3), evenly('shroud/back', 2)]));
    const wall = wallOf(both, 'shroud/front');
    expect(wall.face).toBe('shroud/front');
    expect(wall.remaining).toBeCloseTo(5, 5);
    // 10 - 2 under the vanes, 5 beside them.
    const under = wallOf(
      partOf(shape([evenly('shroud/front', 3), evenly('shroud/back', 2)], { leastThickness: 7 }), null),
      'shroud/back',
    );
    const ring = Math.PI * (150 ** 2 - 30 ** 2);
    const [front] = both.part.faces;
    expect(under.under / front.area).toBeCloseTo(1, 2);
    expect(under.under).toBeLessThan(0.97 * ring);
  });
  test('the round of a nose is no wall: worn deep there alone, nothing is thin', () => {
    const nose: Mark = {
      kind: 'patch',
      face: 'vane-1/pressure',
      blend: 'deepest',
      first: [0, 3.9],
      second: [0, 30],
      depth: [7, 7],
    };
    const made = madeImpeller({ nose: 'round' }, { leastThickness: 4.5 }, [nose]);
    expect(wallOf(partOf(made, 0.5), 'vane-1/pressure').remaining).toBeCloseTo(8, 5);
  });
  test('where an edge is eaten away nothing is left to be thin', () => {
    const worn: Mark = {
      kind: 'patch',
      face: 'vane-1/pressure',
      blend: 'deepest',
      first: [0, 10],
      second: [0, 30],
      depth: [7, 7],
    };
    const wall = wallOf(partOf(shape([worn, evenly('vane-1/leading-edge', 12)])), 'vane-1/pressure');
    expect(wall.remaining).toBeCloseTo(8, 5);
    expect(wall.places).toEqual([]);
  });
});

describe('after the repair', () => {
  test('filled flush, metal and putty are the wall as new where it is filled, the wear where it is left', () => {
    const part = partOf(plate({}, [patch([90, 110], [0, 90], 9), patch([120, 130], [0, 90], 0.8)]));
    // leaveBelow is 1: the 0.8 stay.
    expect(wallOf(part, 'face').standing).toBeCloseTo(17.2, 4);
    expect(wallOf(part, 'face').remaining).toBeCloseTo(9, 5);
  });
  test('an allowance for the coat is not filled', () => {
    const { parts } = estimate(job([patch([90, 110], [0, 90], 9)], {}, { coatAllowance: 0.5 }), { cell: 1 });
    expect(wallOf(parts[0], 'face').standing).toBeCloseTo(17.5, 4);
  });
});

test('the thinnest of the walls is the thinnest of the part, and no place looked at is thinner', () => {
  const faces = ['shroud/front', 'shroud/back', 'vane-1/pressure', 'vane-1/suction', 'vane-2/suction'];
  fc.assert(
    fc.property(
      fc.array(
        fc.record({
          face: fc.constantFrom(...faces),
          p: fc.double({ min: 0.1, max: 0.9, noNaN: true }),
          q: fc.double({ min: 0.1, max: 0.9, noNaN: true }),
          depth: fc.double({ min: 0.5, max: 6, noNaN: true }),
        }),
        { minLength: 1, maxLength: 5 },
      ),
      fc.array(
        fc.tuple(
          fc.double({ min: 0.02, max: 0.98, noNaN: true }),
          fc.double({ min: 0.02, max: 0.98, noNaN: true }),
        ),
        {
          minLength: 20,
          maxLength: 20,
        },
      ),
      (pits, places) => {
        const marks = pits.map(({ face, p, q, depth }) =>
          pitOn(
            face,
            face.startsWith('shroud') ? [40 + 100 * p, TURN * q] : [10 + 150 * p, 4 + 22 * q],
            depth,
          ),
        );
        const part = partOf(madeImpeller({ count: 2 }, { leastThickness: 4 }, marks));
        const least = Math.min(...part.walls.map(({ remaining }) => remaining));
        expect(part.thinnest.remaining).toBe(least);
        for (const { face } of part.faces) {
          const behind = part.faces.find((other) => other.face.name === face.opposite);
          if (behind === undefined) continue;
          const known = part.faces.find((other) => other.face === face);
          const [a, b] = face.coordinates;
          for (const [p, q] of places) {
            const [u, v] = toGridPoint(face, [a.from + p * (a.to - a.from), b.from + q * (b.to - b.from)]);
            if (!known || !face.holds(u, v)) continue;
            const left =
              face.wall(u) - depthAt(known.map, face, u, v) - depthAt(behind.map, behind.face, u, v);
            // A place off the lattice takes its depth from the nearest sample: flat pits have no others.
            expect(left).toBeGreaterThan(least - 1e-4);
          }
        }
        for (const wall of part.walls) {
          const sum = wall.places.reduce((area, place) => area + place.area, 0);
          expect(wall.under).toBeCloseTo(sum, 6);
          if (wall.verdict !== 'sound') expect(wall.places[0].remaining).toBe(wall.remaining);
        }
      },
    ),
    { numRuns: 8 },
  );
});
