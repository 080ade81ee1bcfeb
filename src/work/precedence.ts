/** @module What must come before what among chosen operations; those left out in between still keep their order. */
import type { Operation } from '../engine/engine-type.ts';

/** Operations by index, in the order of the engine type, each with those directly before and after it. */
export interface Precedence {
  readonly operations: readonly Operation[];
  readonly before: readonly (readonly number[])[];
  readonly after: readonly (readonly number[])[];
}

type Book = ReadonlyMap<string, Operation>;

/** The nearest chosen operations before one, seen through those that are not chosen. */
const nearestBefore = (book: Book, index: ReadonlyMap<string, number>, name: string): readonly number[] => {
  const found = new Set<number>();
  const seen = new Set<string>([name]);
  const ahead = [...(book.get(name)?.after ?? [])];
  for (let next = ahead.pop(); next !== undefined; next = ahead.pop()) {
    if (seen.has(next)) continue;
    seen.add(next);
    const at = index.get(next);
    if (at === undefined) ahead.push(...(book.get(next)?.after ?? []));
    else found.add(at);
  }
  return [...found].sort((a, b) => a - b);
};

/**
 * The precedence of chosen operations.
 *
 * @param book    every operation of the engine type, free of circles (the linter sees to it)
 * @param chosen  those wanted; left out, all of them
 */
export const precedenceOf = (
  book: Book,
  chosen: (operation: Operation) => boolean = () => true,
): Precedence => {
  const operations = [...book.values()].filter(chosen);
  const index = new Map(operations.map(({ name }, at) => [name, at]));
  const before = operations.map(({ name }) => nearestBefore(book, index, name));
  const after: number[][] = operations.map(() => []);
  for (const [at, earlier] of before.entries()) for (const one of earlier) after[one]?.push(at);
  return { operations, before, after };
};
