/** @module The slots of a plan: each component, or each of its places where they are decided one by one. */
import type { Component, EngineType, Place } from '../engine/engine-type.ts';
import { operandPlace } from '../measure/expression.ts';

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
