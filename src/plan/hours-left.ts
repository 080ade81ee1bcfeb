/** @module Hours that a used part has left: its wear so far, carried on at the same rate to its wear limit. */
import type { Characteristic, Limits } from '../engine/engine-type.ts';
import { type Hours, hours } from '../quantity/brand.ts';

/**
 * Hours left to the wear limit at the rate of wear so far.
 *
 * hours left = hours run × (limit - size) / (size - size as made), with the size as made taken at the end of the
 * limits as made that makes most wear of it, so that the hours are rather too few. Where the hours run are not
 * known, the life of a new part is shared out in the same proportion.
 *
 * @param size            worst size, mm
 * @param limits          its limits
 * @param wears           which way wear takes it; `either` tells no rate
 * @param run             hours run since new or last machined, 0 where not known
 * @param life            hours expected of a new one; nothing put back is promised more, above 0
 * @returns hours, 0 to life; 0 at or beyond the limit
 * @source  TM 5-3895-346-14 (wear over hours, carried on to the next overhaul); the choice of size as made is
 *   common practice, no source
 * @example hoursLeft(54.95, { new: { least: mm(54.97), greatest: mm(54.99) }, goesBack: { least: mm(54.93), greatest: mm(54.99) }, printed: {} }, 'smaller', hours(6000), hours(9000)) // 3000 h
 */
export const hoursLeft = (
  size: number,
  limits: Limits,
  wears: Characteristic['wears'],
  run: Hours,
  life: Hours,
): Hours => {
  if (wears === 'either') return life;
  const smaller = wears === 'smaller';
  const limit = smaller ? limits.goesBack.least : limits.goesBack.greatest;
  const made = smaller
    ? (limits.new.greatest ?? limits.new.least)
    : (limits.new.least ?? limits.new.greatest);
  if (limit === undefined || made === undefined) return life;
  const worn = smaller ? made - size : size - made;
  const left = smaller ? size - limit : limit - size;
  if (left <= 0) return hours(0);
  if (worn <= 0) return life;
  return hours(Math.min(life, run > 0 ? (run * left) / worn : (life * left) / (left + worn)));
};
