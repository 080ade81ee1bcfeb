/** @module Masses of pistons, pins and rods: which go together, which to swap, and how much must come off. */
import { verdictOf } from '../measure/guard-band.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { certain, combine, minus, standardUncertainty, type Uncertain } from '../quantity/uncertain.ts';
import { evenThree, heavyWithLight, mostWithPins } from './even-assemblies.ts';
import { quantityInput, textInput } from './inputs.ts';
import { leastLightening } from './least-lightening.ts';
import { type NamedSize, namedSizes } from './named-sizes.ts';
import { quantityOf, type Reckoning, type Result, result, type Values } from './reckoning.ts';

const keys = ['pistons', 'pins', 'rods', 'spares'] as const;
type Key = (typeof keys)[number];

interface Parts {
  readonly pistons: readonly NamedSize[];
  readonly pins: readonly NamedSize[];
  readonly rods: readonly NamedSize[];
  readonly spares: readonly NamedSize[];
}

const listGiven = (key: Key, text: string | undefined): Answer<readonly NamedSize[]> => {
  if (text === undefined || text.trim() === '') return answer([]);
  const list = namedSizes(key, text, 'mass');
  if (list.kind === 'refused') return list;
  if (list.value.length > 40) return refuse('more than 40 parts', key, 'give those of one engine');
  const light = list.value.find(({ size }) => !(size.value > 0 && size.value < 1e4));
  if (light !== undefined)
    return refuse(`${light.name.slice(0, 20)} has no mass that a part has`, key, 'give it above 0');
  return new Set(list.value.map(({ name }) => name)).size < list.value.length
    ? refuse('a part is named twice', key, 'give each part once')
    : list;
};

const given = ({ texts }: Values): Answer<Parts> => {
  const read: Record<Key, readonly NamedSize[]> = { pistons: [], pins: [], rods: [], spares: [] };
  for (const key of keys) {
    const list = listGiven(key, texts[key]);
    if (list.kind === 'refused') return list;
    read[key] = list.value;
  }
  const { pistons, pins, rods, spares } = read;
  if (pistons.length < 2) return refuse('one part alone is not balanced', 'pistons', 'give two at least');
  for (const [key, { length }] of [
    ['pins', pins],
    ['rods', rods],
  ] as const)
    if (length > 0 && length !== pistons.length)
      return refuse(`${length} ${key} for ${pistons.length} pistons`, key, 'give as many of each');
  const names = [...pistons, ...spares].map(({ name }) => name);
  if (new Set(names).size < names.length)
    return refuse('a spare has the name of a piston', 'spares', 'give each part its own name');
  if (pins.length > 0 && rods.length > 0 && pistons.length > mostWithPins)
    return refuse(
      `pistons, pins and rods apart are matched for up to ${mostWithPins} cylinders`,
      'pins',
      'weigh each piston with its pin and give the two as one piston',
    );
  return answer(read);
};

interface Assembly {
  readonly name: string;
  readonly mass: Uncertain;
}

/** Pistons with the pins and rods that make them most even; those of one kind alone as they are. */
const assembled = ({ pistons, pins, rods }: Parts): readonly Assembly[] => {
  const lists = [pins, rods].filter(({ length }) => length > 0);
  const massesOf = (list: readonly NamedSize[]) => list.map(({ size }) => size.value);
  const [second, third] = lists;
  if (second === undefined) return pistons.map(({ name, size }) => ({ name, mass: size }));
  const together =
    third === undefined
      ? { second: heavyWithLight(massesOf(pistons), massesOf(second)), third: [] }
      : evenThree(massesOf(pistons), massesOf(second), massesOf(third));
  return pistons.map((piston, index) => {
    const others = [second[together.second[index] ?? -1], third?.[together.third[index] ?? -1]].filter(
      (part) => part !== undefined,
    );
    const parts = [piston, ...others];
    return {
      name: parts.map(({ name }) => name).join(' + '),
      mass: combine(parts.map(({ size }) => [1, size] as const)),
    };
  });
};

const grams = (x: Uncertain): Result => result(x, 'g', 1000);

/** Sets of so many out of all, those of the first parts first. */
const setsOf = (all: number, count: number, from = 0): readonly (readonly number[])[] =>
  count === 0
    ? [[]]
    : Array.from({ length: all - count - from + 1 }, (_, at) => from + at).flatMap((first) =>
        setsOf(all, count - 1, first + 1).map((rest) => [first, ...rest]),
      );

const waysOf = (all: number, count: number): number => {
  let ways = 1;
  for (let at = 1; at <= count; at += 1) ways = (ways * (all - count + at)) / at;
  return ways;
};

const factorial = (count: number): number => (count < 2 ? 1 : count * factorial(count - 1));

/** More pairings than these keep a person waiting. */
const mostWays = 50_000;

