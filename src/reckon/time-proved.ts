/** @module The minutes of running that readings prove: a stretch that nobody looked at counts no longer than it may be. */

/**
 * The minutes that an engine is known to have run within its limits: from the beginning to the last reading, where no
 * stretch between two readings counts for more than they may lie apart.
 *
 * @param minutes  when each reading was taken, minutes from the beginning, in their order
 * @param every  minutes from one reading to the next, at most; where nothing is said each stretch counts whole
 * @returns minutes, 0 where nothing was read
 * @source  common practice, no source
 * @example timeProved([10, 20, 60], 15) // 35 min
 */
export const timeProved = (minutes: readonly number[], every = Infinity): number =>
  minutes.reduce((total, minute, at) => {
    const stretch = minute - (minutes[at - 1] ?? 0);
    return total + Math.max(0, Math.min(stretch, every));
  }, 0);
