/** @module A figure in a field of the register: the unit may be left out, and an empty field is none. */
import { type Answer, answer } from '../../quantity/refusal.ts';
import { readTyped, type Typed, unitTyped } from '../../quantity/typed.ts';
import type { Dimension } from '../../quantity/unit.ts';

/** @param where  the field, for the message */
export const typedFigure = (
  text: string,
  unit: string,
  dimension: Dimension,
  where: string,
): Answer<Typed> => {
  const read = readTyped(unitTyped(text) === '' ? `${text.trim()} ${unit}` : text, dimension);
  return read.kind === 'refused' ? { ...read, refusal: { ...read.refusal, where } } : read;
};

export const typedIfAny = (
  text: string,
  unit: string,
  dimension: Dimension,
  where: string,
): Answer<Typed | undefined> =>
  text.trim() === '' ? answer(undefined) : typedFigure(text, unit, dimension, where);
