/** @module Whether what a gauge shows has come to rest: three readings in a row. */

/** What was read, and when. */
export interface TimedValue {
  /** Minutes from any beginning. */
  readonly minute: number;
  readonly value: number;
}

/** How the last readings lie together. */
export interface Rest {
  /** How many of the three are there, each far enough from the next: 0 to 3. */
  readonly counted: number;
  /** Between the least and the greatest from the first of them on, in the unit of the values; 0 where there is none. */
  readonly spread: number;
}

const wanted = 3;

/**
 * How the last three readings in a row lie together. They are counted back from the last one, each at least so
 * many minutes before the one after it; what was read in between must lie with them.
 *
 * @param readings  in the order of their minutes; any number, none too
 * @param apart  minutes from one that counts to the next, at least, 0 and up
 * @returns how many of the three there are, and their spread in the unit of the values
 * @source  three steady temperatures before figures are written down: start-up reports asked for by Unified Facilities
 *          Guide Specifications; how far apart in time is the manual's to say
 * @example restOf([{ minute: 0, value: 70 }, { minute: 10, value: 78 }, { minute: 20, value: 80 }, { minute: 30, value: 81 }], 10) // { counted: 3, spread: 3 }
 */
export const restOf = (readings: readonly TimedValue[], apart: number): Rest => {
  let counted = 0;
  let from = readings.length;
  let next = Infinity;
  for (let at = readings.length - 1; at >= 0 && counted < wanted; at -= 1) {
    const minute = readings[at]?.minute ?? 0;
    if (next - minute < apart) continue;
    counted += 1;
    from = at;
    next = minute;
  }
  const values = readings.slice(from).map(({ value }) => value);
  return { counted, spread: values.length === 0 ? 0 : Math.max(...values) - Math.min(...values) };
};
