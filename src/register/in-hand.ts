/** @module What must be said of an instrument that was brought to a job, with what the register has found of it since. */
import type { Instrument } from '../measure/instrument.ts';
import type { Register, Registered } from './register.ts';
import { type Caution, standing, standingInRegister } from './standing.ts';

/** As it was brought; where the register knows it, with its last check and certificate as they now are. */
const asFoundSince = (brought: Instrument, { instrument, withdrawn, history }: Registered): Registered => {
  const { calibration, checked } = instrument;
  const since = { ...brought, ...(calibration && { calibration }), ...(checked && { checked }) };
  return { instrument: since, history, ...(withdrawn && { withdrawn }) };
};

/**
 * Cautions of an instrument and of what it was set in, and that in turn; none where nothing speaks against them.
 *
 * @param brought   instruments of the job, by name
 * @param register  where it can be had: what was found since they were brought
 * @param on        the moment of the reading
 */
export const cautionsInHand = (
  instrument: Instrument,
  brought: ReadonlyMap<string, Instrument>,
  register: Register | undefined,
  on: string,
): readonly Caution[] => {
  const cautions: Caution[] = [];
  const seen = new Set<string>();
  let one: Instrument | undefined = instrument;
  while (one !== undefined && !seen.has(one.name)) {
    seen.add(one.name);
    const found = register?.instruments.get(one.name);
    cautions.push(...(found ? standingInRegister(asFoundSince(one, found), on) : standing(one, on)));
    const master: string | undefined = one.setTo?.master;
    one =
      master === undefined
        ? undefined
        : (brought.get(master) ?? register?.instruments.get(master)?.instrument);
  }
  return cautions;
};
