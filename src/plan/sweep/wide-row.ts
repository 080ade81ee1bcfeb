/** @module Rows over two or more slots: what no slot can choose under them, and what is left of them then. */
import type { Choice, Pair, Summed } from './problem.ts';
import { type Bounded, type BySlot, holds } from './read-row.ts';

export interface WideRow extends Bounded {
  readonly bySlot: BySlot;
}

const factorOf =
  (factors: ReadonlyMap<number, number> | undefined) =>
  ({ option }: Choice): number =>
    factors?.get(option) ?? 0;

interface Reach {
  readonly least: number;
  readonly greatest: number;
}

const reachOf = (own: readonly Choice[], factors: ReadonlyMap<number, number>): Reach => {
  const of = factorOf(factors);
  return own.reduce(
    ({ least, greatest }, choice) => ({
      least: Math.min(least, of(choice)),
      greatest: Math.max(greatest, of(choice)),
    }),
    { least: Number.POSITIVE_INFINITY, greatest: Number.NEGATIVE_INFINITY },
  );
};

/** Whether a row can be kept when all that it sums lies in a reach. */
const canHold = ({ least, greatest }: Reach, { relation, bound }: Bounded): boolean =>
  (relation === '>=' || holds(least, { relation: '<=', bound })) &&
  (relation === '<=' || holds(greatest, { relation: '>=', bound }));

const mustHold = ({ least, greatest }: Reach, row: Bounded): boolean =>
  holds(least, row) && holds(greatest, row);

/** Choices with which the row can still be kept, whatever else is chosen. */
export const withinRow = (
  slots: readonly (readonly Choice[])[],
  row: WideRow,
): readonly (readonly Choice[])[] => {
  const reaches = [...row.bySlot].map(([slot, factors]) => reachOf(slots[slot] ?? [], factors));
  const least = reaches.reduce((sum, reach) => sum + reach.least, 0);
  const greatest = reaches.reduce((sum, reach) => sum + reach.greatest, 0);
  if (mustHold({ least, greatest }, row)) return slots;
  const narrowed = [...slots];
  for (const [index, [slot, factors]] of [...row.bySlot].entries()) {
    const { least: own = 0, greatest: most = 0 } = reaches[index] ?? {};
    const of = factorOf(factors);
    narrowed[slot] = (slots[slot] ?? []).filter((choice) =>
      canHold({ least: least - own + of(choice), greatest: greatest - most + of(choice) }, row),
    );
  }
  return narrowed;
};

const pairOf = (
  row: Bounded,
  [a, fromA]: readonly [number, readonly number[]],
  [b, fromB]: readonly [number, readonly number[]],
  known: Map<string, Pair>,
): void => {
  const [first, second, one, other] = a < b ? [a, b, fromA, fromB] : [b, a, fromB, fromA];
  const name = `${first} ${second}`;
  const pair = known.get(name) ?? {
    first,
    second,
    allows: new Uint8Array(one.length * other.length).fill(1),
  };
  known.set(name, pair);
  for (const [i, left] of one.entries())
    for (const [j, right] of other.entries())
      if (!holds(left + right, row)) pair.allows[i * other.length + j] = 0;
};

/**
 * What two slots rule out for each other, and what more than two sum up to; rows that are kept anyway are gone.
 *
 * @returns 'impossible' where a row is lost whatever is chosen: what is left of its slots may put nothing into it at all
 */
export const wideRows = (
  slots: readonly (readonly Choice[])[],
  rows: readonly WideRow[],
): { readonly pairs: readonly Pair[]; readonly sums: readonly Summed[] } | 'impossible' => {
  const pairs = new Map<string, Pair>();
  const sums: Summed[] = [];
  for (const row of rows) {
    const from = [...row.bySlot]
      .map(([slot, factors]) => [slot, (slots[slot] ?? []).map(factorOf(factors))] as const)
      .filter(([, puts]) => puts.some((put) => put !== 0));
    const reaches = from.map(([, puts]) => ({ least: Math.min(...puts), greatest: Math.max(...puts) }));
    const reach = {
      least: reaches.reduce((sum, { least }) => sum + least, 0),
      greatest: reaches.reduce((sum, { greatest }) => sum + greatest, 0),
    };
    if (!canHold(reach, row)) return 'impossible';
    if (mustHold(reach, row)) continue;
    const [first, second] = from;
    if (from.length === 2 && first && second) pairOf(row, first, second, pairs);
    else sums.push({ kind: 'sum', from: new Map(from), cents: [], relation: row.relation, bound: row.bound });
  }
  return { pairs: [...pairs.values()], sums };
};
