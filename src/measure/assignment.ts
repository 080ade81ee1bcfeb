/** @module Who goes with whom at least cost: the assignment problem, exactly. */

/** A least assignment with its proof: each cost is at least its row's price plus its column's, and those taken are no more. */
export interface Assignment {
  /** The column of each row. */
  readonly columns: readonly number[];
  readonly rowPrices: readonly number[];
  /** 0 or below; 0 for every column that no row took. */
  readonly columnPrices: readonly number[];
}

/**
 * Assigns each row a column of its own so that the sum of costs is least.
 *
 * @param cost  as many columns as rows or more, each row as long as the first; Infinity where a row may not take a
 *   column; anything else is a mistake of the caller and throws
 * @returns the column of each row with the prices that prove it; undefined where the rows cannot all be served
 * @source  shortest augmenting paths with prices (H. W. Kuhn 1955, J. Munkres 1957), rows² × columns steps
 * @example assign([[4, 1, 3], [2, 0, 5], [3, 2, 2]])?.columns // [1, 0, 2]
 */
export const assign = (cost: readonly (readonly number[])[]): Assignment | undefined => {
  const rows = cost.length;
  const columns = cost[0]?.length ?? 0;
  const sound = (each: number): boolean => each > Number.NEGATIVE_INFINITY;
  if (columns < rows || !cost.every((row) => row.length === columns && row.every(sound))) {
    throw new RangeError('costs of an assignment are numbers, with a column for each row at least');
  }
  const rowOf = new Int32Array(columns).fill(-1);
  const rowPrices = new Float64Array(rows);
  const columnPrices = new Float64Array(columns);
  const take = (values: Float64Array | Int32Array, index: number): number => values[index] ?? 0;

  for (let start = 0; start < rows; start += 1) {
    const least = new Float64Array(columns).fill(Number.POSITIVE_INFINITY);
    const from = new Int32Array(columns).fill(-1);
    const reached: number[] = [];
    const away = Array.from({ length: columns }, (_, column) => column);
    let row = start;
    let column = -1;
    let travelled = 0;
    // Lengths of paths from the start; prices change once, when a free column is reached.
    do {
      const costs = cost[row] ?? [];
      const base = travelled - take(rowPrices, row);
      let next = -1;
      let step = Number.POSITIVE_INFINITY;
      for (let k = 0; k < away.length; k += 1) {
        const j = away[k] ?? 0;
        const length = base + (costs[j] ?? Number.POSITIVE_INFINITY) - take(columnPrices, j);
        if (length < take(least, j)) {
          least[j] = length;
          from[j] = column;
        }
        const known = take(least, j);
        if (known < step) {
          step = known;
          next = k;
        }
      }
      if (next < 0) return undefined;
      travelled = step;
      column = away[next] ?? -1;
      reached.push(column);
      away[next] = away.at(-1) ?? -1;
      away.pop();
      row = take(rowOf, column);
    } while (row !== -1);
    rowPrices[start] = take(rowPrices, start) + travelled;
    for (const j of reached) {
      const held = take(rowOf, j);
      const slack = travelled - take(least, j);
      if (held === -1) continue;
      rowPrices[held] = take(rowPrices, held) + slack;
      columnPrices[j] = take(columnPrices, j) - slack;
    }
    // Back along the path, each row takes the column that it was reached from.
    while (column !== -1) {
      const before = take(from, column);
      rowOf[column] = before === -1 ? start : take(rowOf, before);
      column = before;
    }
  }
  const taken = new Array<number>(rows).fill(-1);
  for (const [column, row] of rowOf.entries()) if (row !== -1) taken[row] = column;
  return { columns: taken, rowPrices: [...rowPrices], columnPrices: [...columnPrices] };
};
