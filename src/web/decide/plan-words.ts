/** @module Slots in words, money and hours as they are written. */
import type { EngineType } from '../../engine/engine-type.ts';

/** A slot in words: `pistons, piston 2`. */
export const slotWords = (engine: EngineType, slot: string): string => {
  const [component = slot, place] = slot.split('@');
  const title = engine.components.get(component)?.title ?? component;
  return place === undefined ? title : `${title}, ${engine.places.get(place)?.title ?? place}`;
};

/** `1,234.50`, where the currency stands at the head of the column. */
export const amount = (cents: number): string =>
  (cents / 100).toLocaleString('en-GB', { minimumFractionDigits: 2, maximumFractionDigits: 2 });

export const money = (cents: number, currency: string): string => `${amount(cents)} ${currency}`;

export const hoursText = (hours: number): string =>
  Number.isFinite(hours) ? `${Math.floor(hours).toLocaleString('en-GB')} h` : 'no limit known';
