/** @module The way to a kind of place: the strip operation that takes it off, or those that lay it open. */
import type { EngineType, Operation } from '../engine/engine-type.ts';
import { workBefore } from '../engine/work-before.ts';

type Engine = Pick<EngineType, 'operations'>;

export interface WayTo {
  /** The operations that lay it open, without what comes before them. */
  readonly opening: readonly Operation[];
  /** These and all before them that are still to do, in the order of the engine type. */
  readonly left: readonly Operation[];
}

/** Sets of operations, each of which lays the kind of place open; one of them is enough. */
const waysTo = ({ operations }: Engine, kind: string): readonly (readonly Operation[])[] => {
  const strip = [...operations.values()].filter(({ phase }) => phase === 'strip');
  const there = strip.filter(({ at, removes }) => at === kind || removes.includes(kind));
  if (there.length > 0) return there.map((operation) => [operation]);
  const hiding = [...operations.values()].filter(({ covers }) => covers.includes(kind));
  const parts = new Set(hiding.flatMap(({ fits }) => fits));
  const opening = strip.filter(({ removes }) => removes.some((part) => parts.has(part)));
  return opening.length > 0 ? [opening] : [];
};

const minutesOf = (operations: Iterable<Operation>): number =>
  [...operations].reduce((sum, { minutes }) => sum + (minutes ?? 0), 0);

/** What is left to do of some operations and all before them. */
export const leftOf = (
  engine: Engine,
  way: readonly Operation[],
  done: ReadonlySet<string>,
): readonly Operation[] => {
  const names = new Set(way.flatMap(({ name }) => [name, ...workBefore(engine, name)]));
  return [...engine.operations.values()].filter(({ name }) => names.has(name) && !done.has(name));
};

/** The way with the fewest operations, of as many the quickest; undefined where no operation leads there. */
export const wayTo = (engine: Engine, kind: string, done: ReadonlySet<string>): WayTo | undefined => {
  const ways = waysTo(engine, kind).map((opening) => {
    const left = leftOf(engine, opening, done);
    return { opening, left, minutes: minutesOf(left) };
  });
  return ways.sort((a, b) => a.left.length - b.left.length || a.minutes - b.minutes)[0];
};

/** What operations of the strip take off, lay open or whose parts they spoil: kinds of place, each with the operation. */
export const openedBy = (
  engine: Engine & Pick<EngineType, 'placeKinds' | 'couplings' | 'components'>,
  strip: readonly Operation[],
): readonly (readonly [kind: string, by: Operation])[] => {
  const byName = new Map(strip.map((operation) => [operation.name, operation]));
  const taken = strip.flatMap((operation) =>
    [...operation.removes, ...(operation.at === undefined ? [] : [operation.at])].map(
      (kind) => [kind, operation] as const,
    ),
  );
  const laid = [...engine.placeKinds.keys()].flatMap((kind) => {
    const opening = wayTo(engine, kind, new Set())?.opening ?? [];
    return opening.every(({ name }) => byName.has(name)) ? opening.map((one) => [kind, one] as const) : [];
  });
  const spoilt = engine.couplings.flatMap((coupling) => {
    const by = coupling.kind === 'disturbed' ? byName.get(coupling.by ?? '') : undefined;
    const kind = coupling.kind === 'disturbed' ? engine.components.get(coupling.renew)?.at : undefined;
    return by === undefined || kind === undefined ? [] : [[kind, by] as const];
  });
  return [...taken, ...laid, ...spoilt].filter(([kind]) => engine.placeKinds.has(kind));
};
