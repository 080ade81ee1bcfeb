/** @module The packs that can be made from a box for one pump, within a window of errors. */

/** The box with its thicknesses as whole steps, thickest first, each thickness once. */
export interface Box {
  readonly thicknesses: readonly number[];
  readonly counts: readonly number[];
  readonly mostShims: number;
}

export interface Candidate {
  /** Places in the box's list of thicknesses, thickest first, one for each shim. */
  readonly shims: readonly number[];
  /** Fitted less needed, in steps. */
  readonly error: number;
}

/** First place in a list that falls, at which it stands at or below `ceiling`. */
const firstAtMost = (falling: readonly number[], ceiling: number, from: number): number => {
  let low = from;
  let high = falling.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((falling[middle] ?? 0) > ceiling) low = middle + 1;
    else high = middle;
  }
  return low;
};

export interface CandidateList {
  readonly packs: readonly Candidate[];
  /** False when there were more than asked for. */
  readonly whole: boolean;
}

/**
 * The packs of at most `mostShims` whose error lies from `least` to `greatest`, `most` of them at most;
 * the empty pack is one.
 * @internal
 */
export const packsWithin = (
  box: Box,
  needed: number,
  least: number,
  greatest: number,
  most: number,
): CandidateList => {
  const { thicknesses, counts, mostShims } = box;
  const lowest = needed + least;
  const highest = needed + greatest;
  const used = counts.map(() => 0);
  const pack: number[] = [];
  const found: Candidate[] = [];
  const walk = (from: number, sum: number): boolean => {
    if (sum >= lowest && sum <= highest) {
      if (found.length === most) return false;
      found.push({ shims: [...pack], error: sum - needed });
    }
    const left = mostShims - pack.length;
    if (left === 0) return true;
    for (let index = firstAtMost(thicknesses, highest - sum, from); index < thicknesses.length; index += 1) {
      const thickness = thicknesses[index] ?? 0;
      if (sum + left * thickness < lowest) return true;
      const taken = used[index] ?? 0;
      if (taken === counts[index]) continue;
      used[index] = taken + 1;
      pack.push(index);
      const goesOn = walk(index, sum + thickness);
      pack.pop();
      used[index] = taken;
      if (!goesOn) return false;
    }
    return true;
  };
  const whole = walk(0, 0);
  return { packs: found, whole };
};

/**
 * The smallest error, without its sign, of any pack for this pump alone.
 * @internal
 */
export const nearestError = (box: Box, needed: number): number => {
  for (let reach = 1; ; reach *= 4) {
    // The empty pack ends the search at the latest when the window reaches down to nothing.
    const { packs } = packsWithin(box, needed, -reach, reach, Number.POSITIVE_INFINITY);
    if (packs.length > 0) return packs.reduce((best, { error }) => Math.min(best, Math.abs(error)), reach);
  }
};
