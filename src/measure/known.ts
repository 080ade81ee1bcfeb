/** @module What is known of a characteristic before any one reading is looked at: its limits, its hours, its former sizes. */
import type { Characteristic } from '../engine/engine-type.ts';
import type { Expectation } from './expectation.ts';
import { formerSizeAt, hoursSince } from './former.ts';
import { trustIn } from './honest.ts';
import { median } from './neighbours.ts';
import type { Sheet } from './sheet.ts';
import { changedAsTold, type Since, sinceFormer, wearShare } from './since-former.ts';
import type { Priors } from './slips/priors.ts';
import type { Taken } from './taken.ts';

export interface Known {
  readonly sheet: Sheet;
  readonly characteristic: Characteristic;
  /** Of any of its cells. */
  readonly own: Expectation;
  readonly priors: Priors;
  /** Of the cell of a reading, with what it was left at by a former overhaul. */
  readonly ownAt: (taken: Taken) => Expectation;
  /** Of the level of a row. */
  readonly ownOfRow: (row: readonly Taken[]) => Expectation;
}

/** What was left in a cell is another size than is looked for now: the part has been machined since, as was noted. */
const leastTrust = 0.5;

type Left = Omit<Since, 'changed'>;

const leftAt = (known: Omit<Known, 'ownAt' | 'ownOfRow'>, share: number, taken: Taken): Left | undefined => {
  const { sheet, characteristic, own } = known;
  const then = formerSizeAt(sheet, taken.reading.cell);
  if (!then || trustIn(then.size * taken.scale, own) < leastTrust) return undefined;
  const { wears } = characteristic;
  return { size: then.size * taken.scale, u: Math.hypot(taken.u, then.u * taken.scale), wears, share };
};

/**
 * What is known of a characteristic.
 *
 * @param given  as the limits and the hours have it
 * @param life   hours in which the manual counts on the wear that it allows
 * @param rows   readings that count; others of a place tell whether its part is still the one of the former overhaul
 */
export const knownOf = (
  given: Omit<Known, 'ownAt' | 'ownOfRow'>,
  life: number | undefined,
  rows: readonly (readonly Taken[])[],
): Known => {
  const { own, sheet } = given;
  if (!sheet.former) return { ...given, ownAt: () => own, ownOfRow: () => own };
  const share = wearShare(hoursSince(sheet), life);
  const byReading = new Map<string, Expectation>();
  const byPlace = new Map<string, Expectation>();
  for (const row of rows) {
    const left = row.map((taken) => ({ taken, since: leftAt(given, share, taken) }));
    const told = left.map(({ taken: { size }, since }) =>
      since
        ? { same: sinceFormer(own, { ...since, changed: 0 }).density(size), any: own.density(size) }
        : undefined,
    );
    for (const [at, { taken, since }] of left.entries()) {
      if (!since) continue;
      const changed = changedAsTold(told.toSpliced(at, 1).flatMap((one) => one ?? []));
      byReading.set(taken.reading.id, sinceFormer(own, { ...since, changed }));
    }
    const known = left.flatMap(({ since }) => since ?? []);
    const [first] = known;
    if (first && known.length === row.length) {
      const level = { ...first, size: median(known.map(({ size }) => size)), changed: changedAsTold([]) };
      byPlace.set(row[0]?.place.id ?? '', sinceFormer(own, level));
    }
  }
  return {
    ...given,
    ownAt: ({ reading }) => byReading.get(reading.id) ?? own,
    ownOfRow: ([taken]) => byPlace.get(taken?.place.id ?? '') ?? own,
  };
};
