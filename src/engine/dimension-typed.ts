/** @module Of which kind a figure is, by the unit that it was typed with. */
import { unitTyped } from '../quantity/typed.ts';
import { type Dimension, findUnit } from '../quantity/unit.ts';
import { pairTyped } from './printed-pair.ts';

/** A bare number counts as a ratio; undefined where the unit is not known. */
export const dimensionTyped = (text: string): Dimension | undefined => {
  const unit = findUnit(unitTyped(pairTyped(text).figure) || '1');
  return unit.kind === 'answer' ? unit.value.dimension : undefined;
};
