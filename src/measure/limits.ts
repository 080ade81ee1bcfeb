/** @module Which limits hold for a characteristic: as made, or those of the rework step fitted at its place. */
import type { Component, EngineType, Limits } from '../engine/engine-type.ts';
import { operandPlace } from './expression.ts';
import { fittedSize } from './fitted-size.ts';
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

const madeOnly = new WeakMap<Limits, Limits>();

/** As made alone: how far a used part may go says nothing of one that was ordered. */
const asMade = (limits: Limits): Limits => {
  const kept = madeOnly.get(limits);
  if (kept) return kept;
  const printed = Object.entries(limits.printed).filter(([side]) => side.startsWith('new.'));
  const only: Limits = { new: limits.new, goesBack: limits.new, printed: Object.fromEntries(printed) };
  madeOnly.set(limits, only);
  return only;
};

/**
 * Limits of a characteristic at a place on this sheet.
 *
 * @param sheet           its engine type, the sizes at which parts are fitted, and by which limits it is judged
 * @param characteristic  name
 * @param place           id of a place of its kind
 * @returns limits of the rework step fitted there, else those as made; undefined where the manual gives none
 */
export const limitsOf = (sheet: Sheet, characteristic: string, place: string): Limits | undefined => {
  const owner = ownersOf(sheet.engine).get(characteristic);
  const at = owner && sheet.engine.places.get(place);
  const fitted = at && fittedSize(sheet, owner.name, operandPlace(sheet.engine, at, owner.at));
  const step = fitted && owner.sizes?.steps.find(({ name }) => name === fitted);
  const limits = step ? step.limits : sheet.engine.characteristics.get(characteristic)?.limits;
  return limits && sheet.against === 'as made' ? asMade(limits) : limits;
};