/** The set of the first kind whose assemblies need least off; of as little, the first found: that keeps most. */
const bestSet = (parts: Parts, limit: number): Answer<readonly NamedSize[]> => {
  const { pistons, pins, rods, spares } = parts;
  const all = [...pistons, ...spares];
  const count = pistons.length;
  const massesOf = (list: readonly { readonly size: Uncertain }[]) => list.map(({ size }) => size.value);
  if (spares.length === 0) return answer(pistons);
  if (pins.length + rods.length === 0)
    return answer(leastLightening(massesOf(all), count, limit).taken.flatMap((index) => all[index] ?? []));
  const pairings = pins.length > 0 && rods.length > 0 ? factorial(count) : 1;
  if (waysOf(all.length, count) * pairings > mostWays)
    return refuse(
      'so many spares can be put together with the others in too many ways',
      'spares',
      'give fewer spares, or weigh each piston with its pin and give the two as one piston',
    );
  let best: { readonly set: readonly NamedSize[]; readonly total: number } | undefined;
  for (const indices of setsOf(all.length, count)) {
    const set = indices.flatMap((index) => all[index] ?? []);
    const masses = assembled({ ...parts, pistons: set }).map(({ mass }) => mass.value);
    const { total } = leastLightening(masses, count, limit);
    if (best === undefined || total < best.total - 1e-12) best = { set, total };
  }
  return answer(best?.set ?? pistons);
};

export const balanceMassesReckoning: Reckoning = {
  name: 'balance-masses',
  title:
    'Masses of pistons, pins and rods within a limit: which go together, which to swap, how much comes off',
  inputs: [
    textInput(
      'pistons',
      'parts of one kind (pistons, or rods alone) with their masses',
      'P1 912.4, P2 915.0, P3 908.9, P4 913.6 g',
      {
        range: 'above 0, two or more',
      },
    ),
    textInput('pins', 'pins with their masses, as many', 'B1 241.0, B2 240.2, B3 241.6, B4 240.8 g', {
      range: 'above 0',
      optional: true,
    }),
    textInput('rods', 'rods with their masses, as many', 'R1 1503.0, R2 1511.5, R3 1506.2, R4 1498.8 g', {
      range: 'above 0',
      optional: true,
    }),
    textInput('spares', 'other parts of the first kind that could be taken instead', 'P5 911.0, P6 914.2 g', {
      range: 'above 0',
      optional: true,
    }),
    quantityInput(
      'limit',
      'mass',
      'heaviest less lightest that the manual allows, of the assemblies, or of the parts where one kind is given',
      '0 and up',
      '4g',
    ),
  ],
  formula:
    'off = max(0, mass − lightest − limit), nothing added; heaviest with lightest; with spares the set that needs least off',
  source:
    'exact: every set tried; Marshall and Olkin, Inequalities (1979), 6.A, for pairs; ISO 14253-1 for the verdict',
  reckon: (values) => {
    const parts = given(values);
    if (parts.kind === 'refused') return parts;
    const limit = quantityOf(values, 'limit').value;
    if (!(limit >= 0 && limit < 1e3))
      return refuse('such a limit is none', 'limit', 'give it 0 or more, in g');
    const { pistons, spares } = parts.value;
    const count = pistons.length;
    const chosen = bestSet(parts.value, limit);
    if (chosen.kind === 'refused') return chosen;
    const set = assembled({ ...parts.value, pistons: chosen.value });
    const masses = set.map(({ mass }) => mass.value);
    const { off, total } = leastLightening(masses, count, limit);
    const [least, most] = [Math.min(...masses), Math.max(...masses)];
    const lightest = set.find(({ mass }) => mass.value === least)?.mass ?? certain(least);
    const heaviest = set.find(({ mass }) => mass.value === most)?.mass ?? certain(most);
    const spread = minus(heaviest, lightest);
    const verdict = verdictOf(
      Number(spread.value.toPrecision(12)),
      standardUncertainty(spread),
      Infinity,
      { greatest: limit },
      0.95,
    );
    const rows: Record<string, Result> = {};
    for (const [index, { name, mass }] of set.entries()) {
      rows[`${name}.mass`] = grams(mass);
      if ((off[index] ?? 0) > 0) rows[`${name}.off`] = grams(combine([[1, minus(mass, lightest)]], -limit));
    }
    const without = (some: readonly NamedSize[], others: readonly NamedSize[]) =>
      some
        .filter((part) => !others.includes(part))
        .map(({ name }) => name)
        .join(', ') || 'none';
    return answer({
      results: {
        spread: grams(spread),
        verdict: { value: verdict, unit: '' },
        'total-off': { value: Number((total * 1000).toPrecision(9)), unit: 'g' },
        ...(spares.length > 0 && {
          'leave-out': { value: without(pistons, chosen.value), unit: '' },
          'take-instead': { value: without(chosen.value, pistons), unit: '' },
        }),
        ...rows,
      },
      notes: [
        ...(verdict === 'unsure'
          ? ['Whether the spread is within the limit is not known well enough: weigh again on finer scales.']
          : []),
        ...(total > 0
          ? [
              'Of these less cannot come off, since nothing can be put on. Take it only where the maker allows (a pad, a boss); never from a section that bears load; weigh again after.',
            ]
          : []),
        'Rods: the big and the small end are weighed apart where the manual asks for it; a whole mass that agrees does not show that they do.',
        'Weigh clean and dry, with the same caps, bolts and shells on each; a piston that belongs to its bore by size stays there: then swap pins and rods only.',
      ],
    });
  },
};
