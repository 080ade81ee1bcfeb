/** @module Things used by options of many slots of which some exclude others: those that hang together are kept as one. */
import type { Choice, Mark, Problem, Rivals } from './problem.ts';
import { roots } from './roots.ts';

/** What a choice takes, and what its own excludes. */
const markOf = (takes: bigint, bars: readonly bigint[]): Mark => ({
  takes,
  bars: bars.reduce((all, each, bit) => ((takes >> BigInt(bit)) & 1n ? all | each : all), 0n),
});

/** @param members  things that hang together */
const rivalsOf = (
  members: readonly number[],
  pairs: readonly (readonly [number, number])[],
  users: readonly ReadonlySet<number>[],
  at: readonly number[],
  slots: Problem['slots'],
): Rivals => {
  const bitOf = new Map(members.map((member, index) => [member, 1n << BigInt(index)]));
  const bars = members.map((member) =>
    pairs.reduce((all, [one, other]) => {
      const rival = one === member ? other : other === member ? one : undefined;
      return rival === undefined ? all : all | (bitOf.get(rival) ?? 0n);
    }, 0n),
  );
  const taken = new Map<number, bigint>();
  for (const member of members)
    for (const option of users[member] ?? [])
      taken.set(option, (taken.get(option) ?? 0n) | (bitOf.get(member) ?? 0n));
  const takes = [...new Set([0n, ...taken.values()])];
  const numberOf = new Map(takes.map((each, index) => [each, index]));
  const put = ({ option }: Choice): number => numberOf.get(taken.get(option) ?? 0n) ?? 0;
  const touched = new Set([...taken.keys()].map((option) => at[option] ?? -1));
  return {
    kind: 'rivals',
    marks: takes.map((each) => markOf(each, bars)),
    from: new Map([...touched].map((slot) => [slot, (slots[slot] ?? []).map(put)])),
  };
};

/**
 * @param pairs  things of which not both are used
 * @param users  options that use each thing
 * @param at     slot of each option
 */
export const rivalsAmong = (
  pairs: readonly (readonly [number, number])[],
  users: readonly ReadonlySet<number>[],
  at: readonly number[],
  slots: Problem['slots'],
): readonly Rivals[] => {
  const root = roots(users.length, pairs);
  const pairsBy = Map.groupBy(pairs, ([one]) => root[one] ?? one);
  return [...pairsBy].map(([name, own]) =>
    rivalsOf(
      [...users.keys()].filter((thing) => root[thing] === name),
      own,
      users,
      at,
      slots,
    ),
  );
};
