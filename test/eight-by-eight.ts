/** @module A published assignment problem with its known answer, held by all that assign. */

/** source: N. Christofides, Graph Theory (1975), p. 381, as in the examples of GLPK: sum 76, no other columns give it. */
export const eightByEight = {
  costs: [
    [13, 21, 20, 12, 8, 26, 22, 11],
    [12, 36, 25, 41, 40, 11, 4, 8],
    [35, 32, 13, 36, 26, 21, 13, 37],
    [34, 54, 7, 8, 12, 22, 11, 40],
    [21, 6, 45, 18, 24, 34, 12, 48],
    [42, 19, 39, 15, 14, 16, 28, 46],
    [16, 34, 38, 3, 34, 40, 22, 24],
    [26, 20, 5, 17, 45, 31, 37, 43],
  ],
  best: 76,
  /** From 1, row by row. */
  columns: [1, 8, 7, 5, 2, 6, 4, 3],
};
