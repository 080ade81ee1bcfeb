/** @module Parts that stay where they are because the overhaul does not go so far: they bar what would need them renewed. */
import type { Does, EngineType } from '../engine/engine-type.ts';
import { renews } from '../engine/renewal.ts';
import type { PlanQuestion } from './question.ts';
import { type Slot, slotsOf, touches } from './slot.ts';

const isOut = ({ leftOut }: PlanQuestion, { places }: Slot): boolean =>
  leftOut !== undefined && places.every(({ id }) => leftOut.places.has(id));

/**
 * The slots that are decided: those with a place laid open, and those of which something was found that may not go
 * back, so that it is seen that the overhaul must go further.
 */
export const slotsIn = (question: PlanQuestion): readonly Slot[] => {
  const found = (slot: Slot): boolean =>
    question.findings.some(
      ({ component, place, mayGoBack }) =>
        !mayGoBack && component === slot.component.name && slot.places.some(({ id }) => id === place),
    );
  return slotsOf(question.sheet.engine).filter((slot) => !isOut(question, slot) || found(slot));
};

/** Components that would have to be renewed, or to be of the same size, along with what is done with one. */
const drawnIn = (
  { couplings }: EngineType,
  component: string,
  does: Does,
  otherSize: (component: string) => boolean,
): readonly string[] =>
  couplings.flatMap((coupling): readonly string[] => {
    switch (coupling.kind) {
      case 'renew with':
        return coupling.if === component && coupling.is.includes(does) ? [coupling.renew] : [];
      case 'disturbed':
        return coupling.if === component ? [coupling.renew] : [];
      case 'matched':
        return renews(does) ? coupling.components.filter(() => coupling.components.includes(component)) : [];
      case 'same size':
        return [coupling.leader, coupling.follower].includes(component)
          ? [coupling.leader, coupling.follower].filter(otherSize)
          : [];
      case 'either or':
      case 'balance':
        return [];
      default:
        return coupling satisfies never;
    }
  });

/**
 * Why nothing can be done with a slot but leaving it as it is, or with what goes along with it.
 *
 * @param sizeNow  the size at which a component stands
 */
export const unopenedBar = (
  question: PlanQuestion,
  slot: Slot,
  { does, size }: { readonly does: Does; readonly size: string },
  sizeNow: (component: string) => string,
): string | undefined => {
  const { leftOut, sheet } = question;
  if (leftOut === undefined) return undefined;
  const shut = slot.places.find(({ id }) => leftOut.places.has(id));
  if (shut !== undefined) return `${shut.title} is not laid open in this job`;
  const drawn = drawnIn(sheet.engine, slot.component.name, does, (other) => sizeNow(other) !== size);
  const other = slotsOf(sheet.engine).find(
    (one) => drawn.includes(one.component.name) && touches(slot, one) && isOut(question, one),
  );
  return other && `${other.title} would have to be changed too, and is not laid open in this job`;
};
