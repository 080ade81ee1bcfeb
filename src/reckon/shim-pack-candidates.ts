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

/** Beyond these a window is too wide, or a box too varied, to be searched wholly. */
const mostCandidates = 4_000;
const mostLooks = 300_000;

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
  /** False when there are more than were looked for. */
  readonly whole: boolean;
  /** Shims laid on in looking for them. */
  readonly looks: number;
}

/**
 * The packs of at most `mostShims` whose error lies from `least` to `greatest`; the empty pack is one.
 *
 * @internal
 */
export const packsWithin = (box: Box, needed: number, least: number, greatest: number): CandidateList => {
  const { thicknesses, counts, mostShims } = box;
  const lowest = needed + least;
  const highest = needed + greatest;
  const used = counts.map(() => 0);
  const pack: number[] = [];
  const found: Candidate[] = [];
  let looks = 0;
  const walk = (from: number, sum: number): boolean => {
    if (sum >= lowest && sum <= highest) {
      if (found.length === mostCandidates) return false;
      found.push({ shims: [...pack], error: sum - needed });
    }
    const left = mostShims - pack.length;
    if (left === 0) return true;
    for (let index = firstAtMost(thicknesses, highest - sum, from); index < thicknesses.length; index += 1) {
      const thickness = thicknesses[index] ?? 0;
      if (sum + left * thickness < lowest) return true;
      const taken = used[index] ?? 0;
      if (taken === counts[index]) continue;
      looks += 1;
      if (looks > mostLooks) return false;
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
  return { packs: found, whole, looks };
};

/** The fewest shims that make each sum from nothing up to `highest`; more than may go in a pack where none do. */
const fewestFor = ({ thicknesses, counts, mostShims }: Box, highest: number): Uint8Array => {
  const fewest = new Uint8Array(highest + 1).fill(mostShims + 1);
  fewest[0] = 0;
  thicknesses.forEach((thickness, at) => {
    // A shim at a time and from above, so that none is taken twice.
    for (let shim = Math.min(counts[at] ?? 0, mostShims); shim > 0; shim -= 1) {
      for (let sum = highest; sum >= thickness; sum -= 1) {
        const more = (fewest[sum - thickness] ?? 0) + 1;
        if (more < (fewest[sum] ?? 0)) fewest[sum] = more;
      }
    }
  });
  return fewest;
};

/**
 * For each need the smallest error, without its sign, of any pack if that pump had the box to itself.
 *
 * @internal
 */
export const nearestErrors = (box: Box, needs: readonly number[]): readonly number[] => {
  const deepest = Math.max(...needs);
  const fewest = fewestFor(box, deepest + (box.thicknesses[0] ?? 0));
  return needs.map((needed) => {
    // The empty pack ends the search at the latest.
    for (let error = 0; ; error += 1) {
      const [under, over] = [fewest[needed - error], fewest[needed + error]];
      if ((under ?? Infinity) <= box.mostShims || (over ?? Infinity) <= box.mostShims) return error;
    }
  });
};
