/** @module Reaching a place: the least that must come off, what that spoils, and what is to be fitted and set again. */
import type { Component, EngineType, OneUse, Operation } from '../engine/engine-type.ts';
import { chooseName } from '../engine/nearest-name.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { doneAgain, spoiltBy } from './done-again.ts';
import { orderOf } from './order.ts';
import { precedenceOf } from './precedence.ts';
import { wayTo } from './way-to.ts';

export interface Reach {
  /** The place or kind of place, for reading aloud. */
  readonly title: string;
  /** What is still to be done to reach it, in its order; empty where it is open already. */
  readonly strip: readonly Operation[];
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
  'operations' | 'placeKinds' | 'places' | 'oneUse' | 'components' | 'couplings'
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
  const strip = new Set(least.left.map(({ name }) => name));
  const off = new Set(least.left.flatMap(({ removes }) => removes));
  const spoilt = spoiltBy(engine, strip);
  const again = doneAgain(engine, off, new Set(spoilt.map(({ name }) => name)));
  const inOrder = (names: ReadonlySet<string>): readonly Operation[] =>
    orderOf(precedenceOf(engine.operations, ({ name }) => names.has(name)));
  const back = inOrder(again);
  return answer({
    title: place?.title ?? kind.title,
    strip: inOrder(strip),
    off: [...off],
    spoilt: spoilt.map((item) => ({ item, count: item.each * (engine.placeKinds.get(item.at)?.count ?? 0) })),
    renew: renewedBy(engine, strip),
    again: back,
    prove: [...new Set(back.flatMap(({ needs }) => needs))],
  });
};
