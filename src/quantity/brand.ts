/** @module Branded numbers: what a plain number means inside the core. */

declare const brand: unique symbol;
type Branded<Name extends string> = number & { readonly [brand]: Name };

export type Millimetres = Branded<'mm'>;
export type Radians = Branded<'rad'>;
export type Newtons = Branded<'N'>;
export type NewtonMetres = Branded<'N·m'>;
/** Running hours of an engine. */
export type Hours = Branded<'h'>;

export const mm = (value: number): Millimetres => value as Millimetres;
export const radians = (value: number): Radians => value as Radians;
export const degrees = (value: number): Radians => ((value * Math.PI) / 180) as Radians;
export const toDegrees = (angle: Radians): number => (angle * 180) / Math.PI;
export const newtons = (value: number): Newtons => value as Newtons;
export const newtonMetres = (value: number): NewtonMetres => value as NewtonMetres;
export const hours = (value: number): Hours => value as Hours;
