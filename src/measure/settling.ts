/** @module The unsure verdicts among those given, each with what would settle it. */
import type { Instrument } from './instrument.ts';
import type { Proposal } from './proposal.ts';
import { settle } from './settle.ts';
import type { Sheet } from './sheet.ts';
import type { Judged } from './verdict-model.ts';

export interface Settling {
  readonly place: string;
  readonly characteristic: string;
  /** Cheapest first. */
  readonly proposals: readonly Proposal[];
}

/** With the instruments of the job, and those of the shop where they are known. */
export const settling = (
  sheet: Sheet,
  judged: readonly Judged[],
  shop: readonly Instrument[] = [],
): readonly Settling[] => {
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
