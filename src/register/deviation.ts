/** @module How far an instrument is off, from what it showed and the size of what it was held against. */

import { kindOf } from '../engine/instrument-kind.ts';
import type { Instrument } from '../measure/instrument.ts';
import { formatFigure } from '../quantity/figure.ts';
import { amountOf, type Typed } from '../quantity/typed.ts';
import { type Dimension, findUnit, stepToCore, unitsOf } from '../quantity/unit.ts';

interface Held {
  readonly size?: Typed;
  readonly showed: Typed;
}

/** A millionth of the core's unit: finer than anything is read to. */
const finest = 6;

/** Decimals that show the difference of two figures of one unit exactly; fractions of an inch and other units need more. */
const decimalsFor = (showed: Typed, size: Typed): number => {
  const steps = [showed, size].map(({ text }) => /[.,](\d+)$/.exec(text)?.[1]?.length ?? 0);
  return showed.unit !== size.unit || /[/e]/i.test(showed.text + size.text) ? finest : Math.max(...steps);
};

/**
 * How much too high it showed, in the unit it was read in; undefined where a figure cannot be read.
 *
 * @example deviationOf({ size: { text: '50.000', unit: 'mm' }, showed: { text: '50.002', unit: 'mm' } }, 'length')?.text // '0.002'
 */
export const deviationOf = ({ size, showed }: Held, dimension: Dimension): Typed | undefined => {
  const high = amountOf(showed, dimension);
  if (high.kind === 'refused') return undefined;
  if (size === undefined) return showed;
  const from = amountOf(size, dimension);
  const unit = findUnit(showed.unit);
  if (from.kind === 'refused' || unit.kind === 'refused') return undefined;
  const off = high.value - from.value;
  // A difference of temperatures has no shift, so the step of one unit converts it too.
  const one = size.unit === showed.unit ? stepToCore(1, unit.value) : 1;
  const text = formatFigure(off / one, decimalsFor(showed, size));
  return { text, unit: size.unit === showed.unit ? showed.unit : (unitsOf(dimension)[0] ?? showed.unit) };
};

/** Whether it showed no more off than its maker or standard allows. */
export const withinPermissible = (
  { kind, permissibleError }: Pick<Instrument, 'kind' | 'permissibleError'>,
  held: Held,
): boolean => {
  const { measures } = kindOf(kind);
  const off = deviationOf(held, measures);
  const read = off && amountOf(off, measures);
  const allowed = amountOf(permissibleError, measures);
  if (read?.kind !== 'answer' || allowed.kind === 'refused') return false;
  // Not one step of a binary digit more: 0.004 typed twice is the same 0.004.
  return Math.abs(read.value) <= allowed.value * (1 + 1e-12);
};
