/**
 * The Cholesky factor of a symmetric positive definite matrix. Our own, because kriging needs the half solves and, at two thousand
 * readings, twice the speed of the library that the tests check it against.
 */

/**
 * Turns the lower half of `matrix` (n x n, row-major) into its factor L, matrix = L L'. Writes into `matrix`.
 * @returns false when it is not positive definite; `matrix` is then of no use
 */
export function factor(matrix: Float64Array, n: number): boolean {
  for (let i = 0; i < n; i++) {
    const row = i * n;
    let j = 0;
    // Four columns at a time read the row once for all of them.
    for (; j + 3 < i; j += 4) factorFour(matrix, n, row, j);
    for (; j <= i; j++) {
      const other = j * n;
      let sum = matrix[row + j];
      for (let k = 0; k < j; k++) sum -= matrix[row + k] * matrix[other + k];
      if (j < i) matrix[row + j] = sum / matrix[other + j];
      else if (sum > 0) matrix[row + i] = Math.sqrt(sum);
      else return false;
    }
  }
  return true;
}

/** Columns j to j + 3 of one row. Writes into `matrix`. */
function factorFour(matrix: Float64Array, n: number, row: number, j: number): void {
  const [a, b, c, d] = [j * n, (j + 1) * n, (j + 2) * n, (j + 3) * n];
  let s0 = matrix[row + j];
  let s1 = matrix[row + j + 1];
  let s2 = matrix[row + j + 2];
  let s3 = matrix[row + j + 3];
  for (let k = 0; k < j; k++) {
    const x = matrix[row + k];
    s0 -= x * matrix[a + k];
    s1 -= x * matrix[b + k];
    s2 -= x * matrix[c + k];
    s3 -= x * matrix[d + k];
  }
  s0 /= matrix[a + j];
  s1 = (s1 - s0 * matrix[b + j]) / matrix[b + j + 1];
  s2 = (s2 - s0 * matrix[c + j] - s1 * matrix[c + j + 1]) / matrix[c + j + 2];
  s3 = (s3 - s0 * matrix[d + j] - s1 * matrix[d + j + 1] - s2 * matrix[d + j + 2]) / matrix[d + j + 3];
  matrix[row + j] = s0;
  matrix[row + j + 1] = s1;
  matrix[row + j + 2] = s2;
  matrix[row + j + 3] = s3;
}

/** Solves L x = b in place: `vector` goes in as b and comes out as x. */
export function solveLower(lower: Float64Array, n: number, vector: Float64Array): void {
  for (let i = 0; i < n; i++) {
    const row = i * n;
    let sum = vector[i];
    for (let k = 0; k < i; k++) sum -= lower[row + k] * vector[k];
    vector[i] = sum / lower[row + i];
  }
}

/** Solves L' x = b in place. */
export function solveUpper(lower: Float64Array, n: number, vector: Float64Array): void {
  for (let i = n - 1; i >= 0; i--) {
    const row = i * n;
    const value = vector[i] / lower[row + i];
    vector[i] = value;
    for (let k = 0; k < i; k++) vector[k] -= lower[row + k] * value;
  }
}

/** Logarithm of the determinant of L L'. */
export function logDeterminant(lower: Float64Array, n: number): number {
  let sum = 0;
  for (let i = 0; i < n; i++) sum += Math.log(lower[i * n + i]);
  return 2 * sum;
}
