/** @module The best set of packs, rank by rank: greatest error, spread, number of shims, sum of errors. */
import { type Box, type Candidate, nearestErrors, packsWithin } from './shim-pack-candidates.ts';
import { shareOut } from './shim-pack-search.ts';
import { type Effort, sharingOf } from './shim-pack-sharing.ts';

export type Rank = 'greatest error' | 'spread' | 'number of shims' | 'sum of errors';

export interface BestPacks {
  /** One for each need, in the order of the needs. */
  readonly packs: readonly Candidate[];
  /** No set of packs has a smaller greatest error; equal to the greatest error where that is proved. */
  readonly errorBound: number;
  /** The greatest error if every pump had the whole box to itself. */
  readonly errorAlone: number;
  /** Ranks of which it is not certain that they are the best. */
  readonly unproved: readonly Rank[];
}

type Packs = readonly Candidate[];

interface Window {
  readonly lists: readonly Packs[];
  /** Whether the lists hold every pack of the window. */
  readonly whole: boolean;
}

interface Outcome {
  /** Missing when none was found. */
  readonly packs?: Packs;
  readonly proved: boolean;
}

const distanceOf = ({ error }: Candidate): number => Math.abs(error);
const sizeOf = ({ shims }: Candidate): number => shims.length;
const total = (packs: Packs, of: (pack: Candidate) => number): number =>
  packs.reduce((sum, pack) => sum + of(pack), 0);
const greatest = (packs: Packs, of: (pack: Candidate) => number): number =>
  packs.reduce((most, pack) => Math.max(most, of(pack)), Number.NEGATIVE_INFINITY);
const highestOf = (packs: Packs): number => greatest(packs, ({ error }) => error);
const lowestOf = (packs: Packs): number => -greatest(packs, ({ error }) => -error);
const inOrder = (values: Iterable<number>): readonly number[] =>
  [...new Set(values)].sort((one, other) => one - other);

const within = ({ lists, whole }: Window, least: number, most: number): Window => ({
  lists: lists.map((list) => list.filter(({ error }) => error >= least && error <= most)),
  whole,
});

/** Shares a box out among the needs, again and again, out of one purse of effort. */
const sharer =
  (box: Box, needs: readonly number[], purse: { left: number; readonly limit: number }) =>
  (window: Window, below: number, costOf: (pack: Candidate) => number, mostInAll?: number): Outcome => {
    if (window.lists.some((list) => list.length === 0)) return { proved: window.whole };
    const sharing = sharingOf(box, needs, window.lists, costOf, mostInAll);
    // No question may eat up the purse; one that comes late still gets a look.
    const effort: Effort = { spent: 0, limit: Math.max(purse.left / 4, purse.limit / 100) };
    const found = shareOut(sharing, below, effort);
    purse.left = Math.max(0, purse.left - effort.spent);
    const packs = found.picks?.flatMap((at, pump) => sharing.candidates[pump]?.[at] ?? []);
    return { ...(packs ? { packs } : {}), proved: found.proved && window.whole };
  };

/**
 * The first of rising levels at which the pumps can be served, by halving.
 *
 * @param known  what serves them at the last level
 */
const firstServed = (levels: readonly number[], known: Packs, serve: (level: number) => Outcome) => {
  let low = 0;
  let high = levels.length - 1;
  let packs = known;
  let sureNone = -1;
  while (low < high) {
    const middle = (low + high) >> 1;
    const outcome = serve(levels[middle] ?? 0);
    if (outcome.packs) {
      packs = outcome.packs;
      high = middle;
    } else {
      if (outcome.proved) sureNone = middle;
      low = middle + 1;
    }
  }
  return { level: levels[high] ?? 0, packs, bound: levels[sureNone + 1] ?? 0, proved: sureNone === high - 1 };
};

/**
 * The best packs by one rank after another: greatest error, spread, shims in all, sum of errors.
 * @internal
 */
