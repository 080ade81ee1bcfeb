/** @module Parts that stay where they are because the overhaul does not go so far: they bar what would need them renewed. */
import type { Coupling, Does } from '../engine/engine-type.ts';
import { renews } from '../engine/renewal.ts';
import type { Sheet } from '../measure/sheet.ts';
import type { PlanQuestion } from './question.ts';
import { type Slot, sizesNow, slotsOf, touches } from './slot.ts';

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

/** Whether another slot would have to be renewed, or to be of the same size, along with what is done with one. */
const drawsIn = (
  sheet: Sheet,
  coupling: Coupling,
  component: string,
  { does, size }: Done,
  other: Slot,
): boolean => {
  const name = other.component.name;
  switch (coupling.kind) {
    case 'renew with':
      return coupling.if === component && coupling.is.includes(does) && coupling.renew === name;
    case 'disturbed':
      return coupling.if === component && coupling.renew === name;
    case 'matched':
      return renews(does) && coupling.components.includes(component) && coupling.components.includes(name);
    case 'same size': {
      const both = [coupling.leader, coupling.follower];
      if (name === component || !both.includes(component) || !both.includes(name)) return false;
      return sizesNow(sheet, other).some(([, now]) => now !== size);
    }
    case 'either or':
    case 'balance':
      return false;
    default:
      return coupling satisfies never;
  }
};

interface Done {
  readonly does: Does;
  readonly size: string;
}

/** Why nothing can be done with a slot but leaving it as it is, or with what goes along with it. */
export const unopenedBar = (question: PlanQuestion, slot: Slot, done: Done): string | undefined => {
  const { leftOut, sheet } = question;
  if (leftOut === undefined) return undefined;
  const shut = slot.places.find(({ id }) => leftOut.places.has(id));
  if (shut !== undefined) return `${shut.title} is not laid open in this job`;
  const other = slotsOf(sheet.engine).find(
    (one) =>
      isOut(question, one) &&
      touches(slot, one) &&
      sheet.engine.couplings.some((coupling) => drawsIn(sheet, coupling, slot.component.name, done, one)),
  );
  return other && `${other.title} would have to be changed too, and is not laid open in this job`;
};
