/** @module The measuring scheme spelled out: which cells a characteristic has, and in which order hands fill them. */
import type { Characteristic, EngineType, Place } from '../engine/engine-type.ts';
import type { Cell } from './reading.ts';

/** Places where a characteristic is found, in the order of the engine type. */
export const placesOf = (engine: EngineType, characteristic: Characteristic): readonly Place[] =>
  [...engine.places.values()].filter((place) => place.kind === characteristic.at);

/**
 * Cells of a characteristic at one place: plane by plane, and in each plane axis by axis, so that the
 * instrument is turned before it is moved. None for a derived characteristic, which nobody reads.
 *
 * @param engine          engine type
 * @param characteristic  its name in the engine type
 * @param place           id of a place of the kind that the characteristic is at
 * @returns cells in the order in which they are taken; none where the names do not go together
 * @source  ISO 14405-1: two-point sizes named by plane and axis; the order is common practice, no source
 */
export const cellsOf = (engine: EngineType, characteristic: string, place: string): readonly Cell[] => {
  const known = engine.characteristics.get(characteristic);
  if (!known || known.derived || engine.places.get(place)?.kind !== known.at) return [];
  return known.planes.flatMap((plane) => known.axes.map((axis) => ({ place, characteristic, plane, axis })));
};

/**
 * Every cell of an engine in the order in which hands go: one characteristic at all its places before the
 * next, so that the instrument stays in the hand.
 *
 * @param engine  engine type; its characteristics stand in the order in which they are measured
 * @returns all measured cells, each once
 * @source  common practice, no source
 */
export const entryOrder = (engine: EngineType): readonly Cell[] =>
  [...engine.characteristics.values()].flatMap((characteristic) =>
    placesOf(engine, characteristic).flatMap((place) => cellsOf(engine, characteristic.name, place.id)),
  );
