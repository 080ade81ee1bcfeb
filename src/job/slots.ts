/** @module The slots of a plan: each component, or each of its places where they are decided one by one. */
import type { EngineType } from '../engine/engine-type.ts';

/** Slots by name, in the order of the engine type: `mains`, `pistons@piston.2`. */
export const slotsOf = (engine: EngineType): readonly string[] =>
  [...engine.components.values()].flatMap((component) =>
    component.together
      ? [component.name]
      : [...engine.places.values()]
          .filter(({ kind }) => kind === component.at)
          .map(({ id }) => `${component.name}@${id}`),
  );
