/** @module Doubts about instruments whose zero was never checked, with all that was read with them. */
import type { Instrument } from './instrument.ts';
import { greatestOdds } from './odds.ts';
import type { Reading } from './reading.ts';
import type { Sheet } from './sheet.ts';
import { hasZero, noZeroCheck } from './slips/no-zero-check.ts';
import type { Priors } from './slips/priors.ts';
import type { Doubt } from './verdict-model.ts';

const doubtOf = ({ name }: Instrument, readings: readonly Reading[]): Doubt => ({
  id: `${noZeroCheck.name}:${name}`,
  slip: noZeroCheck.name,
  says: `${name}: its zero or master was never checked, so that all ${readings.length} readings with it may be off by the same amount. Check the zero and write it in the register, or say why the readings stand.`,
  readings: readings.map(({ id }) => id),
  places: [...new Set(readings.map(({ cell }) => cell.place))],
  likely: readings.map(({ typed }) => typed),
  odds: greatestOdds,
});

/** One doubt for each instrument that has a zero, of which none is known; it is no matter of odds. */
export const instrumentDoubts = (sheet: Sheet, priors: Priors): readonly Doubt[] => {
  if (!((priors[noZeroCheck.name] ?? 0) > 0)) return [];
  const counting = [...sheet.readings.values()].flatMap((readings) => readings.at(-1) ?? []);
  const byInstrument = Map.groupBy(counting, ({ instrument }) => instrument);
  return [...sheet.instruments.values()].flatMap((instrument) => {
    const readings = byInstrument.get(instrument.name) ?? [];
    const unchecked =
      instrument.zero === undefined && instrument.setTo === undefined && hasZero(instrument.kind);
    return unchecked && readings.length > 0 ? [doubtOf(instrument, readings)] : [];
  });
};
