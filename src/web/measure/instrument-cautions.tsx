/** @module What must be said of the instrument in the hand before it is read with; the reading is taken all the same. */
import type { Instrument } from '../../measure/instrument.ts';
import type { Sheet } from '../../measure/sheet.ts';
import { cautionsInHand } from '../../register/in-hand.ts';
import { cautionText } from '../../register/standing.ts';
import { useRegister } from '../instruments/register-shelf.ts';

export const InstrumentCautions = ({
  instrument,
  sheet,
}: {
  readonly instrument: Instrument | undefined;
  readonly sheet: Sheet;
}) => {
  // Away from the store, what was known when it was brought must do.
  const register = useRegister().data;
  if (!instrument) return null;
  const cautions = cautionsInHand(instrument, sheet.instruments, register, new Date().toISOString());
  return cautions.map((caution) => (
    <p key={`${caution.of} ${caution.kind}`} className="caution">
      <strong>Caution:</strong> {cautionText(caution)}.
    </p>
  ));
};
