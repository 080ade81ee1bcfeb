/** @module What is measured of a part when it comes from its supplier: which characteristics, at which places. */
import type { Characteristic, Component, EngineType } from '../../engine/engine-type.ts';
import { operandsOf } from '../../engine/expression.ts';
import { operandPlace } from '../../measure/expression.ts';
import type { Cell } from '../../measure/reading.ts';
import { cellsOf, placesOf } from '../../measure/scheme.ts';

/**
 * Characteristics measured on arrival: those that the engine type names for it; else the measured ones that it is
 * judged by, and the sums of these alone. A fit with another part is proved at the build.
 */
export const arrivalOf = (engine: EngineType, component: Component): readonly Characteristic[] => {
  const named = (component.arrival ?? component.judgedBy).flatMap(
    (name) => engine.characteristics.get(name) ?? [],
  );
  if (component.arrival !== undefined) return named;
  const own = new Set(named.filter(({ derived }) => derived === undefined).map(({ name }) => name));
  return named.filter(
    ({ derived }) => derived === undefined || operandsOf(derived).every(({ of }) => own.has(of)),
  );
};

/** Where a characteristic of a part is found, when the part belongs at some places. */
export const placesIn = (
  engine: EngineType,
  component: Component,
  characteristic: Characteristic,
  places: readonly string[],
): readonly string[] => {
  if (component.together) return placesOf(engine, characteristic).map(({ id }) => id);
  const found = places.flatMap((id) => {
    const place = engine.places.get(id);
    return place === undefined ? [] : [operandPlace(engine, place, characteristic.at)];
  });
  return [...new Set(found)];
};

/** The cells that are read of a part when it comes. */
export const arrivalCells = (
  engine: EngineType,
  component: Component,
  places: readonly string[],
): readonly Cell[] =>
  arrivalOf(engine, component).flatMap((characteristic) =>
    placesIn(engine, component, characteristic, places).flatMap((place) =>
      cellsOf(engine, characteristic.name, place),
    ),
  );

/** Everything that is read of a part itself: once it is machined or another, what was read before no longer counts. */
export const ownCells = (
  engine: EngineType,
  component: Component,
  places: readonly string[],
): readonly Cell[] =>
  [...new Set([...component.judgedBy, ...(component.arrival ?? [])])].flatMap((name) => {
    const characteristic = engine.characteristics.get(name);
    return characteristic === undefined
      ? []
      : placesIn(engine, component, characteristic, places).flatMap((place) => cellsOf(engine, name, place));
  });
