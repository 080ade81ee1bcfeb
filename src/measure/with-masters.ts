/** @module What must be brought to a job together with an instrument: what it was set in, and that in turn, first. */
import type { Instrument } from './instrument.ts';

/**
 * An instrument after everything it was set in, as far as the register knows it and the job has it not yet. A circle
 * of masters ends where it began.
 */
export const withMasters = (
  instrument: Instrument,
  register: readonly Instrument[],
  brought: ReadonlyMap<string, Instrument>,
): readonly Instrument[] => {
  const chain: Instrument[] = [];
  let one: Instrument | undefined = instrument;
  while (one && !chain.includes(one) && (one === instrument || !brought.has(one.name))) {
    chain.unshift(one);
    const master: string | undefined = one.setTo?.master;
    one = register.find(({ name }) => name === master);
  }
  return chain;
};
