/** @module Inverse and determinant of a small positive definite matrix. */

export interface Inverse {
  readonly entries: readonly (readonly number[])[];
  readonly logDeterminant: number;
}

/**
 * Inverse of a symmetric positive definite matrix, and the logarithm of its determinant.
 *
 * @param matrix  symmetric, positive definite, at most a few dozen rows; not checked
 * @returns both, by Gauss-Jordan elimination, which needs no pivoting here
 * @source  any text on linear algebra
 * @example invert([[2, 1], [1, 2]]).entries[0]?.[0] // 0.6667
 */
export const invert = (matrix: readonly (readonly number[])[]): Inverse => {
  const size = matrix.length;
  const rows = matrix.map((row, at) => [
    ...row,
    ...Array.from({ length: size }, (_, column) => (column === at ? 1 : 0)),
  ]);
  let logDeterminant = 0;
  for (const [at, row] of rows.entries()) {
    const pivot = row[at] ?? Number.NaN;
    logDeterminant += Math.log(pivot);
    for (let column = at; column < 2 * size; column += 1) row[column] = (row[column] ?? 0) / pivot;
    for (const [other, target] of rows.entries()) {
      const factor = other === at ? 0 : (target[at] ?? 0);
      if (factor === 0) continue;
      for (let column = at; column < 2 * size; column += 1) {
        target[column] = (target[column] ?? 0) - factor * (row[column] ?? 0);
      }
    }
  }
  return { entries: rows.map((row) => row.slice(size)), logDeterminant };
};
