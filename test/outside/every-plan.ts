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

const of = (choices: Choices, { slot }: Option): Option | undefined =>
  choices.find((choice) => choice.slot === slot);
const isNew = (option: Option | undefined): boolean =>
  option !== undefined && ['replace', 'exchange'].includes(option.does);

/** One rule for each leader and each follower that touches it. */
const between = (
  engine: EngineType,
  [first, second]: readonly [string, string],
  any: Choices,
  says: (leader: string, follower: string) => string,
  holds: (leader: Option | undefined, follower: Option | undefined) => boolean,
): readonly Rule[] =>
  any
    .filter(({ component }) => component === first)
    .flatMap((leader) =>
      any
        .filter((follower) => follower.component === second && touch(leader, follower))
        .map((follower) => ({
          says: says(titleOf(engine, leader), titleOf(engine, follower)),
          holds: (choices: Choices) => holds(of(choices, leader), of(choices, follower)),
        })),
    );

/** Whether two parts could be further apart in mass than the balance allows. */
const unbalanced = (a: Option, b: Option, most: number): boolean => {
  const asFound = (option: Option) => option.does === 'put back';
  const offer = ({ does, size, supplier }: Option) => [does, size, supplier].join('|');
  if (!asFound(a) && !asFound(b) && offer(a) === offer(b)) return false;
  if (a.mass === undefined || b.mass === undefined) return !(asFound(a) && asFound(b));
  const ends = [a.mass, b.mass].flatMap(({ least = -Infinity, greatest = Infinity }) => [least, greatest]);
  return Math.max(...ends) - Math.min(...ends) > most + 1e-9;
};

const couplingRules = (engine: EngineType, coupling: Coupling, any: Choices): readonly Rule[] => {
  switch (coupling.kind) {
    case 'same size':
      return between(
        engine,
        [coupling.leader, coupling.follower],
        any,
        (leader, follower) => `${follower} must have the size of ${leader}`,
        (leader, follower) => leader?.size === follower?.size,
      );
    case 'renew with':
      return between(
        engine,
        [coupling.if, coupling.renew],
        any,
        (leader, follower) => `${follower} must be renewed when ${leader} is: ${coupling.is.join(' or ')}`,
        (leader, follower) => !leader || !coupling.is.includes(leader.does) || isNew(follower),
      );
    case 'disturbed':
      return between(
        engine,
        [coupling.if ?? '', coupling.renew],
        any,
        (leader, follower) => `${follower} must be renewed when ${leader} is disturbed`,
        (leader, follower) => !leader || leader.does === 'put back' || isNew(follower),
      );
    case 'matched':
      return between(
        engine,
        coupling.components,
        any,
        (one, other) => `${one} and ${other} are matched: both are renewed or neither`,
        (one, other) => isNew(one) === isNew(other),
      );
    case 'either or':
      return [
        {
          says: `only one of these ways: ${coupling.ways.join(', ')}`,
          holds: (choices) =>
            new Set(choices.flatMap(({ way }) => (way && coupling.ways.includes(way) ? [way] : []))).size <=
            1,
        },
      ];
    case 'balance': {
      const title = engine.components.get(coupling.of)?.title;
      return [
        {
          says: `masses of ${title} must lie within ${(coupling.most * 1000).toFixed(1)} g`,
          holds: (choices) => {
            const own = choices.filter(({ component }) => component === coupling.of);
            return own.every((a, at) => own.slice(at + 1).every((b) => !unbalanced(a, b, coupling.most)));
          },
        },
      ];
    }
    default:
      return coupling satisfies never;
  }
};

/** From the engine type alone: what each offer costs for as many places as take it, what is paid once. */
export const centsOf = (engine: EngineType, choices: Choices): number => {
  const taken = Map.groupBy(
    choices.filter(({ does }) => does !== 'put back'),
    (choice) =>
      engine.offers.findIndex(
        (offer) =>
          offer.component === choice.component &&
          offer.does === choice.does &&
          offer.size === choice.size &&
          offer.supplier === choice.supplier,
      ),
  );
  const setUps = new Map<string, number>();
  let sum = 0;
  for (const [index, { length }] of taken) {
    const offer = engine.offers[index];
    if (!offer) throw new Error('an option that nobody offers');
    if (offer.setUp) setUps.set(offer.setUp.name, offer.setUp.cents);
    const component = engine.components.get(offer.component);
    const places = [...engine.places.values()].filter(({ kind }) => kind === component?.at).length;
    const count = component?.together ? places : length;
    let each = offer.cents;
    for (const { from, cents } of offer.quantity ?? []) if (count >= from) each = cents;
    sum += offer.per === 'set' ? offer.cents : each * count;
  }
  return [...setUps.values()].reduce((all, cents) => all + cents, sum);
};
export const daysOf = (choices: Choices): number => Math.max(0, ...choices.map(({ days }) => days));
const newPartsOf = (choices: Choices): number => choices.reduce((sum, { newParts }) => sum + newParts, 0);

