/** @module The measuring scheme spelled out: which cells a characteristic has, and in which order hands fill them. */
import type { Characteristic, EngineType, Place } from '../engine/engine-type.ts';
import { type Cell, cellKey } from './reading.ts';
import type { Sheet } from './sheet.ts';

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

/**
 * Where hands go from a cell just read: to the next one that is unread, round the engine if need be. A cell that
 * was read again leads to its neighbour, since its whole place is being gone over.
 *
 * @param order  cells in the order in which hands go
 * @param cell   the one just read
 * @param sheet  as it stands with that reading in it
 * @returns the next cell; undefined past the last when nothing is left
 * @source  common practice, no source
 */
export const cellAfter = (order: readonly Cell[], cell: Cell, sheet: Sheet): Cell | undefined => {
  const key = cellKey(cell);
  const at = order.findIndex((one) => cellKey(one) === key);
  const next = order[at + 1];
  if ((sheet.readings.get(key)?.length ?? 0) > 1) return next;
  const unread = (one: Cell) => !sheet.readings.has(cellKey(one));
  return order.slice(at + 1).find(unread) ?? order.find(unread) ?? next;
};
