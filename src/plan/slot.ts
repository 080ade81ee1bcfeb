/** @module The slots of a plan: each component, or each of its places where they are decided one by one. */
import type { Component, EngineType, Place } from '../engine/engine-type.ts';
import { operandPlace } from '../measure/expression.ts';
import { fittedSize, type SizedSheet } from '../measure/fitted-size.ts';

export interface Slot {
  /** `mains`, `pistons@piston.2`. */
  readonly name: string;
  /** For reading aloud: `pistons, piston 2`. */
  readonly title: string;
  readonly component: Component;
  /** The places that are decided together. */
  readonly places: readonly Place[];
}

/** In the order of the engine type. */
export const slotsOf = (engine: EngineType): readonly Slot[] =>
  [...engine.components.values()].flatMap((component): readonly Slot[] => {
    const places = [...engine.places.values()].filter(({ kind }) => kind === component.at);
    return component.together
      ? [{ name: component.name, title: component.title, component, places }]
      : places.map((place) => ({
          name: `${component.name}@${place.id}`,
          title: `${component.title}, ${place.title}`,
          component,
          places: [place],
        }));
  });

/** Places at which a slot is judged by a characteristic: those of its own places, or all of the kind where it is one whole. */
export const judgingPlaces = (engine: EngineType, slot: Slot, kind: string): readonly string[] =>
  slot.component.together
    ? [...engine.places.values()].filter((place) => place.kind === kind).map(({ id }) => id)
    : [...new Set(slot.places.map((place) => operandPlace(engine, place, kind)))];

/** Whether two slots touch one another through a coupling: a whole touches every place, places touch by number. */
export const touches = (a: Slot, b: Slot): boolean =>
  a.component.together ||
  b.component.together ||
  a.places.some(({ number }) => b.places.some((place) => place.number === number));

/** A place of each of two slots. */
type PlacePair = readonly [one: string, other: string];

/** The places of two slots that belong to one another: piston 2 to bore 2. */
export const placePairs = (engine: EngineType, one: Slot, other: Slot): readonly PlacePair[] => {
  const [own, others] = [one, other].map(({ places }) => new Set(places.map(({ id }) => id)));
  const pairs = [
    ...one.places.map((place): PlacePair => [place.id, operandPlace(engine, place, other.component.at)]),
    ...other.places.map((place): PlacePair => [operandPlace(engine, place, one.component.at), place.id]),
  ].filter(([a, b]) => own?.has(a) && others?.has(b));
  const found = [...new Map(pairs.map((pair) => [pair.join('|'), pair])).values()];
  // Of kinds that are not numbered alike the wholes belong together.
  const [first, second] = [one.places[0], other.places[0]];
  return found.length === 0 && first && second ? [[first.id, second.id]] : found;
};

/** The size at which each place of a slot stands now. */
export const sizesNow = (
  sheet: SizedSheet,
  { component, places }: Slot,
): readonly (readonly [place: string, size: string])[] =>
  places.map(({ id }) => [id, fittedSize(sheet, component.name, id)]);
