/** @module What can be done now, given what is done and which parts are away. */
import type { Operation } from '../engine/engine-type.ts';
import type { Precedence } from './precedence.ts';

export interface OpenNow {
  /** Free to be done. */
  readonly open: readonly Operation[];
  /** Free but for parts that are not in the shop. */
  readonly waiting: readonly { readonly operation: Operation; readonly away: readonly string[] }[];
}

/**
 * @param work  the operations in question
 * @param done  names of those that are done
 * @param away  parts that are not in the shop: kinds of place, or the names under which they were taken off
 */
export const openNow = (
  { operations, before }: Precedence,
  done: ReadonlySet<string>,
  away: ReadonlySet<string>,
): OpenNow => {
  const free = operations.filter(
    ({ name }, at) =>
      !done.has(name) && (before[at] ?? []).every((one) => done.has(operations[one]?.name ?? '')),
  );
  const missing = ({ at, fits, phase }: Operation): readonly string[] => {
    const handles = new Set(phase !== 'strip' && at !== undefined ? [...fits, at] : fits);
    return [...handles].filter((part) => away.has(part));
  };
  return {
    open: free.filter((operation) => missing(operation).length === 0),
    waiting: free
      .map((operation) => ({ operation, away: missing(operation) }))
      .filter((one) => one.away.length > 0),
  };
};
