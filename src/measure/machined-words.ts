/** @module What else a size that looks wrong may be: a step to which the part was machined, and nobody noted it. */
import type { Bounds, Characteristic, Limits, Place } from '../engine/engine-type.ts';
import { sizeInCell } from './cell-size.ts';
import { operandPlace } from './expression.ts';
import { fittedSize } from './fitted-size.ts';
import { median } from './neighbours.ts';
import { cellsOf, placesOf } from './scheme.ts';
import type { Sheet } from './sheet.ts';

/** All that a part of a size may measure, new or worn. */
const spanOf = ({ new: made, goesBack }: Limits): Bounds => ({
  least: Math.min(made.least ?? Number.NaN, goesBack.least ?? Number.POSITIVE_INFINITY),
  greatest: Math.max(made.greatest ?? Number.NaN, goesBack.greatest ?? Number.NEGATIVE_INFINITY),
});

const within = (size: number, { least = Number.NaN, greatest = Number.NaN }: Bounds): boolean =>
  size >= least && size <= greatest;

/** Whether every place that was read lies there: then all of them were machined, and not this one alone. */
const allLieIn = (sheet: Sheet, characteristic: Characteristic, span: Bounds): boolean =>
  placesOf(sheet.engine, characteristic).every(({ id }) => {
    const sizes = cellsOf(sheet.engine, characteristic.name, id).flatMap(
      (cell) => sizeInCell(sheet, cell)?.value ?? [],
    );
    return sizes.length === 0 || within(median(sizes), span);
  });

/**
 * Words for a doubt about a size that lies within a listed step of its part.
 *
 * @param sheet           with its engine type, whose components say to which sizes they are machined
 * @param characteristic  what was read
 * @param place           where
 * @param size            mm
 * @returns a sentence to follow the doubt; nothing where no step fits, or where that step is noted
 */
export const machinedWords = (
  sheet: Sheet,
  characteristic: Characteristic,
  place: Place,
  size: number,
): string => {
  const { engine } = sheet;
  const component = [...engine.components.values()].find(({ sizes }) => sizes?.of === characteristic.name);
  const step = component?.sizes?.steps.find(({ limits }) => within(size, spanOf(limits)));
  if (!component || !step) return '';
  const own = operandPlace(engine, place, component.at);
  if (fittedSize(sheet, component.name, own) === step.name) return '';
  return allLieIn(sheet, characteristic, spanOf(step.limits))
    ? ` If ${component.title.toLowerCase()} were machined to ${step.name}, note that as the size found.`
    : ` If ${engine.places.get(own)?.title ?? own} was machined to ${step.name}, note that as the size found there.`;
};
