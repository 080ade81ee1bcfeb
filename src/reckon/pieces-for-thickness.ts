/** @module Which pieces from stock come nearest to a thickness together: thrust washers, shims under a housing. */
import type { NamedSize } from './named-sizes.ts';

interface Counts {
  readonly least: number;
  readonly greatest: number;
}

/** Binary sums must not tell apart what is as near. */
const hair = 1e-9;

const totalOf = (pieces: readonly NamedSize[]): number =>
  pieces.reduce((sum, { size }) => sum + size.value, 0);

/** How unlike the pieces of a set are: a pair of washers had better be of one thickness. */
const unlike = (pieces: readonly NamedSize[]): number => {
  const sizes = pieces.map(({ size }) => size.value);
  return Math.max(...sizes) - Math.min(...sizes);
};

/** Of one thickness no more pieces are looked at than can go in: the rest would say the same again. */
const enoughOfEach = (stock: readonly NamedSize[], each: number): readonly NamedSize[] => {
  const seen = new Map<number, number>();
  return stock.filter(({ size }) => {
    const count = (seen.get(size.value) ?? 0) + 1;
    seen.set(size.value, count);
    return count <= each;
  });
};

/**
 * How many sets a search would look at.
 *
 * @param stock   pieces at hand
 * @param counts  how many go in, least and greatest
 * @returns the number of sets
 * @source  binomial coefficients
 * @example setsOf([], { least: 1, greatest: 2 }) // 0
 */
export const setsOf = (stock: readonly NamedSize[], { least, greatest }: Counts): number => {
  const pieces = enoughOfEach(stock, greatest).length;
  let sets = 0;
  let ways = 1;
  for (let count = 1; count <= greatest; count += 1) {
    ways = (ways * Math.max(0, pieces - count + 1)) / count;
    if (count >= least) sets += ways;
  }
  return sets;
};

/**
 * The set whose thickness lies nearest to what is wanted, each piece used once: every set is looked at.
 *
 * Of sets as near, that of fewer pieces is taken, then that whose pieces are most alike.
 *
 * @param stock   pieces at hand, thickness in mm; of as many sets as can be looked through, see setsOf
 * @param counts  how many go in, least (1 and up) and greatest
 * @param wanted  thickness of all together, mm
 * @returns the pieces; undefined where there are not enough
 * @source  none: it tries all; fewer pieces first: common practice, no source
 * @example piecesFor([{ name: 'A', size: certain(2.3) }, { name: 'B', size: certain(2.4) }], { least: 1, greatest: 1 }, 2.36)?.[0]?.name // 'B'
 */
export const piecesFor = (
  stock: readonly NamedSize[],
  { least, greatest }: Counts,
  wanted: number,
): readonly NamedSize[] | undefined => {
  const pieces = enoughOfEach(stock, greatest);
  let best: readonly NamedSize[] | undefined;
  let off = Infinity;
  const better = (set: readonly NamedSize[], away: number): boolean => {
    if (best === undefined || away < off - hair) return true;
    if (away > off + hair || set.length > best.length) return false;
    return set.length < best.length || unlike(set) < unlike(best) - hair;
  };
  const tryFrom = (start: number, set: readonly NamedSize[], left: number): void => {
    if (left === 0) {
      const away = Math.abs(totalOf(set) - wanted);
      if (better(set, away)) {
        best = set;
        off = Math.min(off, away);
      }
      return;
    }
    for (let at = start; at <= pieces.length - left; at += 1) {
      const piece = pieces[at];
      if (piece) tryFrom(at + 1, [...set, piece], left - 1);
    }
  };
  for (let count = least; count <= greatest; count += 1) tryFrom(0, [], count);
  return best;
};
