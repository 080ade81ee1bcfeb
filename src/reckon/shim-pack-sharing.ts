/** @module The question of sharing a box out among pumps, cut down to the thicknesses of which there are too few. */
import type { Box, Candidate } from './shim-pack-candidates.ts';

/** One thing that a pump may take. */
export interface Choice {
  /** What it uses: places in the list of stocks, each once, and how many of each. */
  readonly stocks: readonly number[];
  readonly amounts: readonly number[];
  /** A whole number, 0 or more. */
  readonly cost: number;
}

export interface Sharing {
  readonly stock: readonly number[];
  /** What one of each stock is worth to begin with, at most 1: its thickness as a part of the thickest. */
  readonly worth: readonly number[];
  /** For each pump what it may take. Pumps of equal `likeness` have the same choices in the same order. */
  readonly pumps: readonly (readonly Choice[])[];
  readonly likeness: readonly number[];
}

/** A pump still to be served: its place among all pumps, and the places of the choices still open to it. */
export interface Open {
  readonly pump: number;
  readonly choices: readonly number[];
}

/** Work done and allowed, counted in choices looked at: the same on every machine. */
export interface Effort {
  spent: number;
  readonly limit: number;
}

interface Entry {
  readonly candidate: Candidate;
  /** How many of each thickness, by its place in the box. */
  readonly use: ReadonlyMap<number, number>;
  readonly cost: number;
}

export interface PackSharing extends Sharing {
  /** The candidates behind the choices, in the same order. */
  readonly candidates: readonly (readonly Candidate[])[];
}

const useOf = ({ shims }: Candidate): ReadonlyMap<number, number> => {
  const use = new Map<number, number>();
  for (const shim of shims) use.set(shim, (use.get(shim) ?? 0) + 1);
  return use;
};

/** Thicknesses that the pumps could together ask for more often than the box holds them. */
const scarceIn = (box: Box, pumps: readonly (readonly Entry[])[]): readonly number[] => {
  const asked = box.counts.map(() => 0);
  for (const entries of pumps) {
    const most = box.counts.map(() => 0);
    for (const { use } of entries) {
      for (const [shim, amount] of use) most[shim] = Math.max(most[shim] ?? 0, amount);
    }
    most.forEach((amount, shim) => {
      asked[shim] = (asked[shim] ?? 0) + amount;
    });
  }
  return box.counts.flatMap((count, shim) => ((asked[shim] ?? 0) > count ? [shim] : []));
};

/** Comparing each with each is left alone where it would take longer than it saves. */
const mostCompared = 800;

/** Leaves out every candidate that costs no less and uses no less of anything scarce than another. */
const unbeaten = (
  entries: readonly Entry[],
  scarce: ReadonlySet<number>,
  sizeCounts: boolean,
): readonly Entry[] => {
  if (entries.length > mostCompared) return entries;
  const size = (entry: Entry): number => entry.candidate.shims.length;
  const inTurn = entries
    .map((entry, at) => ({ entry, at }))
    .sort(
      (one, other) =>
        one.entry.cost - other.entry.cost ||
        size(one.entry) - size(other.entry) ||
        Math.abs(one.entry.candidate.error) - Math.abs(other.entry.candidate.error) ||
        one.at - other.at,
    );
  const kept: {
    readonly entry: Entry;
    readonly use: readonly (readonly [shim: number, amount: number])[];
  }[] = [];
  for (const { entry } of inTurn) {
    const beaten = kept.some(
      (better) =>
        (!sizeCounts || size(better.entry) <= size(entry)) &&
        better.use.every(([shim, amount]) => amount <= (entry.use.get(shim) ?? 0)),
    );
    if (!beaten) kept.push({ entry, use: [...entry.use].filter(([shim]) => scarce.has(shim)) });
  }
  return kept.map(({ entry }) => entry);
};

/**
 * The question in its smallest form.
 *
 * @internal
 * @param mostInAll  when given, all packs together may hold at most so many shims
 */
export const sharingOf = (
  box: Box,
  needs: readonly number[],
  lists: readonly (readonly Candidate[])[],
  costOf: (candidate: Candidate) => number,
  mostInAll?: number,
): PackSharing => {
  const sizeCounts = mostInAll !== undefined;
  let pumps: readonly (readonly Entry[])[] = lists.map((list) =>
    list.map((candidate) => ({ candidate, use: useOf(candidate), cost: costOf(candidate) })),
  );
  let scarce = scarceIn(box, pumps);
  for (;;) {
    const stillScarce = scarce;
    pumps = pumps.map((entries) => unbeaten(entries, new Set(stillScarce), sizeCounts));
    scarce = scarceIn(box, pumps);
    if (scarce.length === stillScarce.length) break;
  }
  const choiceOf = ({ candidate, use, cost }: Entry): Choice => {
    const used = scarce.flatMap((shim, stock) => {
      const amount = use.get(shim);
      return amount === undefined ? [] : [{ stock, amount }];
    });
    if (sizeCounts) used.push({ stock: scarce.length, amount: candidate.shims.length });
    return { stocks: used.map(({ stock }) => stock), amounts: used.map(({ amount }) => amount), cost };
  };
  return {
    stock: [...scarce.map((shim) => box.counts[shim] ?? 0), ...(sizeCounts ? [mostInAll] : [])],
    worth: [
      ...scarce.map((shim) => (box.thicknesses[shim] ?? 0) / (box.thicknesses[0] ?? 1)),
      ...(sizeCounts ? [0] : []),
    ],
    pumps: pumps.map((entries) => entries.map(choiceOf)),
    likeness: needs.map((needed) => needs.indexOf(needed)),
    candidates: pumps.map((entries) => entries.map(({ candidate }) => candidate)),
  };
};
