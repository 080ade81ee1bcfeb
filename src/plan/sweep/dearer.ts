/** @module States that are dearer than another even if that one paid their set-ups too: none of them leads to the best. */
import type { Step } from './steps.ts';

/** One alone is not compared. */
const worthComparing = 2;

interface States {
  readonly keys: readonly number[];
  readonly cents: readonly number[];
}

/** The state as if no set-up were paid. */
const unpaid = (key: number, paid: Step['paid']): number =>
  paid.reduce((rest, { weight }) => rest - (Math.floor(key / weight) % 2) * weight, key);

/** What is paid in one state and not in another. */
const lacking = (key: number, other: number, paid: Step['paid']): number =>
  paid.reduce(
    (sum, { weight, cents }) =>
      sum + (Math.floor(key / weight) % 2 === 1 && Math.floor(other / weight) % 2 === 0 ? cents : 0),
    0,
  );

/**
 * States that may lead to the best: dropped is what costs more than the cheapest that is alike but for set-ups, with
 * the set-ups that it lacks added. Whatever follows costs that one no more, so that nothing of equal cost is lost.
 *
 * @returns indices, in order
 */
export const worthFollowing = ({ keys, cents }: States, { paid }: Step): readonly number[] => {
  const all = [...keys.keys()];
  if (paid.length === 0 || keys.length < worthComparing || paid.some((each) => each.cents < 0)) return all;
  const cheapest = new Map<number, number>();
  const alike = keys.map((key) => unpaid(key, paid));
  for (const state of all) {
    const name = alike[state] ?? 0;
    const best = cheapest.get(name);
    if (best === undefined || (cents[state] ?? 0) < (cents[best] ?? 0)) cheapest.set(name, state);
  }
  return all.filter((state) => {
    const best = cheapest.get(alike[state] ?? 0) ?? state;
    const other = (cents[best] ?? 0) + lacking(keys[state] ?? 0, keys[best] ?? 0, paid);
    return (cents[state] ?? 0) <= other;
  });
};
