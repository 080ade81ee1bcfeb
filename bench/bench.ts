/** @module What a bench is: ours and something else on the same work, timed in turns in one run. */

export interface BenchRow {
  /** The work, in words: `plan, 12 components, 90 options`. */
  readonly what: string;
  /** What ours is held against: `glpsol on the same model`, or `one frame` for a goal. */
  readonly against: string;
  readonly unit: string;
  /** Ours and the other's figure, in the unit; less is better. */
  readonly ours: number;
  readonly other: number;
  /** Anything a reader must know to take the ratio rightly. */
  readonly note?: string;
}

/** What each `*.bench.ts` exports. */
export interface Bench {
  readonly name: string;
  readonly run: () => Promise<readonly BenchRow[]>;
}

export type Work = () => unknown;

const middle = (figures: readonly number[]): number => {
  const sorted = [...figures].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
};

const timed = async (work: Work): Promise<number> => {
  const start = performance.now();
  await work();
  return performance.now() - start;
};

/**
 * Times two ways of doing the same work in turns, so that a busy machine slows both alike.
 * @returns the median of each, in milliseconds; the first round, which warms up, is not counted
 */
export const inTurns = async (
  ours: Work,
  other: Work,
  rounds = 11,
): Promise<{ ours: number; other: number }> => {
  const figures: { ours: number[]; other: number[] } = { ours: [], other: [] };
  for (let round = 0; round <= rounds; round += 1) {
    const pair = { ours: await timed(ours), other: await timed(other) };
    if (round === 0) continue;
    figures.ours.push(pair.ours);
    figures.other.push(pair.other);
  }
  return { ours: middle(figures.ours), other: middle(figures.other) };
};
