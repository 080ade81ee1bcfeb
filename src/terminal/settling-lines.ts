/** @module What would settle the unsure verdicts of a sheet, a line each, the cheapest way. */
import type { Instrument } from '../measure/instrument.ts';
import { settle } from '../measure/settle.ts';
import type { Sheet } from '../measure/sheet.ts';
import type { Judged } from '../measure/verdict-model.ts';
import { plain } from './plain.ts';

/** With the instruments of the job, and those of the shop where they are known. */
export const settling = (sheet: Sheet, judged: readonly Judged[], shop: readonly Instrument[] = []) => {
  const register = [
    ...new Map([...shop, ...sheet.instruments.values()].map((one) => [one.name, one])).values(),
  ];
  return judged
    .filter(({ verdict }) => verdict === 'unsure')
    .map(({ place, characteristic }) => ({
      place,
      characteristic,
      proposals: settle(sheet, characteristic, place, register),
    }));
};

export const settlingLines = (unsure: ReturnType<typeof settling>): readonly string[] =>
  unsure.map(({ place, characteristic, proposals }) =>
    plain(`Unsure: ${place} ${characteristic}. ${proposals[0]?.says ?? ''}`),
  );
