/** @module As many as can be served at once, whatever it costs: matchings of rows to columns, and who stands in the way. */

/** For each row the columns that it may take. */
export type Open = readonly (readonly number[])[];

const free = -1;

/** How many steps each row lies from a row without a column; undefined where no free column can be reached. */
const layersOf = (open: Open, columnOf: readonly number[], rowOf: Int32Array): Int32Array | undefined => {
  const layer = new Int32Array(open.length).fill(free);
  let front: number[] = [];
  for (let row = 0; row < open.length; row += 1)
    if (columnOf[row] === free) {
      layer[row] = 0;
      front.push(row);
    }
  let reached = false;
  for (let step = 1; front.length > 0 && !reached; step += 1) {
    const next: number[] = [];
    for (const row of front)
      for (const column of open[row] ?? []) {
        const holder = rowOf[column] ?? free;
        if (holder === free) reached = true;
        else if (layer[holder] === free) {
          layer[holder] = step;
          next.push(holder);
        }
      }
    front = next;
  }
  return reached ? layer : undefined;
};

/**
 * The most rows that can each have a column of their own.
 *
 * @param open     for each row the columns that it may take, from 0
 * @param columns  how many columns there are
 * @returns the column of each row, -1 for a row that has none
 * @source  J. E. Hopcroft, R. M. Karp (1973)
 * @example matching([[0], [0, 1]], 2) // [0, 1]
 */
export const matching = (open: Open, columns: number): readonly number[] => {
  const columnOf = new Array<number>(open.length).fill(free);
  const rowOf = new Int32Array(columns).fill(free);
  for (;;) {
    const layer = layersOf(open, columnOf, rowOf);
    if (layer === undefined) return columnOf;
    const tried = new Int32Array(open.length);
    const serve = (row: number): boolean => {
      const mine = open[row] ?? [];
      for (; (tried[row] ?? 0) < mine.length; tried[row] = (tried[row] ?? 0) + 1) {
        const column = mine[tried[row] ?? 0] ?? free;
        const holder = rowOf[column] ?? free;
        if (holder !== free && !(layer[holder] === (layer[row] ?? 0) + 1 && serve(holder))) continue;
        columnOf[row] = column;
        rowOf[column] = row;
        return true;
      }
      return false;
    };
    for (let row = 0; row < open.length; row += 1) if (columnOf[row] === free) serve(row);
  }
};

/** Rows of which there are more than of the columns that any of them may take. */
export interface Crowd {
  readonly rows: readonly number[];
  readonly columns: readonly number[];
}

/**
 * Rows that cannot all be served, with all the columns that any of them may take: fewer than there are rows.
 *
 * @param open      for each row the columns that it may take, from 0
 * @param columnOf  a matching that serves as many rows as can be
 * @returns the rows and columns that the first row without a column reaches, in order; none where every row has one
 * @source  P. Hall (1935): rows can all be served unless some of them may take fewer columns than they are
 * @example crowd([[0], [0]], [0, -1]) // { rows: [0, 1], columns: [0] }
 */
export const crowd = (open: Open, columnOf: readonly number[]): Crowd | undefined => {
  const start = columnOf.indexOf(free);
  if (start < 0) return undefined;
  const rowOf = new Map(columnOf.map((column, row) => [column, row]));
  const rows = new Set([start]);
  const columns = new Set<number>();
  for (const row of rows)
    for (const column of open[row] ?? []) {
      columns.add(column);
      const holder = rowOf.get(column);
      if (holder !== undefined) rows.add(holder);
    }
  const inOrder = (all: Set<number>) => [...all].sort((a, b) => a - b);
  return { rows: inOrder(rows), columns: inOrder(columns) };
};
