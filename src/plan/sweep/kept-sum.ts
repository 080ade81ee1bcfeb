/** @module What must be kept in mind of something shared while slots that put into it are still to come: what is in it so far. */

import type { Shared } from './problem.ts';
import { holds } from './read-row.ts';

/** Values that may be in it, and to which of the next ones each choice leads; -1 where it leads nowhere. */
export interface Advance {
  readonly values: readonly number[];
  /** `next[value * choices + choice]`. */
  readonly next: readonly number[];
  /** What is paid on the way. */
  readonly cents: readonly number[];
}

const least = (puts: readonly number[]): number =>
  puts.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
const greatest = (puts: readonly number[]): number =>
  puts.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);

/** Steps between values far below any that matters are rubbed out, so that equal sums are one. */
const rounded = (value: number): number => Math.round(value * 1e7) / 1e7 || 0;

/** What can still come in: from, to. */
type Range = readonly [least: number, greatest: number];

/** Undefined where the rule is lost whatever comes; one and the same value where it is kept whatever comes. */
const clipped = (value: number, shared: Shared, [low, high]: Range): number | undefined => {
  const { relation, bound } = shared;
  if (relation !== '>=' && !holds(value + low, { relation: '<=', bound })) return undefined;
  if (relation !== '<=' && !holds(value + high, { relation: '>=', bound })) return undefined;
  if (relation === '<=') return rounded(Math.max(value, bound - high));
  return rounded(relation === '>=' ? Math.min(value, bound - low) : value);
};

const put = (shared: Shared, value: number, more: number, still: Range): number | undefined => {
  switch (shared.kind) {
    case 'set-up':
      return value === 1 || more > 0 ? 1 : 0;
    case 'count':
      return value + more;
    case 'sum':
      return clipped(value + more, shared, still);
    default:
      return shared.kind satisfies never;
  }
};

const paid = ({ kind, cents }: Shared, before: number, after: number, last: boolean): number => {
  if (kind === 'set-up') return before === 0 && after === 1 ? (cents[0] ?? 0) : 0;
  return kind === 'count' && last ? (cents[after] ?? 0) : 0;
};

/**
 * @param before  values that may be in it so far
 * @param slot    the slot that puts in next
 * @param later   slots that put in after it
 */
export const advance = (
  shared: Shared,
  before: readonly number[],
  slot: number,
  later: readonly number[],
): Advance => {
  const puts = shared.from.get(slot) ?? [];
  const rest = later.map((each) => shared.from.get(each) ?? []);
  const still: Range = [
    rest.reduce((sum, own) => sum + least(own), 0),
    rest.reduce((sum, own) => sum + greatest(own), 0),
  ];
  const last = later.length === 0;
  // Of a set-up the digit is the value: 0 not paid yet, 1 paid.
  const at = new Map<number, number>(
    shared.kind === 'set-up' && !last
      ? [
          [0, 0],
          [1, 1],
        ]
      : [],
  );
  const next: number[] = [];
  const cents: number[] = [];
  for (const value of before)
    for (const more of puts) {
      const after = put(shared, value, more, still);
      if (after === undefined) {
        next.push(-1);
        cents.push(0);
        continue;
      }
      // Once it is complete nothing is kept of it.
      const kept = last ? 0 : after;
      const found = at.get(kept) ?? at.size;
      at.set(kept, found);
      next.push(found);
      cents.push(paid(shared, value, after, last));
    }
  return { values: [...at.keys()], next, cents };
};
