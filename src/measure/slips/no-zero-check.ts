/** @module An instrument whose zero, or setting in its master, was never checked. */
import type { KnownSlip } from './slip.ts';

export const noZeroCheck: KnownSlip = {
  name: 'no zero check',
  says: 'an instrument whose zero was never checked',
  /** Not a chance but whether it is asked about at all: above 0 it is. */
  chance: 1,
  of: 'instruments',
};

/** Feelers have no zero. */
export const hasZero = (kind: string): boolean => kind !== 'feeler set';
