/** @module How long work takes by the engine type's own times, in words. */
import type { Operation } from '../engine/engine-type.ts';
import { durationText } from '../quantity/moment.ts';

/**
 * `6 h 20 min`, `6 h 20 min and 3 operations`: those of which the engine type does not say how long they take.
 *
 * @param left    minutes
 * @param untold  operations without a time
 */
export const leftWords = ({ left, untold }: { readonly left: number; readonly untold: number }): string => {
  const silent = `${untold} ${untold === 1 ? 'operation' : 'operations'}`;
  if (untold === 0) return durationText(left);
  return left === 0 ? silent : `${durationText(left)} and ${silent}`;
};

/** The same of some operations, by the clock. */
export const timeWords = (operations: readonly Pick<Operation, 'minutes'>[]): string =>
  leftWords({
    left: operations.reduce((sum, { minutes = 0 }) => sum + minutes, 0),
    untold: operations.filter(({ minutes }) => minutes === undefined).length,
  });
