import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toGridPoint } from '../../../geometry/part/face.ts';
import { ownPoint } from '../../../web/tools/file-point.ts';
import { flatDistance } from '../../../web/tools/flat-distance.ts';
import { gridPlaces, usualGrid } from '../../../web/tools/reading-grid.ts';
import { faceNamed, PLATES, partOf } from './plates.ts';

const round = partOf(PLATES.round);
const face = faceNamed(round, 'face');
const bore = faceNamed(round, 'bore');
const outline = faceNamed(partOf(PLATES.outline), 'face');

/** Clear of the six bolt holes of 9 mm on 180 mm. */
const RINGS = { from: 50, to: 80, count: 2 };
const SPOKES = { from: 0, to: 360, count: 4 };

describe('a grid is walked as a snake', () => {
  it('ring by ring, each the other way round', () => {
    expect(gridPlaces(face, { first: RINGS, second: SPOKES, keep: 'first' })).toEqual([
      [50, 0],
      [50, 90],
      [50, 180],
      [50, 270],
      [80, 270],
      [80, 180],
      [80, 90],
      [80, 0],
    ]);
  });

  it('spoke by spoke, out and in, from the first angle', () => {
    const second = { from: 350, to: 360, count: 4 };
    expect(gridPlaces(face, { first: { from: 50, to: 80, count: 3 }, second, keep: 'second' })).toEqual([
      [50, 350],
      [65, 350],
      [80, 350],
      [80, 80],
      [65, 80],
      [50, 80],
      [50, 170],
      [65, 170],
      [80, 170],
      [80, 260],
      [65, 260],
      [50, 260],
    ]);
  });

  it('round a bore, where the angle comes first', () => {
    const places = gridPlaces(bore, {
      first: { from: 0, to: 360, count: 3 },
      second: { from: 2, to: 14, count: 2 },
      keep: 'second',
    });
    expect(places).toEqual([
      [0, 2],
      [120, 2],
      [240, 2],
      [240, 14],
      [120, 14],
      [0, 14],
    ]);
  });

  it('leaves out what lies in a hole or off the face, and keeps the way', () => {
    // Bolt holes stand at 0, 60, ... on a radius of 90; the L of the outline has no corner at 110, 80.
    const ring = { from: 90, to: 90, count: 1 };
    const twelve = gridPlaces(face, { first: ring, second: { from: 0, to: 360, count: 12 }, keep: 'first' });
    expect(twelve.map(([, angle]) => angle)).toEqual([30, 90, 150, 210, 270, 330]);
    const across = { from: 20, to: 110, count: 2 };
    expect(
      gridPlaces(outline, { first: across, second: { from: 20, to: 80, count: 2 }, keep: 'first' }),
    ).toEqual([
      [20, 80],
      [110, 20],
    ]);
  });

  it('one step stands at its beginning', () => {
    expect(
      gridPlaces(face, {
        first: { from: 55, to: 80, count: 1 },
        second: { ...SPOKES, count: 1 },
        keep: 'first',
      }),
    ).toEqual([[55, 0]]);
  });
});

describe('whatever the grid', () => {
  const steps = fc.record({
    from: fc.integer({ min: 41, max: 70 }),
    to: fc.integer({ min: 71, max: 99 }),
    count: fc.integer({ min: 1, max: 6 }),
  });
  const turn = fc.record({
    from: fc.integer({ min: -400, max: 400 }),
    to: fc.constant(360),
    count: fc.integer({ min: 1, max: 12 }),
  });

  it('every place is on the face, is walked once, and no step is longer than the grid is wide', () => {
    fc.assert(
      fc.property(
        steps,
        turn,
        fc.constantFrom('first' as const, 'second' as const),
        (first, second, keep) => {
          const places = gridPlaces(face, { first, second, keep });
          expect(new Set(places.map(String)).size).toBe(places.length);
          for (const place of places) {
            expect(face.holds(...toGridPoint(face, ownPoint(face, place)))).toBe(true);
            expect(place[1]).toBeGreaterThanOrEqual(0);
            expect(place[1]).toBeLessThan(360);
          }
          expect(places.length).toBeLessThanOrEqual(first.count * second.count);
        },
      ),
    );
  });

  it('a snake is a shorter walk than starting each ring at its beginning', () => {
    const length = (places: readonly (readonly [number, number])[]) =>
      places
        .slice(1)
        .reduce(
          (sum, place, i) => sum + flatDistance(face, ownPoint(face, places[i]), ownPoint(face, place)),
          0,
        );
    const snake = gridPlaces(face, {
      first: { from: 45, to: 80, count: 4 },
      second: { ...SPOKES, count: 9 },
      keep: 'first',
    });
    const ordered = [...snake].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
    // By the short way round the turn a ring ends beside its beginning, so an odd number of spokes tells.
    expect(length(snake)).toBeLessThan(length(ordered));
  });

  it('the one to begin with has round ends, in inches too', () => {
    expect(usualGrid(face, 0.5).first).toEqual({ from: 46, to: 94, count: 5 });
    // 1.8 and 3.7 in.
    expect(usualGrid(face, 25.4 / 20).first).toEqual({ from: 45.72, to: 93.98, count: 5 });
  });

  it('the one to begin with lies on the face', () => {
    for (const each of [face, bore, outline]) {
      const grid = usualGrid(each, 0.5);
      expect(gridPlaces(each, grid).length).toBeGreaterThan((grid.first.count * grid.second.count) / 2);
    }
  });
});
