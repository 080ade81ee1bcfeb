/** @module Pistons, pins and rods put together so that the assemblies weigh as much alike as they can. */

/** Pins and pistons are paired in every way: 8! = 40,320. */
export const mostWithPins = 8;

const spreadOf = (masses: readonly number[]): number => Math.max(...masses) - Math.min(...masses);

/** Indices by mass, lightest first; of equal ones the earlier. */
const byMass = (masses: readonly number[]): readonly number[] =>
  masses.map((_, index) => index).toSorted((a, b) => (masses[a] ?? 0) - (masses[b] ?? 0) || a - b);

/**
 * Which of one kind goes with each of another: the heaviest with the lightest.
 *
 * Of all pairings this one has the heaviest pair lightest and the lightest pair heaviest, and least to come off: its
 * sums are majorized by those of every other.
 *
 * @param first   masses, any unit
 * @param second  masses, as many
 * @returns for each of the first the index of its partner
 * @source  Marshall and Olkin, Inequalities (1979), 6.A: x ordered up and y ordered down
 * @example heavyWithLight([500, 510], [900, 905]) // [1, 0]
 */
export const heavyWithLight = (first: readonly number[], second: readonly number[]): readonly number[] => {
  const partners = byMass(second).toReversed();
  const partnerOf: number[] = [];
  for (const [rank, index] of byMass(first).entries()) partnerOf[index] = partners[rank] ?? index;
  return partnerOf;
};

interface Together {
  /** For each first part the index of the second and of the third. */
  readonly second: readonly number[];
  readonly third: readonly number[];
  readonly spread: number;
}

/**
 * Pistons, pins and rods in the assemblies that are most even.
 *
 * @param first   masses, up to eight, any unit
 * @param second  masses, as many
 * @param third   masses, as many
 * @returns for each of the first its partners, and the spread of the assemblies; the least that there is
 * @source  every pairing of the first two; with each the third heaviest to lightest (Marshall and Olkin 1979, 6.A)
 * @example evenThree([500, 510], [100, 101], [900, 909]).spread // 0
 */
export const evenThree = (
  first: readonly number[],
  second: readonly number[],
  third: readonly number[],
): Together => {
  let best: Together | undefined;
  const partners: number[] = [];
  const used = new Set<number>();
  const place = (at: number): void => {
    if (at < first.length) {
      for (const index of second.keys()) {
        if (used.has(index)) continue;
        used.add(index);
        partners[at] = index;
        place(at + 1);
        used.delete(index);
      }
      return;
    }
    const pairs = first.map((mass, index) => mass + (second[partners[index] ?? 0] ?? 0));
    const last = heavyWithLight(pairs, third);
    const spread = spreadOf(pairs.map((mass, index) => mass + (third[last[index] ?? 0] ?? 0)));
    if (best === undefined || spread < best.spread - 1e-12 * Math.abs(pairs[0] ?? 0))
      best = { second: [...partners], third: last, spread };
  };
  place(0);
  return best ?? { second: [], third: [], spread: 0 };
};
