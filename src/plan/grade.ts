/** @module The grade that a part is taken in, from the measured value that decides: a gasket after how far the pistons stand out. */
import type { Component, Grade } from '../engine/engine-type.ts';
import { figureText, shownIn } from '../engine/shown-in.ts';
import { judge } from '../measure/judge.ts';
import type { PlanQuestion } from './question.ts';
import { judgingPlaces, type Slot } from './slot.ts';

/**
 * The grade for a value: of those whose band holds it the last, since grades stand thinnest first.
 *
 * @param value   in the core's unit of the characteristic
 * @param grades  thinnest first, with the values for which each is taken
 * @returns the grade, or undefined where no band holds the value
 * @source  TM 10-4320-310-14, p 5-22 (where two gaskets fit, the thicker one)
 * @example gradeFor(0.42, [{ name: '1.2', when: { greatest: 0.45 } }, { name: '1.3', when: { least: 0.40 } }])?.name // '1.3'
 */
export const gradeFor = (value: number, grades: readonly Grade[]): Grade | undefined =>
  grades.findLast(
    ({ when: { least = -Infinity, greatest = Infinity } }) =>
      value >= least - 1e-9 && value <= greatest + 1e-9,
  );

type Chosen =
  | { readonly kind: 'grade'; readonly name: string; readonly reason: string }
  | { readonly kind: 'none'; readonly says: string }
  /** The offers stay open, and the reason says what settles it. */
  | { readonly kind: 'not yet known'; readonly says: string };

export const gradeChosen = (
  { sheet }: PlanQuestion,
  slot: Slot,
  grades: NonNullable<Component['grades']>,
): Chosen => {
  const of = sheet.engine.characteristics.get(grades.of);
  if (!of) return { kind: 'none', says: `${grades.of} is not known` };
  let deciding: { readonly value: number; readonly place: string } | undefined;
  for (const place of judgingPlaces(sheet.engine, slot, of.at)) {
    const judged = judge(sheet, of.name, place);
    const sizes = of.derived
      ? judged.value && judged.missing.length === 0
        ? [judged.value.value]
        : []
      : judged.cells.map(({ size }) => size?.value ?? Number.NaN);
    if (sizes.length === 0 || sizes.some(Number.isNaN))
      return {
        kind: 'not yet known',
        says: `which grade is settled once ${of.title} at ${place} is measured`,
      };
    const value = grades.takes === 'greatest' ? Math.max(...sizes) : Math.min(...sizes);
    const further =
      !deciding || (grades.takes === 'greatest' ? value > deciding.value : value < deciding.value);
    if (further) deciding = { value, place };
  }
  if (!deciding) return { kind: 'none', says: `${of.title} is measured nowhere` };
  const words = `${of.title} at ${deciding.place} is ${figureText(deciding.value, shownIn(of))}`;
  const grade = gradeFor(deciding.value, grades.steps);
  return grade
    ? { kind: 'grade', name: grade.name, reason: `${words}, which asks for grade ${grade.name}` }
    : { kind: 'none', says: `${words}, for which there is no grade` };
};
