import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import { expect, test } from 'vitest';
import {
  factor,
  logDeterminant,
  solveLower,
  solveUpper,
} from '../../../../geometry/depth/kriging/cholesky.ts';
import { seeded } from './fields.ts';

/** A covariance of places strewn over a square; sizes round about the four columns that are factored at once. */
function covariances(n: number): number[][] {
  const random = seeded(n);
  const places = Array.from({ length: n }, () => [random(), random()]);
  return places.map(([x, y], i) =>
    places.map(([a, b], j) => Math.exp(-Math.hypot(x - a, y - b)) + (i === j ? 0.01 : 0)),
  );
}

test.each([1, 2, 3, 4, 5, 6, 7, 8, 9, 33, 64])(
  '%i x %i: factor, solution and determinant of an independent library',
  (n) => {
    const rows = covariances(n);
    const theirs = new CholeskyDecomposition(new Matrix(rows));
    const lower = Float64Array.from(rows.flat());
    expect(factor(lower, n)).toBe(true);
    for (let i = 0; i < n; i++)
      for (let j = 0; j <= i; j++)
        expect(lower[i * n + j]).toBeCloseTo(theirs.lowerTriangularMatrix.get(i, j), 12);
    const wanted = theirs.solve(Matrix.columnVector(rows.map((_, i) => i + 1))).to1DArray();
    const vector = Float64Array.from(rows, (_, i) => i + 1);
    solveLower(lower, n, vector);
    solveUpper(lower, n, vector);
    for (let i = 0; i < n; i++) expect(vector[i]).toBeCloseTo(wanted[i], 8);
    const diagonal = theirs.lowerTriangularMatrix.diagonal();
    expect(logDeterminant(lower, n)).toBeCloseTo(
      diagonal.reduce((sum, value) => sum + 2 * Math.log(value), 0),
      10,
    );
  },
);

test('a matrix that is not positive definite is refused', () => {
  expect(factor(Float64Array.of(1, 0, 2, 1), 2)).toBe(false);
});
