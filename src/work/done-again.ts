/** @module What is to be fitted, set and run again once some parts came off. */
import type { EngineType, OneUse } from '../engine/engine-type.ts';

/** Parts used but once that some operations of the strip spoil. */
export const spoiltBy = (
  { oneUse }: Pick<EngineType, 'oneUse'>,
  strip: ReadonlySet<string>,
): readonly OneUse[] =>
  [...oneUse.values()].filter(({ disturbedBy }) => disturbedBy.some((name) => strip.has(name)));

/**
 * What fits the parts again, works on them or renews what was spoilt, what rests on that and fits nothing itself, and the settings that stand
 * directly before any of it, up to the first start.
 *
 * @param off   what came off: kinds of place, or names of its own
 * @param spoilt  parts used but once, by name
 * @param also  operations that are done again whatever came off
 * @returns names of operations
 */
export const doneAgain = (
  { operations }: Pick<EngineType, 'operations'>,
  off: ReadonlySet<string>,
  spoilt: ReadonlySet<string>,
  also: ReadonlySet<string> = new Set(),
): ReadonlySet<string> => {
  const back = [...operations.values()].filter(({ phase }) => phase !== 'strip');
  const again = new Set(
    back
      .filter(
        ({ name, phase, at, fits, renews }) =>
          also.has(name) ||
          fits.some((part) => off.has(part)) ||
          renews.some((one) => spoilt.has(one)) ||
          (phase === 'build' && fits.length === 0 && at !== undefined && off.has(at)),
      )
      .map(({ name }) => name),
  );
  const resting = back.filter(({ fits }) => fits.length === 0);
  for (let before = -1; before !== again.size; ) {
    before = again.size;
    for (const { name, after } of resting) if (after.some((one) => again.has(one))) again.add(name);
  }
  const settings = back.filter(({ phase, fits }) => phase === 'set' && fits.length === 0);
  const setUp = back.filter(({ name, phase }) => phase !== 'run' && again.has(name));
  const before = new Set(setUp.flatMap(({ after }) => after));
  for (const { name } of settings) if (before.has(name)) again.add(name);
  return again;
};
