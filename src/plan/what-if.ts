/** @module What if: demands with one of them changed or let go, and options at the prices asked about. */
import type { Demands, Option, SetUp } from './plan-model.ts';

/** Options and their set-ups at other prices, by an option's id or a set-up's name; a price given is no longer one of a quantity. */
export const atPrices = (
  options: readonly Option[],
  prices: NonNullable<Demands['prices']> = {},
): readonly Option[] => {
  const setUp = (each: SetUp): SetUp => ({ ...each, cents: prices[each.name] ?? each.cents });
  return options.map(({ quantity, ...option }) => {
    const cents = prices[option.id];
    return {
      ...option,
      setUps: option.setUps.map(setUp),
      ...(cents === undefined ? quantity && { quantity } : { cents }),
    };
  });
};

const isSome = (record: object): boolean => Object.keys(record).length > 0;

const without = <T>(record: Readonly<Record<string, T>>, names: readonly string[]): Record<string, T> =>
  Object.fromEntries(Object.entries(record).filter(([name]) => !names.includes(name)));

/** Demands with some of them put in anew; what is then undefined is no longer asked. */
export const demanding = (
  demands: Demands,
  changed: { readonly [Name in keyof Demands]: Demands[Name] | undefined },
): Demands => {
  const { hours, days, cents, fixed, withoutSuppliers, prices } = { ...demands, ...changed };
  return {
    ...(hours !== undefined && { hours }),
    ...(days !== undefined && { days }),
    ...(cents !== undefined && { cents }),
    ...(fixed && isSome(fixed) && { fixed }),
    ...(withoutSuppliers && withoutSuppliers.length > 0 && { withoutSuppliers }),
    ...(prices && isSome(prices) && { prices }),
  };
};

/** Slots decided by a person, each for one option's id; free again where none is given. */
export const fixedTo = (demands: Demands, chosen: Readonly<Record<string, string | undefined>>): Demands => {
  const free = without(demands.fixed ?? {}, Object.keys(chosen));
  const fixed = Object.entries(chosen).flatMap(([slot, id]) =>
    id === undefined ? [] : [[slot, id] as const],
  );
  return demanding(demands, { fixed: { ...free, ...Object.fromEntries(fixed) } });
};

/** Nothing from a supplier, or again from that too. */
export const leavingOut = (demands: Demands, supplier: string, out: boolean): Demands => {
  const others = (demands.withoutSuppliers ?? []).filter((each) => each !== supplier);
  return demanding(demands, { withoutSuppliers: out ? [...others, supplier] : others });
};

/** Options by their ids or set-ups by their names at another price; at their own where none is given. */
export const pricedAt = (demands: Demands, names: readonly string[], cents: number | undefined): Demands => {
  const others = without(demands.prices ?? {}, names);
  const priced = cents === undefined ? [] : names.map((name) => [name, cents] as const);
  return demanding(demands, { prices: { ...others, ...Object.fromEntries(priced) } });
};
