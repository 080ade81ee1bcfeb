/** @module One turn of the thimble too many or too few: the half-millimetre line overlooked. */
import { shifted } from './shifted.ts';
import type { Slip } from './slip.ts';

export const thimbleTurn: Slip = {
  name: 'thimble turn',
  says: 'one turn of thimble or pointer misread',
  /** Once in seventy readings, either way: common practice, no source. */
  chance: 0.015,
  of: 'readings',
  reach: 0.5,
  onScale: true,
  sticks: true,
  candidates: (typed, { turn }) =>
    [1, -1].flatMap((times) => {
      const likely = turn && shifted(typed, turn, times);
      return likely ? [{ likely, share: 0.5, stretch: 1 }] : [];
    }),
};
