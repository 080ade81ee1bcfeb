/** @module A cell of the measuring scheme in words. */
import type { EngineType } from '../engine/engine-type.ts';
import type { Cell } from '../measure/reading.ts';

/** Where a cell is, in words: `main bearing 2, journal diameter, front, vertical`. */
export const cellTitle = (engine: EngineType, { place, characteristic, plane, axis }: Cell): string =>
  [
    engine.places.get(place)?.title ?? place,
    engine.characteristics.get(characteristic)?.title ?? characteristic,
    plane,
    axis,
  ]
    .filter((part) => part !== '')
    .join(', ');
