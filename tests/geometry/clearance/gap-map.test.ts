import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { GapMap } from '../../../geometry/clearance/gap-map.ts';
import type { WearPlate } from '../../../geometry/job/job.ts';
import { evenly, patch, plate } from '../made.ts';
import { anyPair } from './any-pair.ts';
import { estimateOf, type MadePair, pairJob } from './made-gap.ts';

const made = (pair: MadePair, cell = 1) =>
  estimateOf(pairJob(pair), cell) ?? expect.fail('the two share their radii');
const gapsOf = (rings: GapMap['coated']): number[] =>
  rings.flat().filter((gap): gap is number => gap !== null);

/** 0.8 mm as new, bare, 2 mm gone from 90 to 130 mm over 20 to 95 deg, one vane 0.3 mm short: the other tips come nearer. */
test('each place of the plate has the gap to the nearest tip that passes it', () => {
  const { map } = made({
    onPlate: [patch([90, 130], [20, 95], 2)],
    onTips: [evenly('vane-2/tip', 0.3)],
    repair: { coatedFaces: [] },
  });
  const turn = 360 / map.sectors;
  const half = (map.radii[1] - map.radii[0]) / 2;
  let worn = 0;
  map.asFound.forEach((row, ring) => {
    row.forEach((gap, sector) => {
      const [from, to] = [sector * turn, (sector + 1) * turn];
      const [inner, outer] = [map.radii[ring] - half, map.radii[ring] + half];
      if (inner >= 91 && outer <= 129 && from >= 21 && to <= 94) {
        expect(gap).toBeCloseTo(2.8, 6);
        worn += 1;
      }
      if (outer <= 89 || inner >= 131 || to <= 19 || from >= 96) expect(gap).toBeCloseTo(0.8, 6);
    });
  });
  // 38 of 92 mm and 73 of 360 deg, the cells along the edges left out.
  expect(worn).toBeGreaterThan(0.7 * map.radii.length * map.sectors * (38 / 92) * (73 / 360));
  for (const gap of gapsOf(map.filled)) expect(gap).toBeCloseTo(0.8, 6);
});

test('its least is the least of the gap in every state, on any pair', () => {
  fc.assert(
    fc.property(anyPair, (pair) => {
      const { map, gap } = made(pair, 4);
      for (const state of ['asFound', 'filled', 'coated'] as const)
        expect(Math.min(...gapsOf(map[state])), state).toBeCloseTo(gap[state].least, 9);
    }),
    { numRuns: 15, seed: 3 },
  );
});

test('a bolt hole that takes a whole place of the map leaves it empty', () => {
  const { map } = made({ shape: { holes: [{ x: 120, y: 0, radius: 12 }] } });
  const near = (radius: number): number =>
    map.radii.reduce(
      (best, at, i) => (Math.abs(at - radius) < Math.abs(map.radii[best] - radius) ? i : best),
      0,
    );
  expect(map.coated[near(120)][0]).toBeNull();
  expect(map.coated[near(120)][map.sectors / 2]).not.toBeNull();
  expect(map.coated[near(90)][0]).not.toBeNull();
});

test('of a plate given by its outline only what is there is drawn', () => {
  const half: WearPlate = {
    ...plate(),
    shape: {
      kind: 'outline',
      edge: [
        [-160, 1],
        [160, 1],
        [160, 160],
        [-160, 160],
      ],
      holes: [],
    },
  };
  const { map } = made({ wearPlate: half });
  for (const row of map.coated) {
    const [upper, lower] = [row.slice(1, map.sectors / 2 - 1), row.slice(map.sectors / 2 + 1, -1)];
    expect(upper.every((gap) => gap !== null)).toBe(true);
    expect(lower.every((gap) => gap === null)).toBe(true);
  }
});

test('coarse cells leave no holes in it', () => {
  for (const cell of [5, 2, 0.5]) {
    const { map } = made({}, cell);
    expect(gapsOf(map.coated).length).toBe(map.radii.length * map.sectors);
  }
});
