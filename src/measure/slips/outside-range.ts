/** @module A figure that the instrument named with it cannot show. */
import { lengthOf, type Typed } from '../../quantity/typed.ts';
import type { Instrument } from '../instrument.ts';
import type { KnownSlip } from './slip.ts';

export const outsideRange: KnownSlip = {
  name: 'outside the range',
  says: 'a figure that its instrument cannot show',
  /** Another instrument named than was used, once in fifty readings: common practice, no source. */
  chance: 0.02,
  of: 'readings',
};

/** Their pointers go both ways from the zero. */
const signed = ['dial gauge', 'bore gauge', 'depth gauge'];

/** Instruments run a little past the ends of their range: this share of it, common practice, no source. */
const overrun = 0.02;

const millimetres = (typed: Typed): number => {
  const length = lengthOf(typed);
  return length.kind === 'answer' ? length.value : Number.NaN;
};

/**
 * Whether an instrument can show a figure.
 *
 * @param instrument  with its range; one whose range cannot be read shows everything
 * @param typed       a length; nothing at all can always be read, as by a feeler that does not go in
 * @returns false only where the figure lies clearly past an end of the range
 * @source  common practice, no source
 */
export const reachedBy = ({ range, kind, setTo }: Instrument, typed: Typed): boolean => {
  // Set in a master, it shows how far a size is off, which may be next to nothing; blades are laid together.
  if (setTo || kind === 'feeler set') return true;
  const [least = 0, greatest = 0, shown = 0] = [range.least, range.greatest, typed].map(millimetres);
  const size = signed.includes(kind) ? Math.abs(shown) : shown;
  const more = overrun * Math.abs(greatest - least);
  const below = size < least - more && size !== 0;
  return !(below || size > greatest + more);
};
