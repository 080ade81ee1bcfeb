/** @module Mean and standard deviation of readings, and deviations of several groups pooled. */

export interface MeanAndDeviation {
  readonly mean: number;
  /** Experimental standard deviation; 0 of one reading. */
  readonly deviation: number;
  /** Degrees of freedom of the deviation: one less than there are readings. */
  readonly freedom: number;
}

/**
 * Mean and experimental standard deviation of repeats (Type A).
 *
 * Differences from the first reading are summed, since those are small and exact, and what the mean of them leaves
 * over is taken out of the squares.
 *
 * @param readings  in any one unit, at least one
 * @returns in that unit; a deviation of 0 with no degrees of freedom for one reading
 * @source  JCGM 100:2008, 4.2.1 and 4.2.2; the corrected two-pass sum of T. F. Chan, G. H. Golub and R. J. LeVeque (1983)
 * @example meanAndDeviation([10000001, 10000003, 10000002]).mean // 10000002
 */
export const meanAndDeviation = (readings: readonly number[]): MeanAndDeviation => {
  const count = readings.length;
  const from = readings[0];
  if (from === undefined) throw new RangeError('a mean needs at least one reading');
  let sum = 0;
  for (const reading of readings) sum += reading - from;
  const shift = sum / count;
  let squares = 0;
  let left = 0;
  for (const reading of readings) {
    const off = reading - from - shift;
    squares += off * off;
    left += off;
  }
  const freedom = count - 1;
  const variance = freedom === 0 ? 0 : Math.max(0, squares - (left * left) / count) / freedom;
  return { mean: from + (shift + left / count), deviation: Math.sqrt(variance), freedom };
};

/** A standard deviation with the degrees of freedom behind it. */
interface Deviation {
  readonly deviation: number;
  readonly freedom: number;
}

/**
 * Standard deviation of several groups of repeats together, each about its own mean.
 *
 * s² = Σ ν s² / Σ ν; groups of one reading have no degrees of freedom and count for nothing.
 *
 * @param groups  their deviations in one unit, with degrees of freedom
 * @returns in that unit; 0 with no degrees of freedom where no group has any
 * @source  JCGM 100:2008, 4.2.4 and H.5.2.3
 * @example pooledDeviation([{ deviation: 3, freedom: 1 }, { deviation: 4, freedom: 1 }]).deviation // 3.536
 */
export const pooledDeviation = (groups: readonly Deviation[]): Deviation => {
  let freedom = 0;
  let squares = 0;
  for (const group of groups) {
    freedom += group.freedom;
    squares += group.freedom * group.deviation * group.deviation;
  }
  return { deviation: freedom === 0 ? 0 : Math.sqrt(squares / freedom), freedom };
};