/** Predicted fits of which both parts are chosen. */
export const pairedFits = (choices: Choices) =>
  choices.flatMap(({ fits = [] }) => fits.filter((fit) => choices.some(({ id }) => id === fit.with)));

/** Predicted fits that are outside, as a conflict names them. */
export const barredFits = (options: Choices): ReadonlySet<string> =>
  new Set(options.flatMap(({ fits = [] }) => fits.filter(({ hours }) => hours <= 0).map(({ says }) => says)));

/**
 * @param any     some choice for each slot, whatever it is
 * @param barred  predicted fits that are outside, in words
 */
export const rulesOf = (
  engine: EngineType,
  any: Choices,
  demands: Demands,
  barred: ReadonlySet<string> = new Set(),
): readonly Rule[] => {
  const { hours, days, cents, fixed = {}, withoutSuppliers = [] } = demands;
  return [
    ...engine.couplings.flatMap((coupling) => couplingRules(engine, coupling, any)),
    ...[...barred].map((says) => ({
      says,
      holds: (choices: Choices) => pairedFits(choices).every((fit) => fit.hours > 0 || fit.says !== says),
    })),
    ...(hours === undefined
      ? []
      : [
          {
            says: `hours wanted: ${hours} h`,
            holds: (choices: Choices) =>
              choices.every((choice) => choice.hours >= hours) &&
              pairedFits(choices).every((fit) => fit.hours <= 0 || fit.hours >= hours),
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
            holds: (choices: Choices) => centsOf(engine, choices) <= cents,
          },
        ]),
    ...withoutSuppliers.map((supplier) => ({
      says: `without ${supplier}`,
      holds: (choices: Choices) => choices.every((choice) => choice.supplier !== supplier),
    })),
    ...Object.entries(fixed).map(([slot, id]) => ({
      says: `decided by a person: ${id}`,
      holds: (choices: Choices) => choices.some((choice) => choice.slot === slot && choice.id === id),
    })),
  ];
};

/** Least cost, then fewest days, then fewest new parts, then the options that come first, slot by slot. */
const rankOf = (engine: EngineType, choices: Choices, bySlot: readonly Choices[]): readonly number[] => [
  centsOf(engine, choices),
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
 * Calls for every combination that keeps the rules.
 *
 * @param loose  slots that may be left out
 */
const everyPlan = (
  bySlot: readonly Choices[],
  rules: readonly Rule[],
  loose: ReadonlySet<string>,
  call: (choices: Choices) => void,
): void => {
  const walk = (slot: number, choices: Choices): void => {
    const own = bySlot[slot];
    if (own) {
      for (const option of own) walk(slot + 1, [...choices, option]);
      if (loose.has(own[0]?.slot ?? '')) walk(slot + 1, choices);
      return;
    }
    if (rules.every(({ holds }) => holds(choices))) call(choices);
  };
  walk(0, []);
};

/**
 * The best of all combinations that keep the rules, or undefined where none does.
 *
 * @param loose  slots that may be left out
 */
export const bestOfAll = (
  engine: EngineType,
  bySlot: readonly Choices[],
  rules: readonly Rule[],
  loose: ReadonlySet<string> = new Set(),
): Choices | undefined => {
  let best: { readonly choices: Choices; readonly rank: readonly number[] } | undefined;
  everyPlan(bySlot, rules, loose, (choices) => {
    const rank = rankOf(engine, choices, bySlot);
    if (!best || isLess(rank, best.rank)) best = { choices, rank };
  });
  return best?.choices;
};

/** All combinations that keep the rules, the best first. */
export const allInOrder = (
  engine: EngineType,
  bySlot: readonly Choices[],
  rules: readonly Rule[],
): readonly Choices[] => {
  const all: { readonly choices: Choices; readonly rank: readonly number[] }[] = [];
  everyPlan(bySlot, rules, new Set(), (choices) => {
    all.push({ choices, rank: rankOf(engine, choices, bySlot) });
  });
  return all.sort((a, b) => (isLess(a.rank, b.rank) ? -1 : 1)).map(({ choices }) => choices);
};
