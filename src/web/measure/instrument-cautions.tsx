/** @module What must be said of the instrument in the hand before it is read with; the reading is taken all the same. */
import type { Instrument } from '../../measure/instrument.ts';
import { cautionText, standing } from '../../register/standing.ts';
import { useInstruments } from '../jobs/workshop-lists.ts';

/** As it was brought to the job, with what the register has found of it since. */
const asFoundSince = (brought: Instrument, register: readonly Instrument[] | undefined): Instrument => {
  const { calibration, checked } = register?.find(({ name }) => name === brought.name) ?? brought;
  return { ...brought, ...(calibration && { calibration }), ...(checked && { checked }) };
};

export const InstrumentCautions = ({ instrument }: { readonly instrument: Instrument | undefined }) => {
  const register = useInstruments().data;
  if (!instrument) return null;
  const cautions = standing(asFoundSince(instrument, register), new Date().toISOString());
  return cautions.map((caution) => (
    <p key={caution.kind} className="caution">
      <strong>Caution:</strong> {cautionText(caution)}.
    </p>
  ));
};
