/** @module What a machining step leaves over once the worst place has cleaned up, and the nearest step that cleans it. */

/** A shaft is machined smaller, a bore larger. */
export type Machined = 'shaft' | 'bore';

/** Lengths in mm, sizes on the diameter. */
export interface CleanUp {
  readonly machined: Machined;
  /** The worst place as measured: the least of a shaft, the greatest of a bore. */
  readonly size: number;
  /** Half the width of the interval that holds it, 0 and up. */
  readonly expanded: number;
  /** What must come off on the diameter before the worst place is clean, 0 and up. */
  readonly allowance: number;
  /** The finished size nearest to the metal: the greatest of a shaft, the least of a bore. */
  readonly finished: number;
}

/** Sums of decimals stray by a rounding of the machine; nobody grinds to a millionth of a micrometre. */
const rounding = 1e9;

/**
 * What a machining step leaves over at the worst place, its uncertain side and the clean-up allowance taken off.
 *
 * Shaft: size − expanded − allowance − finished; bore: finished − size − expanded − allowance.
 *
 * @param question  sizes on the diameter, mm; expanded uncertainty and allowance 0 and up
 * @returns mm on the diameter; 0 and up where the step cleans up, below 0 by how much it falls short
 * @source  TM 5-3805-262-34, p 4-24 (next listed step below the worst journal); the uncertain side is our own caution
 * @example leftOver({ machined: 'shaft', size: 54.931, expanded: 0.004, allowance: 0.05, finished: 54.74 }) // 0.137 mm
 */
export const leftOver = ({ machined, size, expanded, allowance, finished }: CleanUp): number => {
  const metal = machined === 'shaft' ? size - finished : finished - size;
  return Math.round((metal - expanded - allowance) * rounding) / rounding + 0;
};

/**
 * The nearest of the listed steps that cleans up, and what the last one falls short by where none does.
 *
 * Steps at which the part already stands, or which it has passed, leave less than nothing and are passed over.
 *
 * @param question  as for what is left over, without the finished size
 * @param steps     finished sizes, mm, in any order, at least one
 * @returns the step with what it leaves over, 0 and up; or none, with the furthest step and what it lacks, above 0
 * @source  TM 5-3805-262-34, p 4-24
 * @example nextStep({ machined: 'shaft', size: 54.931, expanded: 0.004, allowance: 0.05 }, [54.74, 54.49]) // { finished: 54.74, left: 0.137 }
 */
export const nextStep = (
  question: Omit<CleanUp, 'finished'>,
  steps: readonly number[],
):
  | { readonly finished: number; readonly left: number }
  | { readonly furthest: number; readonly short: number } => {
  const nearestFirst = [...steps].sort((a, b) => (question.machined === 'shaft' ? b - a : a - b));
  for (const finished of nearestFirst) {
    const left = leftOver({ ...question, finished });
    if (left >= 0) return { finished, left };
  }
  const furthest = nearestFirst.at(-1);
  if (furthest === undefined) throw new RangeError('there is no step to choose from');
  return { furthest, short: -leftOver({ ...question, finished: furthest }) };
};
