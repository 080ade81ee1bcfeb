/** @module How far an overhaul goes: its operations, the places that it lays open, the characteristics that it puts in question. */
import type { Characteristic, EngineType, Operation, PlaceId } from '../engine/engine-type.ts';
import { operandsOf } from '../engine/expression.ts';
import { chooseName } from '../engine/nearest-name.ts';
import { operandPlace } from '../measure/expression.ts';
import { placesOf } from '../measure/scheme.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { doneAgain, spoiltBy } from './done-again.ts';
import { precedenceOf } from './precedence.ts';
import { leftOf, openedBy, wayTo } from './way-to.ts';
import { placesWith, type Worked, type WorkedAt, workedAt, worksOn } from './worked-at.ts';

/** What is asked to be reached; nothing at all asks for the whole engine. */
export interface Asked {
  /** Places, `pump.1`, or kinds of place, `head`. */
  readonly reach: readonly string[];
  /** Operations that are done as well. */
  readonly also?: readonly string[];
}

export interface Extent {
  /** All of it comes apart. */
  readonly whole: boolean;
  readonly operations: ReadonlySet<string>;
  /** Those of them directly before each, seen through what is never undone. */
  readonly before: ReadonlyMap<string, readonly string[]>;
  /** Places taken off, laid open, or whose parts do not go back. */
  readonly open: ReadonlySet<PlaceId>;
  /** Where each operation is done, of the places of some kind; all of them where they go together. */
  readonly placesAt: (operation: string, kind: string) => ReadonlySet<PlaceId>;
  /** Whether a characteristic at a place is laid open, or to be proved on the way back. */
  readonly inQuestion: (characteristic: string, place: PlaceId) => boolean;
}

/** Places that operations of the strip take off, lay open or whose parts they spoil. */
const opened = (engine: EngineType, strip: readonly Operation[], at: WorkedAt): ReadonlySet<PlaceId> =>
  new Set(
    openedBy(engine, strip).flatMap(([kind, { name }]) => placesWith(engine, kind, at.get(name) ?? 'all')),
  );

const keyOf = (characteristic: string, place: PlaceId): string => `${characteristic}|${place}`;

/** What a characteristic at a place is computed from; where places are compared, all of them. */
const operandsAt = (
  engine: EngineType,
  { derived }: Characteristic,
  place: PlaceId,
): readonly (readonly [Characteristic, PlaceId])[] => {
  const here = engine.places.get(place);
  if (derived === undefined || here === undefined) return [];
  return operandsOf(derived).flatMap(({ of, kind }) => {
    const operand = engine.characteristics.get(of);
    if (operand === undefined) return [];
    return kind === 'range over places' || kind === 'range over neighbours'
      ? placesOf(engine, operand).map(({ id }) => [operand, id] as const)
      : [[operand, operandPlace(engine, here, operand.at)] as const];
  });
};

/** Characteristics that operations need proved or ask to be read, at their places, with all that they are computed from. */
const proved = (engine: EngineType, operations: readonly Operation[], at: WorkedAt): ReadonlySet<string> => {
  const found = new Set<string>();
  // What is read again was set in this very job, or it is none of its business.
  const first = new Set(operations.flatMap(({ needs, readAgain }) => (readAgain ? [] : needs)));
  const ahead = operations.flatMap(({ name, needs, readAgain, asks }) =>
    [
      ...needs.filter((need) => !readAgain || first.has(need)),
      ...asks.flatMap(({ reads }) => reads ?? []),
    ].flatMap((need) => {
      const needed = engine.characteristics.get(need);
      if (needed === undefined) return [];
      return placesWith(engine, needed.at, at.get(name) ?? 'all').map((place) => [needed, place] as const);
    }),
  );
  for (let next = ahead.pop(); next !== undefined; next = ahead.pop()) {
    const key = keyOf(next[0].name, next[1]);
    if (found.has(key)) continue;
    found.add(key);
    ahead.push(...operandsAt(engine, ...next));
  }
  return found;
};

const questions = (
  engine: EngineType,
  open: ReadonlySet<PlaceId>,
  needed: ReadonlySet<string>,
): Extent['inQuestion'] => {
  const within = (name: string, place: PlaceId, seen: ReadonlySet<string>): boolean => {
    const key = keyOf(name, place);
    if (needed.has(key)) return true;
    const characteristic = engine.characteristics.get(name);
    if (characteristic === undefined || !open.has(place) || seen.has(key)) return false;
    const deeper = new Set(seen).add(key);
    return operandsAt(engine, characteristic, place).every(([one, there]) => within(one.name, there, deeper));
  };
  return (name, place) => within(name, place, new Set());
};