const ranked = (box: Box, needs: readonly number[], limit: number): BestPacks => {
  const purse = { left: limit, limit };
  const share = sharer(box, needs, purse);
  const any = (window: Window): Outcome => share(window, 1, () => 0);
  const reaching = (reach: number): Window => {
    const lists = needs.map((needed) => packsWithin(box, needed, -reach, reach));
    purse.left = Math.max(0, purse.left - lists.reduce((sum, { looks }) => sum + looks, 0));
    return { lists: lists.map(({ packs }) => packs), whole: lists.every(({ whole }) => whole) };
  };

  // First rank: the smallest reach at which every pump can be served. Empty packs serve them at the last.
  const errorAlone = Math.max(...nearestErrors(box, needs));
  let window = reaching(errorAlone);
  let outcome = any(window);
  let tooShort = errorAlone - 1;
  for (let step = 1; outcome.packs === undefined; step *= 2) {
    if (outcome.proved) tooShort = errorAlone + (step >> 1);
    const wider = reaching(errorAlone + step);
    const more = wider.lists.some((list, pump) => list.length !== window.lists[pump]?.length);
    if (more || !wider.whole) outcome = any(wider);
    window = wider;
  }
  const served = outcome.packs;
  const reaches = inOrder(
    window.lists
      .flatMap((list) => list.map(distanceOf))
      .filter((reach) => reach > tooShort && reach <= greatest(served, distanceOf)),
  );
  const first = firstServed(reaches, served, (reach) => any(within(window, -reach, reach)));
  const reach = first.level;

  // Second rank: one end of the narrowest window is the greatest error itself, on one side or the other.
  const inReach = within(window, -reach, reach);
  const errors = inOrder(inReach.lists.flatMap((list) => list.map(({ error }) => error)));
  const thin = firstServed(
    errors.filter((error) => error <= highestOf(first.packs)),
    first.packs,
    (error) => any(within(inReach, -reach, error)),
  );
  const thick = firstServed(
    errors
      .filter((error) => error >= lowestOf(first.packs))
      .map((error) => -error)
      .reverse(),
    first.packs,
    (error) => any(within(inReach, -error, reach)),
  );
  const spread = reach + Math.min(thin.level, thick.level);
  const windows = [
    { side: thin, window: within(inReach, -reach, thin.level) },
    { side: thick, window: within(inReach, -thick.level, reach) },
  ].filter(({ side }) => reach + side.level === spread);

  // Third and fourth rank, in both windows where they are equally narrow.
  let packs = windows[0]?.side.packs ?? first.packs;
  const unproved = new Set<Rank>();
  if (!first.proved) unproved.add('greatest error');
  if (!thin.proved || !thick.proved) unproved.add('spread');
  for (const { window: narrow } of windows) {
    const fewer = share(narrow, total(packs, sizeOf), sizeOf);
    packs = fewer.packs ?? packs;
    if (!fewer.proved) unproved.add('number of shims');
  }
  for (const { window: narrow } of windows) {
    const nearer = share(narrow, total(packs, distanceOf), distanceOf, total(packs, sizeOf));
    packs = nearer.packs ?? packs;
    if (!nearer.proved) unproved.add('sum of errors');
  }
  return { packs, errorBound: first.bound, errorAlone, unproved: [...unproved] };
};

const commonMeasure = (one: number, other: number): number =>
  other === 0 ? one : commonMeasure(other, one % other);

/**
 * The best packs for needs and a box given in whole steps.
 *
 * Reckons in the coarsest step in which every need and thickness is whole, so that a box in twentieths of a
 * millimetre is not searched micrometre by micrometre.
 *
 * @internal
 */
export const bestPacks = (box: Box, needs: readonly number[], limit: number): BestPacks => {
  const step = [...needs, ...box.thicknesses].reduce(commonMeasure, 0) || 1;
  const thicknesses = box.thicknesses.map((thickness) => thickness / step);
  const best = ranked(
    { ...box, thicknesses },
    needs.map((needed) => needed / step),
    limit,
  );
  return {
    ...best,
    packs: best.packs.map(({ shims, error }) => ({ shims, error: error * step })),
    errorBound: best.errorBound * step,
    errorAlone: best.errorAlone * step,
  };
};
