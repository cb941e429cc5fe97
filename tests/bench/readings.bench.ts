import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import { createDepthMap } from '../../geometry/depth/depth-map.ts';
import { correlation } from '../../geometry/depth/kriging/correlation.ts';
import { krige } from '../../geometry/depth/kriging/kriging.ts';
import { readSurface, surfaceDepth } from '../../geometry/depth/read-surface.ts';
import { placesOf } from '../../geometry/depth/reading-places.ts';
import { applyReadings } from '../../geometry/depth/readings.ts';
import { type Survey, survey } from '../../geometry/depth/survey.ts';
import { estimate } from '../../geometry/estimate.ts';
import type { Readings } from '../../geometry/job/job.ts';
import type { Face } from '../../geometry/part/face.ts';
import { wearPlate } from '../../geometry/part/wear-plate.ts';
import { franke, seeded } from '../geometry/depth/kriging/fields.ts';
import { readAtRandom, readings } from '../geometry/depth/read-made.ts';
import { job, plate } from '../geometry/made.ts';
import { type BenchResult, measure, ratio } from './measure.ts';

/** 500 000 cells: a plate of 500 mm over a bore of 160. */
const WIDE = { outerRadius: 250, boreRadius: 80, holes: [] } as const;
const CELL = 0.7;
/** Of the cells one in so many is kriged by the slow way: all of them would take minutes with many readings. */
const ONE_IN = { few: 10, many: 100 };

/**
 * Readings to a surface and its map, 50 to 2000 of them: how long, and against the same by a general library, dense: the whole matrix
 * solved, every cell a sum over all readings with its covariances worked out anew.
 */
export function bench(): BenchResult {
  const [face] = wearPlate(plate(WIDE), CELL).faces;
  const cells = face.grid.rows * face.grid.columns;
  const results: BenchResult[] = [];
  for (const count of [50, 200, 1000, 2000]) {
    const mark = readingsOn(face, count);
    const every = count <= 200 ? ONE_IN.few : ONE_IN.many;
    const known = survey(face, mark);
    if (known === null) throw new Error('readings bench: needs readings on the face');
    checkNear(face, known);
    results.push(
      ratio(
        `solution, surface and map, ${count} readings, ${Math.round(cells / 1000)}k cells`,
        () =>
          mapOf(face, mark, { ...known, kriging: krige(known.placed.observed, known.kriging.covariance) }),
        `solution and 1/${every} of the cells, dense`,
        () => dense(face, known, every),
        // All cells against a few of them: at two thousand readings the slow solution alone is left to be faster than.
        { warm: 1, repeats: 15, most: 1 },
      ),
    );
    results.push({
      timings: [
        measure(
          `covariance, surface and map, ${count} readings`,
          () => mapOf(face, mark, survey(face, mark)),
          {
            warm: 1,
            repeats: 5,
          },
        ),
        measure(
          `whole estimate with ${count} readings`,
          () => estimate({ ...job([mark], WIDE) }, { cell: CELL }),
          { warm: 1, repeats: 3 },
        ),
      ],
      ratios: [],
    });
  }
  return {
    timings: results.flatMap(({ timings }) => timings),
    ratios: results.flatMap(({ ratios }) => ratios),
  };
}

function readingsOn(face: Face, count: number): Readings {
  const points = readAtRandom(
    face,
    count,
    seeded(count),
    (x, y) => 5 * franke((x + 250) / 500, (y + 250) / 500),
  );
  return readings('face', points);
}

function mapOf(face: Face, mark: Readings, known: Survey | null) {
  if (known === null) throw new Error('readings bench: needs readings on the face');
  const map = createDepthMap(face.grid);
  applyReadings(map, face, mark, readSurface(face, known.kriging, known.placed.at));
  return map;
}

/** Depths of every so many cells by the book: a general solution of all readings, and a sum over all of them for each cell. */
function dense(face: Face, { kriging }: Survey, every: number): Float64Array {
  const { places, depth, error } = kriging.observed;
  const { shape, length, sill } = kriging.covariance;
  const n = depth.length;
  const alike = (a: Float64Array, i: number, b: Float64Array, k: number) =>
    sill *
    correlation(
      shape,
      Math.hypot(a[3 * i] - b[3 * k], a[3 * i + 1] - b[3 * k + 1], a[3 * i + 2] - b[3 * k + 2]) / length,
    );
  const matrix = new Matrix(n, n);
  for (let i = 0; i < n; i++)
    for (let k = 0; k < n; k++) matrix.set(i, k, alike(places, i, places, k) + (i === k ? error[i] : 0));
  const right = new Matrix(n, 2);
  for (let i = 0; i < n; i++) right.setRow(i, [1, depth[i]]);
  const solved = new CholeskyDecomposition(matrix).solve(right);
  const ones = solved.getColumn(0);
  const onesSum = ones.reduce((sum, value) => sum + value, 0);
  const mean = ones.reduce((sum, value, i) => sum + value * depth[i], 0) / onesSum;
  const weights = solved.getColumn(1).map((value, i) => value - mean * ones[i]);
  const at = cellPlaces(face, every);
  const depths = new Float64Array(at.length / 3);
  for (let k = 0; k < depths.length; k++) {
    let sum = mean;
    for (let i = 0; i < n; i++) sum += weights[i] * alike(places, i, at, k);
    depths[k] = sum;
  }
  return depths;
}

function cellPlaces(face: Face, every: number): Float64Array {
  const { rows, columns } = face.grid;
  return placesOf(
    face,
    Array.from({ length: Math.floor((rows * columns) / every) }, (_, i) => centre(face, i * every)),
  );
}

function centre({ grid }: Face, cell: number): readonly [u: number, v: number] {
  const row = Math.floor(cell / grid.columns);
  return [grid.u0 + (row + 0.5) * grid.du, grid.v0 + (cell - row * grid.columns + 0.5) * grid.dv];
}

/** Both ways come to the same depths, or their times say nothing. */
function checkNear(face: Face, known: Survey): void {
  const every = 997;
  const slow = dense(face, known, every);
  for (let k = 0; k < slow.length; k++) {
    const off = Math.abs(surfaceDepth(known.surface, face.grid, ...centre(face, k * every)) - slow[k]);
    if (off > 1e-3) throw new Error(`readings bench: both ways should agree within 0.001 mm, got ${off}`);
  }
}
