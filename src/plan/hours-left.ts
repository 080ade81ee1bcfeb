/** @module How long a used part lasts by one of its sizes: its wear so far carried on to its wear limit. */
import type { Characteristic, Component, Limits } from '../engine/engine-type.ts';
import type { Hours } from '../quantity/brand.ts';
import { standardUncertainty, type Uncertain } from '../quantity/uncertain.ts';
import { type Life, usualLifeOf, usualSpread } from './life.ts';

/**
 * A figure with no lower limit as made is taken to have been anything from nothing up where its wear limit lies a
 * fifth above the limit as made: ovality, taper, run-out, flatness. No diameter wears by a fifth of itself.
 */
const formWears = 1.2;

/** Between what figures it was made; where one end is not stated, the other stands for both. */
const madeWithin = (
  made: Limits['new'],
  wears: 'smaller' | 'larger',
  limit: number,
): { readonly least: number; readonly greatest: number } | undefined => {
  const least = made.least ?? made.greatest;
  const greatest = made.greatest ?? made.least;
  if (least === undefined || greatest === undefined) return undefined;
  const form = made.least === undefined && wears === 'larger' && greatest >= 0;
  return { least: form && limit >= formWears * greatest ? 0 : least, greatest };
};

/**
 * How long a used part lasts by one of its sizes.
 *
 * Its wear so far is carried on to its limit, with what is not known of size as found, size as made and rate to come.
 * Nothing put back is likelier to last than a new one. Where the hours run are not known, the life of a new one is
 * shared out by how much of the wear allowed is left, the size as made taken where that makes most wear of it.
 *
 * @param size       worst size, in the unit of its characteristic
 * @param limits     its limits
 * @param wears      which way wear takes it; `either` tells no rate, so that the usual life stands
 * @param run        hours run since new or last machined, 0 where not known
 * @param component  for its usual life, and by how much its wear varies
 * @param of         what is worn, in words
 * @source  TM 5-3895-346-14 (wear over hours, carried on to the next overhaul); how sizes as made are taken is common
 *   practice, no source
 */
export const lifeBySize = (
  size: Uncertain,
  limits: Limits,
  wears: Characteristic['wears'],
  run: Hours,
  component: Pick<Component, 'life' | 'lifeMiddle' | 'wearVaries'>,
  of: string,
): Life => {
  const usual = usualLifeOf(component);
  if (wears === 'either') return usual;
  const limit = wears === 'smaller' ? limits.goesBack.least : limits.goesBack.greatest;
  const made = limit === undefined ? undefined : madeWithin(limits.new, wears, limit);
  if (limit === undefined || made === undefined) return usual;
  if (run > 0) {
    const wear = { wears, size: size.value, uncertainty: standardUncertainty(size), made, limit, run };
    const scatter = component.wearVaries ?? usualSpread;
    const worn: Life = { kind: 'worn', wear: { ...wear, scatter }, restsOn: "this engine's wear", of };
    return { kind: 'shortest', of: [usual, worn] };
  }
  const worn = Math.max(0, wears === 'smaller' ? made.greatest - size.value : size.value - made.least);
  const left = Math.max(0, wears === 'smaller' ? size.value - limit : limit - size.value);
  return { kind: 'rest of usual', share: left === 0 ? 0 : left / (left + worn), usual };
};
