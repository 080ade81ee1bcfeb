/** @module Every way of giving rows columns of their own: what a small assignment is held against. */

export const everyWay = (rows: number, columns: readonly number[]): readonly (readonly number[])[] =>
  rows === 0
    ? [[]]
    : columns.flatMap((column) =>
        everyWay(
          rows - 1,
          columns.filter((other) => other !== column),
        ).map((rest) => [column, ...rest]),
      );
