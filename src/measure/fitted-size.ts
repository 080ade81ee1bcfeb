/** @module At which size the part of a component at a place is fitted now. */
import type { Component, EngineType } from '../engine/engine-type.ts';
import { operandPlace } from './expression.ts';
import type { Sheet, Sizes } from './sheet.ts';

/** What is known of sizes on a sheet. */
export type SizedSheet = Pick<Sheet, 'engine' | 'sizesFound' | 'sizesReceived' | 'former'>;

const keyOf = (component: string, place: string): string => `${component}@${place}`;

/** The places of a component, in order. */
export const placesOfComponent = (engine: EngineType, { at }: Component): readonly string[] =>
  [...engine.places.values()].filter(({ kind }) => kind === at).map(({ id }) => id);

/** Of one place, or of all places of the component where none is named. */
export interface NotedSize {
  readonly component: string;
  readonly place?: string;
  readonly size: string;
}

/** Sizes with one more; what is noted of all takes the place of what was noted of each before. */
const withSize = (sizes: Sizes, { component, place, size }: NotedSize): Sizes => {
  if (place !== undefined) return new Map(sizes).set(keyOf(component, place), size);
  const others = [...sizes].filter(([key]) => !key.startsWith(keyOf(component, '')));
  return new Map(others).set(component, size);
};

const received = (sheet: Sheet, size: NotedSize): Sheet => ({
  ...sheet,
  sizesReceived: withSize(sheet.sizesReceived ?? new Map(), size),
});

/** A sheet with the size of what has come for some places of a component. */
export const withReceived = (
  sheet: Sheet,
  component: string,
  places: readonly string[],
  size: string,
): Sheet => {
  const known = sheet.engine.components.get(component);
  const all =
    known !== undefined && placesOfComponent(sheet.engine, known).every((id) => places.includes(id));
  return all
    ? received(sheet, { component, size })
    : places.reduce((now, place) => received(now, { component, place, size }), sheet);
};

/** A sheet with a size as found. Where another part has come since it was this one that was looked at. */
export const withFound = (sheet: Sheet, size: NotedSize): Sheet => {
  const { component, place } = size;
  const ofAll = place === undefined;
  const come = [...(sheet.sizesReceived ?? [])].some(
    ([key]) =>
      key === component || (ofAll ? key.startsWith(keyOf(component, '')) : key === keyOf(component, place)),
  );
  return come ? received(sheet, size) : { ...sheet, sizesFound: withSize(sheet.sizesFound, size) };
};

const noted = (sizes: Sizes | undefined, component: string, place: string): string | undefined =>
  sizes?.get(keyOf(component, place)) ?? sizes?.get(component);

/** The component whose size another follows, where the engine type says that they are of the same size. */
const leaderOf = (engine: EngineType, component: string): Component | undefined => {
  for (const coupling of engine.couplings)
    if (coupling.kind === 'same size' && coupling.follower === component)
      return engine.components.get(coupling.leader);
  return undefined;
};

/** As found: noted of its own place, else of the part that it follows. */
const foundAt = (
  sheet: SizedSheet,
  component: string,
  place: string,
  passed: readonly string[] = [],
): string | undefined => {
  const own = noted(sheet.sizesFound, component, place);
  const leader = own === undefined ? leaderOf(sheet.engine, component) : undefined;
  const at = sheet.engine.places.get(place);
  // Couplings in a ring are the linter's to tell; they end here.
  if (!leader || !at || passed.includes(leader.name)) return own;
  return foundAt(sheet, leader.name, operandPlace(sheet.engine, at, leader.at), [...passed, component]);
};

const leftAt = ({ former }: SizedSheet, component: string, place: string): string | undefined =>
  former?.sizes?.find((left) => left.component === component && left.place === place)?.size;

/**
 * The size at which a component's part at a place is fitted now.
 *
 * What has come for the place since counts first; then what was found there; then what was found of the part whose size
 * it follows, as pistons follow their bores; then what the former overhaul left; else it is as made.
 *
 * @param sheet      its engine type, and the sizes found, received and left before
 * @param component  name in the engine type
 * @param place      id of one of its places
 * @returns name of the size, `standard` as made
 */
export const fittedSize = (sheet: SizedSheet, component: string, place: string): string =>
  noted(sheet.sizesReceived, component, place) ??
  foundAt(sheet, component, place) ??
  leftAt(sheet, component, place) ??
  'standard';

/**
 * Sizes of several places in words: `0.50` where they are one, else the commonest before those that differ,
 * `standard, bore.2 at 0.50`.
 */
export const sizesInWords = (sizes: readonly (readonly [place: string, size: string])[]): string => {
  const bySize = [...Map.groupBy(sizes, ([, size]) => size)].toSorted((a, b) => b[1].length - a[1].length);
  const [most, ...others] = bySize;
  return [
    most?.[0] ?? 'standard',
    ...others.map(([size, at]) => `${at.map(([place]) => place).join(' and ')} at ${size}`),
  ].join(', ');
};
