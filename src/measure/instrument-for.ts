/** @module Which instruments of a register suit a characteristic: the one in the hand, the right kind, the right range. */

import type { Characteristic } from '../engine/engine-type.ts';
import { kindOf } from '../engine/instrument-kind.ts';
import { quantityOf } from '../engine/shown-in.ts';
import { amountOf } from '../quantity/typed.ts';
import type { Instrument } from './instrument.ts';
import { limitsOf } from './limits.ts';
import { placesOf } from './scheme.ts';
import type { Sheet } from './sheet.ts';

interface Wanted {
  readonly sheet: Sheet;
  readonly asked: Characteristic | undefined;
}

/** Whether it reaches every size that may still go back, at any place; true where the manual gives no limits. */
const reaches = (instrument: Instrument, { sheet, asked }: Wanted): boolean => {
  const bounds = (asked ? placesOf(sheet.engine, asked) : []).flatMap(({ id }) => {
    const { least, greatest } = limitsOf(sheet, asked?.name ?? '', id)?.goesBack ?? {};
    return [least, greatest];
  });
  const quantity = quantityOf(asked);
  const [from = Number.NaN, to = Number.NaN] = [instrument.range.least, instrument.range.greatest].map(
    (end) => {
      const amount = amountOf(end, quantity);
      return amount.kind === 'answer' ? amount.value : Number.NaN;
    },
  );
  return bounds.every((bound) => bound === undefined || (from <= bound && bound <= to));
};

/** What this characteristic was read with last, wherever it was read. */
const usedLast = (sheet: Sheet, characteristic: string): string | undefined => {
  let used: string | undefined;
  for (const readings of sheet.readings.values()) {
    const last = readings.at(-1);
    if (last?.cell.characteristic === characteristic) used = last.instrument;
  }
  return used;
};

/**
 * Instruments in the order in which they suit a characteristic: the one it was read with before, then those of
 * the kind that the manual asks for and whose range reaches, then the others, each group in the order given; last those that measure something else.
 */
export const instrumentsFor = (
  sheet: Sheet,
  characteristic: string,
  register: readonly Instrument[],
): readonly Instrument[] => {
  const used = usedLast(sheet, characteristic);
  const asked = sheet.engine.characteristics.get(characteristic);
  const kind = asked?.instrument;
  const unfit = (instrument: Instrument): number =>
    (kindOf(instrument.kind).measures === quantityOf(asked) ? 0 : 8) +
    (instrument.name === used ? 0 : 4) +
    (instrument.kind === kind ? 0 : 2) +
    (reaches(instrument, { sheet, asked }) ? 0 : 1);
  return register.toSorted((a, b) => unfit(a) - unfit(b));
};
