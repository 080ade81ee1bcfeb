/** @module Reaching a place: the least that must come off, what that spoils, and what is to be fitted and set again. */
import type { Component, EngineType, OneUse, Operation, PlaceId } from '../engine/engine-type.ts';
import { chooseName } from '../engine/nearest-name.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { doneAgain, spoiltBy } from './done-again.ts';
import { orderOf } from './order.ts';
import { precedenceOf } from './precedence.ts';
import { leftOf, openedBy, wayTo } from './way-to.ts';
import { placesWith, type Worked, workedAt, worksOn } from './worked-at.ts';

export interface Reach {
  /** The place or kind of place, for reading aloud. */
  readonly title: string;
  /** What is still to be done to reach it, in its order; empty where it is open already. */
  readonly strip: readonly Operation[];
  /** Where each of these is worked, of the places of some kind. */
  readonly placesAt: (operation: string, kind: string) => readonly PlaceId[];
  /** What comes off on the way. */
  readonly off: readonly string[];
  /** Parts used but once that are spoilt on the way. */
  readonly spoilt: readonly { readonly item: OneUse; readonly count: number }[];
  /** Components that are not put back afterwards. */
  readonly renew: readonly Component[];
  /** What is to be fitted and set again, in its order. */
  readonly again: readonly Operation[];
  /** Characteristics to be proved on the way back. */
  readonly prove: readonly string[];
}

type Engine = Pick<
  EngineType,
  'operations' | 'placeKinds' | 'places' | 'oneUse' | 'components' | 'couplings' | 'fasteners'
>;

const renewedBy = ({ couplings, components }: Engine, strip: ReadonlySet<string>): readonly Component[] =>
  [...components.values()].filter(({ name }) =>
    couplings.some(
      (coupling) =>
        coupling.kind === 'disturbed' &&
        coupling.renew === name &&
        coupling.by !== undefined &&
        strip.has(coupling.by),
    ),
  );

/** A way that was found: how it ends, and of the operations to it those in question. */
interface Found {
  readonly title: string;
  readonly opening: readonly Operation[];
  readonly strip: readonly Operation[];
  /** Of the places asked for. */
  readonly worked: Worked;
}

const brought = (engine: Engine, { title, opening, strip, worked }: Found): Reach => {
  const names = new Set(strip.map(({ name }) => name));
  const off = new Set(strip.flatMap(({ removes }) => removes));
  const spoilt = spoiltBy(engine, names);
  const at = workedAt(
    engine,
    strip,
    opening.map((operation) => [operation, worksOn(engine, operation, worked)] as const),
  );
  const placesAt: Reach['placesAt'] = (operation, kind) =>
    placesWith(engine, kind, at.get(operation) ?? 'all');
  const open = new Set(openedBy(engine, strip).map(([kind]) => kind));
  const again = doneAgain(engine, { off, open, spoilt: new Set(spoilt.map(({ name }) => name)) });
  const inOrder = (chosen: ReadonlySet<string>): readonly Operation[] =>
    orderOf(precedenceOf(engine.operations, ({ name }) => chosen.has(name)));
  const back = inOrder(again);
  return {
    title,
    strip: inOrder(names),
    placesAt,
    off: [...off],
    spoilt: spoilt.map((item) => {
      const spoiling = item.disturbedBy.filter((name) => names.has(name));
      const places = new Set(spoiling.flatMap((name) => placesAt(name, item.at)));
      return { item, count: item.each * places.size };
    }),
    renew: renewedBy(engine, names),
    again: back,
    // What is read again was set on the way, and stands here by that.
    prove: [...new Set(back.flatMap(({ needs, readAgain }) => (readAgain ? [] : needs)))],
  };
};

const wayFor = (
  engine: Engine,
  asked: string,
  done: ReadonlySet<string>,
): Answer<Found & { readonly whole: readonly Operation[] }> => {
  const place = engine.places.get(asked);
  const kind = engine.placeKinds.get(place?.kind ?? asked);
  if (kind === undefined) {
    const known = [...engine.placeKinds.keys(), ...engine.places.keys()];
    return refuse(`there is no place ${asked.slice(0, 64)}`, 'order of work', chooseName(asked, known));
  }
  const least = wayTo(engine, kind.name, done);
  if (least === undefined)
    return refuse(
      `no operation of the strip takes ${kind.title} off or lays it open`,
      'order of work',
      `say so in the engine type: \`at: ${kind.name}\` or \`removes\` at the operation that does, or \`covers\` at the one that hides it`,
    );
  return answer({
    title: place?.title ?? kind.title,
    opening: least.opening,
    strip: least.left,
    whole: leftOf(engine, least.opening, new Set()),
    worked: place === undefined ? 'all' : { of: kind.count, numbers: new Set([place.number]) },
  });
};

/**
 * The smallest strip that reaches a place: the fewest operations, of as many the quickest.
 *
 * @param engine  its operations say what they take off, fit and cover
 * @param asked   a place, `main.2`, or a kind of place, `main`
 * @param done    operations that are done already
 * @returns the strip and what it brings with it; refuses a place that is not known or that no operation lays open
 */
export const reach = (
  engine: Engine,
  asked: string,
  done: ReadonlySet<string> = new Set(),
): Answer<Reach> => {
  const found = wayFor(engine, asked, done);
  return found.kind === 'refused' ? found : answer(brought(engine, found.value));
};

/**
 * The same way from its beginning, with what is done of it already and what that brought with it.
 *
 * @param done  operations that are done already: the way is the one on which least is left
 */
export const wholeWay = (engine: Engine, asked: string, done: ReadonlySet<string>): Answer<Reach> => {
  const found = wayFor(engine, asked, done);
  return found.kind === 'refused'
    ? found
    : answer(brought(engine, { ...found.value, strip: found.value.whole }));
};
