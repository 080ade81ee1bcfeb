/** @module Places, characteristics and cells by the names that a reader of the record knows. */
import type { EngineType } from '../../engine/engine-type.ts';
import type { Cell } from '../../measure/reading.ts';

export const placeTitle = (engine: EngineType, place: string): string =>
  engine.places.get(place)?.title ?? place;

export const characteristicTitle = (engine: EngineType, characteristic: string): string =>
  engine.characteristics.get(characteristic)?.title ?? characteristic;

export const componentTitle = (engine: EngineType, component: string): string =>
  engine.components.get(component)?.title ?? component;

export const operationTitle = (engine: EngineType, operation: string): string =>
  engine.operations.get(operation)?.title ?? operation;

/** `front, vertical`; nothing where the scheme names neither plane nor axis. */
export const whereIn = (cell: Pick<Cell, 'plane' | 'axis'>): string =>
  [cell.plane, cell.axis].filter((part) => part !== '').join(', ');

/** A slot `pistons@piston.2` in words: `Pistons, piston 2`. */
export const slotTitle = (engine: EngineType, slot: string): string => {
  const [component = slot, place] = slot.split('@');
  const title = componentTitle(engine, component);
  const at = place === undefined ? title : placeTitle(engine, place);
  return at === title ? title : `${title}, ${at}`;
};
