/** @module Stand-out of the pistons as given to a sum: a row for each cylinder, its readings in the row. */
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { combine, type Uncertain, uncertain } from '../quantity/uncertain.ts';
import { lengthTable } from './length-list.ts';

export interface StandOut {
  /** The highest reading of each cylinder: what comes nearest to the head. */
  readonly greatest: readonly Uncertain[];
  /** Greatest less least reading in each cylinder: how far the piston leans. */
  readonly leans: readonly number[];
}

/**
 * Readings of each cylinder, the highest of which counts; one that leans is read on the thrust and on the pin side.
 *
 * @internal
 */
export const standOutOf = (key: string, text: string, own: number): Answer<StandOut> => {
  const table = lengthTable(key, text);
  if (table.kind === 'refused') return table;
  const far = table.value.flat().find((height) => Math.abs(height) > 20);
  if (far !== undefined)
    return refuse(
      `${far} mm is no stand-out of a piston`,
      key,
      'give how far it stands above the block face; below is minus',
    );
  return answer({
    greatest: table.value.map((row, cylinder) =>
      uncertain(Math.max(...row), `stand-out ${cylinder + 1}`, own),
    ),
    leans: table.value.map((row) => Math.max(...row) - Math.min(...row)),
  });
};

/**
 * Bump clearance of one cylinder.
 *
 * @param gasket    thickness when compressed, mm
 * @param recess    of the head above its face over the piston, mm, 0 for a flat one
 * @param standOut  highest reading of the piston above the block face, mm; below it minus
 * @returns mm; minus where the piston would strike
 * @source  distances along the cylinder; TM 10-4320-310-14, p 5-22, the same turned round
 * @example bumpClearance(certain(1.3), certain(0), certain(0.6)) // 0.7 mm
 */
export const bumpClearance = (gasket: Uncertain, recess: Uncertain, standOut: Uncertain): Uncertain =>
  combine([
    [1, gasket],
    [1, recess],
    [-1, standOut],
  ]);
