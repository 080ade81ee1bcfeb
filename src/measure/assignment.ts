/** @module Who goes with whom at least cost: the assignment problem, exactly. */

/**
 * Assigns each row its own column so that the sum of costs is least.
 *
 * @param cost  square, finite; anything else is a mistake of the caller and throws
 * @returns the column of each row
 * @source  shortest augmenting paths with potentials (H. W. Kuhn 1955, J. Munkres 1957), n³ steps
 * @example assign([[4, 1, 3], [2, 0, 5], [3, 2, 2]]) // [1, 0, 2]
 */
export const assign = (cost: readonly (readonly number[])[]): readonly number[] => {
  const size = cost.length;
  if (!cost.every((row) => row.length === size && row.every(Number.isFinite))) {
    throw new RangeError('costs of an assignment must be a square of finite numbers');
  }
  const at = (row: number, column: number): number => cost[row]?.[column] ?? Number.POSITIVE_INFINITY;
  const rowOf = new Array<number>(size).fill(-1);
  const rowPotential = new Array<number>(size).fill(0);
  const columnPotential = new Array<number>(size).fill(0);
  const take = (values: readonly number[], index: number): number => values[index] ?? 0;

  for (let start = 0; start < size; start += 1) {
    const least = new Array<number>(size).fill(Number.POSITIVE_INFINITY);
    const from = new Array<number>(size).fill(-1);
    const reached: number[] = [];
    let row = start;
    let column = -1;
    do {
      let next = -1;
      let step = Number.POSITIVE_INFINITY;
      for (let j = 0; j < size; j += 1) {
        if (reached.includes(j)) continue;
        const slack = at(row, j) - take(rowPotential, row) - take(columnPotential, j);
        if (slack < take(least, j)) {
          least[j] = slack;
          from[j] = column;
        }
        if (take(least, j) < step) {
          step = take(least, j);
          next = j;
        }
      }
      rowPotential[start] = take(rowPotential, start) + step;
      for (const j of reached) {
        const held = take(rowOf, j);
        rowPotential[held] = take(rowPotential, held) + step;
        columnPotential[j] = take(columnPotential, j) - step;
      }
      for (let j = 0; j < size; j += 1) if (!reached.includes(j)) least[j] = take(least, j) - step;
      reached.push(next);
      column = next;
      row = take(rowOf, next);
    } while (row !== -1);
    // Back along the path, each row takes the column that it was reached from.
    while (column !== -1) {
      const before = from[column] ?? -1;
      rowOf[column] = before === -1 ? start : take(rowOf, before);
      column = before;
    }
  }
  const columns = new Array<number>(size).fill(-1);
  for (const [column, row] of rowOf.entries()) columns[row] = column;
  return columns;
};
