/** @module The assignment whose worst pair is best, then whose sum is least, then which comes first in order. */
import { type Assignment, assign } from '../measure/assignment.ts';
import { type Crowd, crowd, matching, type Open } from './matching.ts';

type Costs = readonly (readonly number[])[];

const openAt = (costs: Costs, most: number): Open =>
  costs.map((row) => {
    const open: number[] = [];
    for (let column = 0; column < row.length; column += 1)
      if ((row[column] ?? Number.POSITIVE_INFINITY) <= most) open.push(column);
    return open;
  });

/** The greatest cost of some assignment none of whose costs is more than `most`; undefined where there is none. */
const servedWithin = (costs: Costs, columns: number, most: number): number | undefined => {
  const taken = matching(openAt(costs, most), columns);
  return taken.includes(-1)
    ? undefined
    : taken.reduce((worst, column, row) => Math.max(worst, costs[row]?.[column] ?? 0), 0);
};

/**
 * The least greatest cost of assignments, where there are any: no lower than the best of every row, found from there
 * by steps that double until one serves, and then by halving.
 */
const bottleneck = (costs: Costs, columns: number): number => {
  let low = 0;
  for (const row of costs) {
    let best = Number.POSITIVE_INFINITY;
    for (const cost of row) if (cost < best) best = cost;
    low = Math.max(low, best);
  }
  let high = servedWithin(costs, columns, low);
  for (let step = Math.max(1, low / 8); high === undefined; step *= 2) {
    high = servedWithin(costs, columns, low + step);
    if (high === undefined) low += step;
  }
  low = Math.floor(low);
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    const served = servedWithin(costs, columns, middle);
    if (served === undefined) low = middle;
    else high = served;
  }
  return high;
};

/**
 * Of all assignments with the least sum the one whose first row has the earliest column, then the second, and so on.
 *
 * Those with the least sum are those that keep to pairs whose cost is no more than the prices of row and column, and
 * that use every column with a price. A row may move to an earlier column if whoever holds that one can, by such
 * pairs alone, be brought to the column that the row leaves; columns without a price may also lie unused.
 */
const earliest = (costs: Costs, { columns, rowPrices, columnPrices }: Assignment): readonly number[] => {
  const columnOf = [...columns];
  const count = columnPrices.length;
  const holder = new Int32Array(count).fill(-1);
  for (const [row, column] of columnOf.entries()) holder[column] = row;
  const tight = columnOf.map((_, row) => {
    const price = rowPrices[row] ?? 0;
    const mine: number[] = [];
    for (let column = 0; column < count; column += 1)
      if (costs[row]?.[column] === price + (columnPrices[column] ?? 0)) mine.push(column);
    return mine;
  });
  const rowsAt: number[][] = columnPrices.map(() => []);
  for (const [row, open] of tight.entries()) for (const column of open) rowsAt[column]?.push(row);

  for (let row = 0; row < columnOf.length; row += 1) {
    const left = columnOf[row] ?? -1;
    const earlier = (tight[row] ?? []).filter((column) => column < left);
    if (earlier.length === 0) continue;
    // For each column whose holder can be brought to the one left: the column to which the holder goes first.
    const toward = new Map<number, number>([[left, -1]]);
    let unusedGoes = -1;
    for (const column of toward.keys()) {
      if (unusedGoes < 0 && columnPrices[column] === 0) {
        unusedGoes = column;
        for (let other = 0; other < count; other += 1)
          if (holder[other] === -1 && !toward.has(other)) toward.set(other, column);
      }
      for (const other of rowsAt[column] ?? []) {
        const held = columnOf[other] ?? -1;
        if (other > row && !toward.has(held)) toward.set(held, column);
      }
    }
    const first = earlier.find((column) => toward.has(column)) ?? left;
    for (let from = first, mover = row; from !== -1; ) {
      const displaced = holder[from] ?? -1;
      holder[from] = mover;
      if (mover !== -1) columnOf[mover] = from;
      mover = displaced;
      from = first === left ? -1 : (toward.get(from) ?? -1);
    }
  }
  return columnOf;
};

export interface Evenly {
  readonly kind: 'assigned';
  /** The column of each row. */
  readonly columns: readonly number[];
  readonly greatest: number;
  readonly sum: number;
}

/**
 * Gives each row a column of its own: the greatest cost least, then the sum of costs least, then the earliest columns
 * for the earliest rows.
 *
 * @param costs  whole numbers, 0 and up, below 2^50 in sum; Infinity where a row may not take a column; as many in
 *   each row
 * @returns columns with greatest cost and sum, exact; or rows that cannot all be served with the fewer columns that
 *   any of them may take
 * @source  greatest: halving over matchings (Hopcroft and Karp 1973); sum: shortest augmenting paths; order: exchange
 *   along pairs of no slack; rows that cannot be served: P. Hall (1935)
 * @example evenAssignment([[1, 5], [2, 4]]) // { kind: 'assigned', columns: [0, 1], greatest: 4, sum: 5 }
 */
export const evenAssignment = (costs: Costs): Evenly | (Crowd & { readonly kind: 'crowded' }) => {
  const columns = costs[0]?.length ?? 0;
  const open = openAt(costs, Number.MAX_SAFE_INTEGER);
  const crowded = crowd(open, matching(open, columns));
  if (crowded) return { kind: 'crowded', ...crowded };
  const most = bottleneck(costs, columns);
  const within = costs.map((row) => row.map((cost) => (cost <= most ? cost : Number.POSITIVE_INFINITY)));
  const best = assign(within);
  if (!best) throw new Error('what a matching serves an assignment serves too');
  const taken = earliest(within, best);
  const costOf = (row: number): number => costs[row]?.[taken[row] ?? -1] ?? 0;
  return {
    kind: 'assigned',
    columns: taken,
    greatest: taken.reduce((worst, _, row) => Math.max(worst, costOf(row)), 0),
    sum: taken.reduce((total, _, row) => total + costOf(row), 0),
  };
};
