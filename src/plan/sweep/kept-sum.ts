/** @module What must be kept in mind of a sum, a count or a set-up while slots that put into it are still to come: what is in it so far. */

import type { Kept } from './kept.ts';
import type { Summed } from './problem.ts';
import { holds } from './read-row.ts';

const least = (puts: readonly number[]): number =>
  puts.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
const greatest = (puts: readonly number[]): number =>
  puts.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);

/** Steps between values far below any that matters are rubbed out, so that equal sums are one. */
const rounded = (value: number): number => Math.round(value * 1e7) / 1e7 || 0;

/** What can still come in: from, to. */
type Range = readonly [least: number, greatest: number];

/** Undefined where the rule is lost whatever comes; one and the same value where it is kept whatever comes. */
const clipped = (value: number, shared: Summed, [low, high]: Range): number | undefined => {
  const { relation, bound } = shared;
  if (relation !== '>=' && !holds(value + low, { relation: '<=', bound })) return undefined;
  if (relation !== '<=' && !holds(value + high, { relation: '>=', bound })) return undefined;
  if (relation === '<=') return rounded(Math.max(value, bound - high));
  return rounded(relation === '>=' ? Math.min(value, bound - low) : value);
};

const priceOf = ({ cents }: Summed, count: number): number => (count === 0 ? 0 : (cents[count] ?? 0));

/** The least count from which as many more cost the same, so that all counts past the last change of price are one. */
const leastAlike = (count: number, shared: Summed, still: number): number => {
  const more = (from: number, by: number): number => priceOf(shared, from + by) - priceOf(shared, from);
  for (let less = 0; less < count; less += 1) {
    let by = 1;
    while (by <= still && more(less, by) === more(count, by)) by += 1;
    if (by > still) return less;
  }
  return count;
};

const put = (shared: Summed, value: number, more: number, still: Range): number | undefined => {
  switch (shared.kind) {
    case 'set-up':
      return value === 1 || more > 0 ? 1 : 0;
    case 'count':
      return leastAlike(value + more, shared, still[1]);
    case 'sum':
      return clipped(value + more, shared, still);
    default:
      return shared.kind satisfies never;
  }
};

/** A choice pays at once for what it makes dearer or cheaper. */
const paid = (shared: Summed, before: number, more: number): number => {
  switch (shared.kind) {
    case 'set-up':
      return before === 0 && more > 0 ? (shared.cents[0] ?? 0) : 0;
    case 'count':
      return priceOf(shared, before + more) - priceOf(shared, before);
    case 'sum':
      return 0;
    default:
      return shared.kind satisfies never;
  }
};

/** @param before  values that may be in it so far */
export const keptSum =
  (shared: Summed, before: readonly number[] = [0]): Kept =>
  (slot, later) => {
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
        cents.push(paid(shared, value, more));
      }
    return { radix: at.size, next, cents, kept: keptSum(shared, [...at.keys()]) };
  };
