/** @module Doubts about instruments that failed their check or were never given one, with all that was read with them. */
import type { Instrument } from './instrument.ts';
import { greatestOdds } from './odds.ts';
import type { Reading } from './reading.ts';
import type { Sheet } from './sheet.ts';
import { failedCheck } from './slips/failed-check.ts';
import { hasZero, noZeroCheck } from './slips/no-zero-check.ts';
import type { Priors } from './slips/priors.ts';
import type { KnownSlip } from './slips/slip.ts';
import type { Doubt } from './verdict-model.ts';

const doubtOf = (slip: KnownSlip, instrument: string, says: string, readings: readonly Reading[]): Doubt => ({
  id: `${slip.name}:${instrument}`,
  slip: slip.name,
  says,
  readings: readings.map(({ id }) => id),
  places: [...new Set(readings.map(({ cell }) => cell.place))],
  likely: readings.map(({ typed }) => typed),
  odds: greatestOdds,
});

const unchecked = (
  { name, kind, zero, setTo }: Instrument,
  readings: readonly Reading[],
): readonly Doubt[] =>
  zero !== undefined || setTo !== undefined || !hasZero(kind)
    ? []
    : [
        doubtOf(
          noZeroCheck,
          name,
          `${name}: its zero or master was never checked, so that all ${readings.length} readings with it may be off by the same amount. Check the zero and write it in the register, or say why the readings stand.`,
          readings,
        ),
      ];

const failed = ({ name, checked }: Instrument, readings: readonly Reading[]): readonly Doubt[] =>
  checked === undefined || checked.good
    ? []
    : [
        doubtOf(
          failedCheck,
          name,
          `${name} was found out when it was held against ${checked.against} on ${checked.on}: none of the ${readings.length} readings with it can be relied on. Put it right and measure again, measure with another one, or say why the readings stand.`,
          readings,
        ),
      ];

/** One doubt for each instrument that cannot be relied on; it is no matter of odds. */
export const instrumentDoubts = (sheet: Sheet, priors: Priors): readonly Doubt[] => {
  const asked = ({ name }: KnownSlip): boolean => (priors[name] ?? 0) > 0;
  const counting = [...sheet.readings.values()].flatMap((readings) => readings.at(-1) ?? []);
  const byInstrument = Map.groupBy(counting, ({ instrument }) => instrument);
  return [...sheet.instruments.values()].flatMap((instrument) => {
    const readings = byInstrument.get(instrument.name) ?? [];
    if (readings.length === 0) return [];
    return [
      ...(asked(failedCheck) ? failed(instrument, readings) : []),
      ...(asked(noZeroCheck) ? unchecked(instrument, readings) : []),
    ];
  });
};
