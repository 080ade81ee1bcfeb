/** @module At which places an operation is worked where not all of a kind come off: one pump of three, one piston. */
import type { EngineType, Operation, PlaceId } from '../engine/engine-type.ts';

/** Numbers of places among so many that there are of their kind; or all. */
export type Worked = 'all' | { readonly of: number; readonly numbers: ReadonlySet<number> };

export type WorkedAt = ReadonlyMap<string, Worked>;

type Engine = Pick<EngineType, 'operations' | 'placeKinds' | 'components'>;

/** The places of a kind that go with what is worked: of another count than theirs, all of them. */
export const placesWith = (
  { placeKinds }: Pick<Engine, 'placeKinds'>,
  kind: string,
  worked: Worked,
): readonly PlaceId[] => {
  const count = placeKinds.get(kind)?.count ?? 0;
  const all = Array.from({ length: count }, (_, at) => at + 1);
  const some = worked !== 'all' && worked.of === count ? all.filter((one) => worked.numbers.has(one)) : all;
  return some.map((number) => `${kind}.${number}`);
};

/**
 * How many places an operation takes one by one. Those of a cylinder come off each by itself, unless what belongs there
 * is one part for all, as a camshaft is; bearings hold one shaft, and what is there once comes off whole.
 */
const separately = ({ placeKinds, components }: Engine, { at, removes }: Operation): number | undefined => {
  const there = placeKinds.get(at ?? '');
  if (there === undefined || there.along !== 'cylinder' || there.count < 2) return undefined;
  const parts = [...components.values()].filter((component) => component.at === there.name);
  if (parts.length > 0 && parts.every(({ together }) => together)) return undefined;
  const kinds = removes.flatMap((one) => placeKinds.get(one) ?? []);
  return kinds.every(({ along, count }) => along === 'cylinder' && count === there.count)
    ? there.count
    : undefined;
};

/**
 * @param worked  numbers that were worked beside it, or places that are open: those of its own kind count
 * @returns what of it an operation is worked at
 */
export const worksOn = (
  engine: Engine,
  operation: Operation,
  worked: Worked | ReadonlySet<PlaceId>,
): Worked => {
  const count = separately(engine, operation);
  if (count === undefined || worked === 'all') return 'all';
  if ('of' in worked) return worked.of === count ? worked : 'all';
  const numbers = new Set(
    Array.from({ length: count }, (_, at) => at + 1).filter((one) => worked.has(`${operation.at}.${one}`)),
  );
  return numbers.size === 0 || numbers.size === count ? 'all' : { of: count, numbers };
};

const together = (one: Worked | undefined, other: Worked): Worked => {
  if (one === undefined) return other;
  if (one === 'all' || other === 'all' || one.of !== other.of) return 'all';
  const numbers = new Set([...one.numbers, ...other.numbers]);
  return numbers.size === one.of ? 'all' : { of: one.of, numbers };
};

/**
 * Where each operation of a strip is worked: as begun, and before that wherever what follows is worked.
 *
 * @param strip  operations with all that comes before them
 * @param begun  those that were asked for
 */
export const workedAt = (
  engine: Engine,
  strip: readonly Operation[],
  begun: readonly (readonly [Operation, Worked])[],
): WorkedAt => {
  const names = new Set(strip.map(({ name }) => name));
  const at = new Map<string, Worked>();
  const ahead = [...begun];
  for (let next = ahead.pop(); next !== undefined; next = ahead.pop()) {
    const [operation, worked] = next;
    const before = at.get(operation.name);
    const now = together(before, worked);
    const grown =
      before === undefined || (before !== 'all' && (now === 'all' || now.numbers.size > before.numbers.size));
    if (!grown) continue;
    at.set(operation.name, now);
    for (const name of operation.after) {
      const earlier = engine.operations.get(name);
      if (earlier !== undefined && names.has(name)) ahead.push([earlier, worksOn(engine, earlier, now)]);
    }
  }
  return at;
};
