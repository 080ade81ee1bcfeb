/** @module End float from a dial gauge: the crankshaft pushed one way and the other, some times over. */
import { meanAndDeviation, pooledDeviation } from '../measure/mean-and-deviation.ts';
import { startingFreedom } from '../measure/size.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { combine, type Uncertain, uncertain } from '../quantity/uncertain.ts';
import { lengthTable } from './length-list.ts';

/** What the dial showed with the shaft pushed one way, and then the other, mm. */
type Push = readonly [one: number, other: number];

interface Dial {
  /** Maximum permissible error over the travel, plus or minus, mm. */
  readonly error: number;
  /** One step of the scale, mm. */
  readonly step: number;
  /** Standard deviation of one float as known before, mm; 0 where it is not. */
  readonly repeatability: number;
}

/** More than this is no float of a shaft between thrust faces. */
const most = 25;

/**
 * End float: the mean travel between the two readings of each pushing.
 *
 * u² = (error / √3)² + 2 (step / 2√3)² + s² / n. Both readings of a float are rounded to the scale; repeats that fall
 * on the same line do not take that out.
 *
 * @param pushes  both readings of each, mm, one pushing at least
 * @param dial    its figures, mm
 * @returns mm, never less than 0
 * @source  JCGM 100:2008, 4.2.3 (mean), 4.3.7 and F.2.2.1 (scale), H.1 (a difference of two readings)
 * @example endFloatOf([[0.02, 0.31], [0.01, 0.32]], { error: 0, step: 0, repeatability: 0 }).value // 0.3
 */
export const endFloatOf = (pushes: readonly Push[], dial: Dial): Uncertain => {
  const found = meanAndDeviation(pushes.map(([one, other]) => Math.abs(other - one)));
  const known = { deviation: dial.repeatability, freedom: dial.repeatability > 0 ? startingFreedom : 0 };
  const { deviation, freedom } = pooledDeviation([known, found]);
  return combine(
    [
      [1, uncertain(0, 'dial', dial.error / Math.sqrt(3))],
      [1, uncertain(0, 'repeats', deviation / Math.sqrt(pushes.length), freedom)],
      [1, uncertain(0, 'scale', dial.step / Math.sqrt(6))],
    ],
    found.mean,
  );
};

/**
 * Readings as they are written: those of one pushing parted by a comma, pushings by semicolons.
 *
 * @internal
 */
export const pushesOf = (key: string, text: string): Answer<readonly Push[]> => {
  const table = lengthTable(key, text);
  if (table.kind === 'refused') return table;
  const pushes: Push[] = [];
  for (const [at, row] of table.value.entries()) {
    const [one, other, third] = row;
    if (one === undefined || other === undefined || third !== undefined)
      return refuse(
        `pushing ${at + 1} has ${row.length} reading${row.length === 1 ? '' : 's'}`,
        key,
        'give two for each: pushed one way, pushed the other: 0.02, 0.31; 0.01, 0.31 mm',
      );
    if (Math.abs(other - one) > most)
      return refuse(
        `a float of ${Math.abs(other - one)} mm is out of range`,
        key,
        'check the readings and their unit',
      );
    pushes.push([one, other]);
  }
  return answer(pushes);
};
