/** @module What else a size that looks wrong may be: a step to which the part was machined, and nobody noted it. */
import type { Sheet } from './sheet.ts';

/**
 * Words for a doubt about a size that lies within a listed step of its part.
 *
 * @param sheet           with its engine type, whose components say to which sizes they are machined
 * @param characteristic  name
 * @param size            mm
 * @returns a sentence to follow the doubt; nothing where no step fits, or where that step is noted
 */
export const machinedWords = (sheet: Sheet, characteristic: string, size: number): string => {
  const component = [...sheet.engine.components.values()].find(({ sizes }) => sizes?.of === characteristic);
  const step = component?.sizes?.steps.find(({ limits: { new: made, goesBack } }) => {
    const least = Math.min(made.least ?? Number.NaN, goesBack.least ?? Number.POSITIVE_INFINITY);
    const greatest = Math.max(made.greatest ?? Number.NaN, goesBack.greatest ?? Number.NEGATIVE_INFINITY);
    return size >= least && size <= greatest;
  });
  if (!component || !step || sheet.sizesFound.get(component.name) === step.name) return '';
  return ` If ${component.title.toLowerCase()} were machined to ${step.name}, note that as the size found.`;
};
