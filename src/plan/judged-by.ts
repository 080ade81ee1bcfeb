/** @module The verdicts that speak on whether a component, or a slot of it, may be put back. */
import { judge } from '../measure/judge.ts';
import type { Sheet } from '../measure/sheet.ts';
import type { Judged } from '../measure/verdict-model.ts';
import { judgingPlaces, type Slot, slotsOf } from './slot.ts';

/** By each characteristic that it is judged by, in their order. */
export const judgedOf = (sheet: Sheet, slot: Slot): readonly Judged[] =>
  slot.component.judgedBy.flatMap((name) => {
    const characteristic = sheet.engine.characteristics.get(name);
    return characteristic
      ? judgingPlaces(sheet.engine, slot, characteristic.at).map((place) => judge(sheet, name, place))
      : [];
  });

/** Of a component at all its places, by its name; what speaks on several places stands once. */
export const judgedByComponent = (sheet: Sheet): ReadonlyMap<string, readonly Judged[]> => {
  const bySlot = Map.groupBy(slotsOf(sheet.engine), ({ component }) => component.name);
  return new Map(
    [...bySlot].map(([name, slots]) => {
      const judged = slots.flatMap((slot) => judgedOf(sheet, slot));
      const once = new Map(judged.map((one) => [`${one.characteristic}|${one.place}`, one]));
      return [name, [...once.values()]];
    }),
  );
};
