/** @module Which limits hold for a characteristic: as made, or those of the rework step at which it was found. */
import type { Component, EngineType, Limits } from '../engine/engine-type.ts';
import type { Sheet } from './sheet.ts';

const owners = new WeakMap<EngineType, ReadonlyMap<string, Component>>();

/** The component that is machined at a characteristic, by the characteristic's name. */
const ownersOf = (engine: EngineType): ReadonlyMap<string, Component> => {
  const kept = owners.get(engine);
  if (kept) return kept;
  const found = new Map<string, Component>();
  for (const component of engine.components.values()) {
    if (component.sizes) found.set(component.sizes.of, component);
  }
  owners.set(engine, found);
  return found;
};

/**
 * Limits of a characteristic on this sheet.
 *
 * @param sheet           its engine type and the sizes at which components were found
 * @param characteristic  name
 * @returns limits of the rework step found, else those as made; undefined where the manual gives none
 */
export const limitsOf = (sheet: Sheet, characteristic: string): Limits | undefined => {
  const owner = ownersOf(sheet.engine).get(characteristic);
  const found = owner && sheet.sizesFound.get(owner.name);
  const step = found && owner.sizes?.steps.find(({ name }) => name === found);
  return step ? step.limits : sheet.engine.characteristics.get(characteristic)?.limits;
};