/** All that an engine type knows of. */
export const wholeEngine = (engine: EngineType): Extent => {
  const { operations, before } = precedenceOf(engine.operations);
  return {
    whole: true,
    operations: new Set(engine.operations.keys()),
    before: new Map(
      operations.map(({ name }, at) => [name, (before[at] ?? []).map((one) => operations[one]?.name ?? '')]),
    ),
    open: new Set(engine.places.keys()),
    placesAt: (_, kind) => new Set(placesWith(engine, kind, 'all')),
    inQuestion: () => true,
  };
};

/** Whether every place that can be laid open at all is open: then it is no part of an overhaul, but all of it. */
const opensAll = (engine: EngineType, open: ReadonlySet<PlaceId>): boolean => {
  const places = [...engine.places.values()].filter(({ id }) => !open.has(id));
  return open.size > 0 && places.every(({ kind }) => wayTo(engine, kind, new Set()) === undefined);
};

/** What each place asked for takes: the operations that lay it open, and at which places. */
const waysAsked = (engine: EngineType, asked: string): Answer<readonly (readonly [Operation, Worked])[]> => {
  const place = engine.places.get(asked);
  const kind = engine.placeKinds.get(place?.kind ?? asked);
  if (kind === undefined) {
    const known = [...engine.placeKinds.keys(), ...engine.places.keys()];
    return refuse(`there is no place ${asked.slice(0, 64)}`, 'scope', chooseName(asked, known));
  }
  const way = wayTo(engine, kind.name, new Set());
  if (way === undefined)
    return refuse(
      `no operation of the strip takes ${kind.title} off or lays it open`,
      'scope',
      'name another place, or leave the scope at a whole overhaul',
    );
  const worked: Worked = place === undefined ? 'all' : { of: kind.count, numbers: new Set([place.number]) };
  return answer(way.opening.map((operation) => [operation, worksOn(engine, operation, worked)]));
};

/**
 * How far an overhaul goes that reaches some places and no more.
 *
 * @param engine  its operations free of circles
 * @param asked   what is to be reached; nothing, or all that can be stripped: the whole engine
 * @param done    operations of the strip that are done already: they are part of it
 * @returns refuses a place or an operation that is not known, and a place that nothing lays open
 */
export const extentOf = (
  engine: EngineType,
  { reach, also = [] }: Asked,
  done: ReadonlySet<string> = new Set(),
): Answer<Extent> => {
  if (reach.length === 0 && also.length === 0) return answer(wholeEngine(engine));
  const strange = also.find((name) => !engine.operations.has(name));
  if (strange !== undefined)
    return refuse(
      `there is no operation ${strange.slice(0, 64)}`,
      'scope',
      chooseName(strange, engine.operations.keys()),
    );
  const begun: (readonly [Operation, Worked])[] = [];
  for (const one of reach) {
    const ways = waysAsked(engine, one);
    if (ways.kind === 'refused') return ways;
    begun.push(...ways.value);
  }
  const asked = new Set(begun.map(([{ name }]) => name));
  const beside = [...engine.operations.values()].filter(
    ({ name, phase }) => phase === 'strip' && (also.includes(name) || (done.has(name) && !asked.has(name))),
  );
  begun.push(...beside.map((operation) => [operation, 'all'] as const));
  const strip = leftOf(
    engine,
    begun.map(([operation]) => operation),
    new Set(),
  ).filter(({ phase }) => phase === 'strip');
  const at = workedAt(engine, strip, begun);
  const open = opened(engine, strip, at);
  if (opensAll(engine, open)) return answer(wholeEngine(engine));
  const off = new Set(strip.flatMap(({ removes }) => removes));
  const stripped = new Set(strip.map(({ name }) => name));
  const spoilt = new Set(spoiltBy(engine, stripped).map(({ name }) => name));
  const kinds = new Set([...open].flatMap((id) => engine.places.get(id)?.kind ?? []));
  const names = new Set([...stripped, ...doneAgain(engine, { off, open: kinds, spoilt }, new Set(also))]);
  const { operations, before } = precedenceOf(engine.operations, ({ name }) => names.has(name));
  const everywhere: WorkedAt = new Map([
    ...at,
    ...operations
      .filter(({ phase }) => phase !== 'strip')
      .map((operation) => [operation.name, worksOn(engine, operation, open)] as const),
  ]);
  return answer({
    whole: false,
    operations: names,
    before: new Map(
      operations.map(({ name }, one) => [
        name,
        (before[one] ?? []).map((two) => operations[two]?.name ?? ''),
      ]),
    ),
    open,
    placesAt: (operation, kind) => new Set(placesWith(engine, kind, everywhere.get(operation) ?? 'all')),
    inQuestion: questions(engine, open, proved(engine, operations, everywhere)),
  });
};
