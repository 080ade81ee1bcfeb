/** @module One number as read: where, with what, by whom, and as typed. */
import type { PlaceId } from '../engine/engine-type.ts';
import type { Typed } from '../quantity/typed.ts';

/** The cell of the measuring scheme that a reading fills; plane and axis are `''` where the scheme names none. */
export interface Cell {
  readonly place: PlaceId;
  readonly characteristic: string;
  readonly plane: string;
  readonly axis: string;
}

export interface Reading {
  readonly id: string;
  readonly cell: Cell;
  readonly typed: Typed;
  /** The instrument's name in the register. */
  readonly instrument: string;
  /** Temperature of the part, as typed; 20 °C is taken where none was. */
  readonly temperature?: Typed;
  /** Temperature of the instrument, as typed; that of the part is taken where none was. */
  readonly instrumentTemperature?: Typed;
  /** The day on which it was taken, `2026-03-02`, where that is known. */
  readonly on?: string;
}

export const cellKey = ({ place, characteristic, plane, axis }: Cell): string =>
  `${place}|${characteristic}|${plane}|${axis}`;
