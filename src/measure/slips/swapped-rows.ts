/** @module Two places' figures written in one another's row, told by what is known of each place otherwise. */
import type { KnownSlip } from './slip.ts';

export const swappedRows: KnownSlip = {
  name: 'rows swapped',
  says: 'the rows of two places swapped',
  /** Once in a hundred sets of rows: common practice, no source. */
  chance: 0.01,
  of: 'sets of rows',
};

/** A figure that fits neither place, once in fifty, within about a millimetre: common practice, no source. */
const neither = 0.02;

/**
 * Surprise at a row of figures in a place where others are expected.
 *
 * @param offs    figure less what is expected, cell by cell, mm
 * @param spread  how far a figure may honestly be off, standard deviation, mm, above 0
 * @returns -ln of the density of the row
 * @source  normal, with one in fifty anywhere; common practice, no source
 */
export const rowSurprise = (offs: readonly number[], spread: number): number =>
  offs.reduce((sum, off) => {
    const bell = Math.exp(-0.5 * (off / spread) ** 2) / (spread * Math.sqrt(2 * Math.PI));
    return sum - Math.log((1 - neither) * bell + neither / (Math.PI * (1 + off ** 2)));
  }, 0);
