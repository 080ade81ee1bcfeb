/** @module A set of parts of one kind brought within a limit of mass by lightening alone, or with others from stock. */

interface Lightened {
  /** Which parts make the set, by index, in order. */
  readonly taken: readonly number[];
  /** How much comes off each of these, in the same order. */
  readonly off: readonly number[];
  readonly total: number;
}

/** How much comes off each, where nothing can be added: all above the lightest and the limit. */
const offEach = (masses: readonly number[], limit: number): readonly number[] => {
  const most = Math.min(...masses) + limit;
  // What is left of binary sums is no mass.
  return masses.map((mass) => (mass - most > 1e-12 * most ? mass - most : 0));
};

/**
 * Least that must come off a set of parts for the heaviest to be within a limit of the lightest.
 *
 * Nothing can be put on, so the lightest stays as it is and all others come down to it and the limit. Where more parts
 * lie at hand than the set needs, those that need least off are taken; of as little, the set that keeps most of the
 * first parts.
 *
 * @param masses  of all parts at hand, g or any unit, those of the engine first
 * @param count   how many the set needs, 1 to as many as there are
 * @param limit   heaviest less lightest that is allowed, 0 and up
 * @returns the parts taken and what comes off each
 * @source  for each part as the lightest the next heavier ones are best: every such set is tried, so exact
 * @example leastLightening([500, 506, 502], 3, 2).total // 4
 */
export const leastLightening = (masses: readonly number[], count: number, limit: number): Lightened => {
  // Of parts of one mass those of the engine come first.
  const order = masses
    .map((_, index) => index)
    .toSorted((a, b) => (masses[a] ?? 0) - (masses[b] ?? 0) || a - b);
  let best: (Lightened & { readonly kept: number }) | undefined;
  for (const [at, lightest] of order.entries()) {
    const above = order.slice(at + 1);
    if (above.length < count - 1) break;
    const floor = ((masses[lightest] ?? 0) + limit) * (1 + 1e-12);
    // Parts within the limit cost nothing, whichever are taken: those of the engine first, then the lightest beyond.
    const free = above.filter((index) => (masses[index] ?? 0) <= floor).toSorted((a, b) => a - b);
    const beyond = above.filter((index) => (masses[index] ?? 0) > floor);
    const taken = [lightest, ...[...free, ...beyond].slice(0, count - 1)].toSorted((a, b) => a - b);
    const off = offEach(
      taken.map((index) => masses[index] ?? 0),
      limit,
    );
    const total = off.reduce((sum, each) => sum + each, 0);
    const kept = taken.filter((index) => index < count).length;
    const slack = 1e-12 * floor;
    if (best === undefined || total < best.total - slack || (total <= best.total + slack && kept > best.kept))
      best = { taken, off, total, kept };
  }
  return best ?? { taken: [], off: [], total: 0 };
};
