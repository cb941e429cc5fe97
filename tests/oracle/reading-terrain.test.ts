/** A surface nobody made for us: the terrain of a small volcano, 87 x 61 heights on a grid, turned upside down into a plate. */
import terrain from 'vega-datasets/data/volcano.json';
import { expect, test } from 'vitest';
import { estimate } from '../../geometry/estimate.ts';
import type { Mm } from '../../geometry/units.ts';
import { seeded } from '../geometry/depth/kriging/fields.ts';
import { readings } from '../geometry/depth/read-made.ts';
import { job, plate } from '../geometry/made.ts';

// Maunga Whau, digitised by R. Ihaka; `volcano` of R's datasets, here from the package vega-datasets (BSD 3-clause).
const { width, height, values } = terrain;
/** mm from one height to the next; 94 m is sound, 195 m is 5 mm deep. */
const STEP: Mm = 3;
const depthOf = (metres: number): Mm => ((metres - 94) / 101) * 5;

/** Straight between the four heights about a place. */
function depthAt(x: Mm, y: Mm): Mm {
  const [i, j] = [Math.min(height - 2, Math.floor(y / STEP)), Math.min(width - 2, Math.floor(x / STEP))];
  const [t, s] = [y / STEP - i, x / STEP - j];
  const at = (row: number, column: number) => depthOf(values[row * width + column]);
  return (
    (1 - t) * ((1 - s) * at(i, j) + s * at(i, j + 1)) + t * ((1 - s) * at(i + 1, j) + s * at(i + 1, j + 1))
  );
}

/** Its volume: the trapezoid rule is exact for what is straight between heights. */
function volume(): number {
  let sum = 0;
  for (const [k, metres] of values.entries()) {
    const [row, column] = [Math.floor(k / width), k % width];
    const atEnd = (place: number, count: number) => (place === 0 || place === count - 1 ? 0.5 : 1);
    sum += depthOf(metres) * atEnd(row, height) * atEnd(column, width);
  }
  return sum * STEP * STEP;
}

const [WIDE, HIGH] = [(width - 1) * STEP, (height - 1) * STEP];
const EDGE = [
  [0, 0],
  [WIDE, 0],
  [WIDE, HIGH],
  [0, HIGH],
] as const;

test('the terrain is the one that is meant', () => {
  // 87 x 61, sum 690 907, 94 to 195: the same in two packages.
  expect([width, height, values.length]).toEqual([87, 61, 5307]);
  expect(values.reduce((sum, value) => sum + value, 0)).toBe(690_907);
  expect([Math.min(...values), Math.max(...values)]).toEqual([94, 195]);
});

test.each([
  { count: 30, closest: 0.08 },
  { count: 120, closest: 0.02 },
])(
  'read at $count places, gauge 0.05 mm, its volume lies within its interval 17 times in 20 or more',
  ({ count, closest }) => {
    const truth = volume();
    let held = 0;
    let error = 0;
    for (let seed = 0; seed < 20; seed++) {
      const random = seeded(100 * count + seed);
      const gauss = () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
      const points = Array.from({ length: count }, (): [number, number, number] => {
        const [x, y] = [WIDE * random(), HIGH * random()];
        return [x, y, depthAt(x, y) + 0.05 * gauss()];
      });
      const mark = readings('face', points, { gaugeError: 0.05 });
      const worn = { ...plate({}, [mark]), shape: { kind: 'outline', edge: EDGE, holes: [] } } as const;
      const { parts, readings: left } = estimate({ ...job([]), parts: [worn] }, { cell: 3 });
      error += left[0].lost / truth / 20;
      if (Math.abs(parts[0].lost.volume - truth) <= 1.96 * left[0].lost) held += 1;
    }
    const message = `held ${held} of 20, standard error ${(100 * error).toFixed(2)} % of the volume`;
    // Of intervals that hold it 95 times in 100, fewer than 17 of 20 would once in 60 (binomial).
    expect(held, message).toBeGreaterThanOrEqual(17);
    // Intervals as wide as the plate would hold anything.
    expect(error, message).toBeLessThan(closest);
  },
);
