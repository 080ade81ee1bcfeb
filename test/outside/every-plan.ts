/** @module Every plan there is for an engine, tried one after another: the rules of a plan once more, as plainly as can be. */
import type { Coupling, EngineType } from '../../src/engine/engine-type.ts';
import type { Demands, Option } from '../../src/plan/plan-model.ts';

/** One option a slot, in the order of the slots; a slot that need not be settled may be left out. */
export type Choices = readonly Option[];

export interface Rule {
  /** As a conflict names it. */
  readonly says: string;
  readonly holds: (choices: Choices) => boolean;
}

export const titleOf = (engine: EngineType, { component, place }: Option): string => {
  const title = engine.components.get(component)?.title ?? '';
  return place === undefined ? title : `${title}, ${engine.places.get(place)?.title}`;
};

/** Places touch by their number; a component that is one whole touches all. */
const touch = (a: Option, b: Option): boolean =>
  a.place === undefined || b.place === undefined || a.place.split('.')[1] === b.place.split('.')[1];

const couplingRules = (engine: EngineType, coupling: Coupling, any: Choices): readonly Rule[] => {
  const [first, second] =
    coupling.kind === 'same size' ? [coupling.leader, coupling.follower] : [coupling.if, coupling.renew];
  return any
    .filter(({ component }) => component === first)
    .flatMap((leader) =>
      any
        .filter((follower) => follower.component === second && touch(leader, follower))
        .map((follower) => ({
          says:
            coupling.kind === 'same size'
              ? `${titleOf(engine, follower)} must have the size of ${titleOf(engine, leader)}`
              : `${titleOf(engine, follower)} must be renewed when ${titleOf(engine, leader)} is: ${coupling.is.join(' or ')}`,
          holds: (choices: Choices) => {
            const [one, other] = [leader, follower].map(({ slot }) =>
              choices.find((choice) => choice.slot === slot),
            );
            return coupling.kind === 'same size'
              ? one?.size === other?.size
              : !one || !coupling.is.includes(one.does) || other?.does === 'replace';
          },
        })),
    );
};

export const centsOf = (choices: Choices): number => {
  const setUps = new Map(choices.flatMap((choice) => choice.setUps.map(({ name, cents }) => [name, cents])));
  return (
    choices.reduce((sum, { cents }) => sum + cents, 0) +
    [...setUps.values()].reduce((sum, cents) => sum + cents, 0)
  );
};
export const daysOf = (choices: Choices): number => Math.max(0, ...choices.map(({ days }) => days));
const newPartsOf = (choices: Choices): number => choices.reduce((sum, { newParts }) => sum + newParts, 0);

/** @param any  some choice for each slot, whatever it is */
export const rulesOf = (engine: EngineType, any: Choices, demands: Demands): readonly Rule[] => {
  const { hours, days, cents, fixed = {} } = demands;
  return [
    ...engine.couplings.flatMap((coupling) => couplingRules(engine, coupling, any)),
    ...(hours === undefined
      ? []
      : [
          {
            says: `hours wanted: ${hours} h`,
            holds: (choices: Choices) => choices.every((choice) => choice.hours >= hours),
          },
        ]),
    ...(days === undefined
      ? []
      : [{ says: `ready in: ${days} days`, holds: (choices: Choices) => daysOf(choices) <= days }]),
    ...(cents === undefined
      ? []
      : [
          {
            says: `cost at most: ${(cents / 100).toFixed(2)}`,
            holds: (choices: Choices) => centsOf(choices) <= cents,
          },
        ]),
    ...Object.entries(fixed).map(([slot, id]) => ({
      says: `decided by a person: ${id}`,
      holds: (choices: Choices) => choices.some((choice) => choice.slot === slot && choice.id === id),
    })),
  ];
};

/** Least cost, then fewest days, then fewest new parts, then the options that come first, slot by slot. */
const rankOf = (choices: Choices, bySlot: readonly Choices[]): readonly number[] => [
  centsOf(choices),
  daysOf(choices),
  newPartsOf(choices),
  ...choices.map((choice, slot) => bySlot[slot]?.indexOf(choice) ?? 0),
];

const isLess = (one: readonly number[], other: readonly number[]): boolean => {
  const at = one.findIndex((value, place) => value !== other[place]);
  return at >= 0 && (one[at] ?? 0) < (other[at] ?? 0);
};

export const productSize = (bySlot: readonly Choices[]): number =>
  bySlot.reduce((size, own) => size * own.length, 1);

/**
 * The best of all combinations that keep the rules, or undefined where none does.
 *
 * @param loose  slots that may be left out
 */
export const bestOfAll = (
  bySlot: readonly Choices[],
  rules: readonly Rule[],
  loose: ReadonlySet<string> = new Set(),
): Choices | undefined => {
  let best: { readonly choices: Choices; readonly rank: readonly number[] } | undefined;
  const walk = (slot: number, choices: Choices): void => {
    const own = bySlot[slot];
    if (own) {
      for (const option of own) walk(slot + 1, [...choices, option]);
      if (loose.has(own[0]?.slot ?? '')) walk(slot + 1, choices);
      return;
    }
    if (!rules.every(({ holds }) => holds(choices))) return;
    const rank = rankOf(choices, bySlot);
    if (!best || isLess(rank, best.rank)) best = { choices, rank };
  };
  walk(0, []);
  return best?.choices;
};
