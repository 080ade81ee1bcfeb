/** @module What every method that finds best plans must do, on models at random: every combination tried; and on published ones. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Coupling, EngineType } from '../../src/engine/engine-type.ts';
import { everything, type FindBest } from '../../src/plan/best.ts';
import { centsTogether } from '../../src/plan/cost.ts';
import { type Model, modelOf } from '../../src/plan/model.ts';
import type { Demands, Option } from '../../src/plan/plan-model.ts';
import { columnsWhere, type Row } from '../../src/plan/row.ts';
import type { Slot } from '../../src/plan/slot.ts';
import { eightByEight } from '../eight-by-eight.ts';
import { wornQuillfeather } from '../engines/worn-quillfeather.ts';
import { rulesOf } from './every-plan.ts';
import { knapsacks } from './knapsacks.ts';

export type OpenFinder = (slots: readonly Slot[], model: Model) => Promise<FindBest>;

const [component] = wornQuillfeather.engine.components.values();
/** Couplings of ways and masses only: the other rows under test are given. */
const engineWith = (couplings: readonly Coupling[]): EngineType => ({
  ...wornQuillfeather.engine,
  couplings,
});

const slotsNamed = (names: readonly string[]): readonly Slot[] => {
  if (!component) throw new Error('the demonstration engine has no components');
  return names.map((name) => ({ name, title: name, component, places: [] }));
};

const option = (slot: string, index: number, terms: Partial<Option> = {}): Option => ({
  id: `${slot}:${index}`,
  slot,
  component: 'part',
  does: 'replace',
  size: `${index}`,
  supplier: '',
  cents: 0,
  setUps: [],
  days: 0,
  hours: 1_000,
  newParts: 0,
  reason: '',
  ...terms,
});

const modelWith = (
  names: readonly string[],
  options: readonly Option[],
  rows: readonly Row[],
  demands: Demands = {},
  couplings: readonly Coupling[] = [],
) => {
  const slots = slotsNamed(names);
  const model = modelOf(engineWith(couplings), slots, options, demands);
  return { slots, model: { ...model, rows: [...model.rows, ...rows] } };
};

/** Within ten grams neighbours go together, the first and the last do not. */
const masses = [
  { least: 1.2, greatest: 1.204 },
  { least: 1.203, greatest: 1.209 },
  { least: 1.208, greatest: 1.213 },
];

const couplingsAtRandom: fc.Arbitrary<readonly Coupling[]> = fc.subarray<Coupling>([
  { kind: 'either or', ways: ['one', 'another', 'third'] },
  { kind: 'balance', of: 'part', most: 0.01 },
]);

/** Prices with ties; figures of rows small, so that some hold and some do not. */
const optionTerms = fc.record({
  cents: fc.constantFrom(0, 100, 200, 300, 700, 99_999_999),
  days: fc.constantFrom(0, 0.5, 3, 7),
  newParts: fc.constantFrom(0, 1, 2),
  setUp: fc.constantFrom(
    undefined,
    undefined,
    { name: 'setting', cents: 250 },
    { name: 'carriage', cents: 100 },
  ),
  bulk: fc.constantFrom(undefined, undefined, undefined, {
    name: 'by the dozen',
    cents: [0, 0, -150, -20, 90],
  }),
  way: fc.constantFrom(undefined, undefined, 'one', 'another', 'third'),
  /** As found, weighed or not; otherwise the option has the mass of its number, as parts of one offer have. */
  found: fc.constantFrom(undefined, undefined, 'not weighed' as const, ...masses),
  factors: fc.array(fc.constantFrom(-2, -1, -0.25, 0, 0, 0, 1, 1, 2.5), { minLength: 4, maxLength: 4 }),
});

const rowTerms = fc.array(
  fc.record({
    relation: fc.constantFrom('=' as const, '<=' as const, '>=' as const),
    bound: fc.constantFrom(-1, 0, 0, 1, 2, 3.5),
    slots: fc.array(fc.nat(3), { minLength: 1, maxLength: 4 }),
  }),
  { maxLength: 4 },
);

interface Case {
  readonly slots: readonly Slot[];
  readonly model: Model;
  readonly options: readonly Option[];
  readonly rows: readonly Row[];
  readonly demands: Demands;
  readonly couplings: readonly Coupling[];
  readonly shut: ReadonlySet<string>;
}

const cases: fc.Arbitrary<Case> = fc
  .record({
    slots: fc.array(fc.array(optionTerms, { minLength: 1, maxLength: 4 }), { minLength: 1, maxLength: 5 }),
    rows: rowTerms,
    days: fc.constantFrom(undefined, undefined, 3),
    cents: fc.constantFrom(undefined, undefined, 600),
    shut: fc.array(fc.nat(20), { maxLength: 3 }),
    couplings: couplingsAtRandom,
    offered: fc.array(fc.constantFrom(undefined, ...masses), { minLength: 4, maxLength: 4 }),
  })
  .map(({ slots, rows: wanted, days, cents, shut, couplings, offered }) => {
    const names = slots.map((_, index) => `slot ${index}`);
    const factors = slots.flatMap((own) => own.map((each) => each.factors));
    const options = slots.flatMap((own, at) =>
      own.map(({ setUp, bulk, way, found, factors: _, ...terms }, index) => {
        // What is found in a slot is one thing, and stands first.
        const asFound = index === 0 ? found : undefined;
        const weighed = asFound === 'not weighed' ? undefined : asFound;
        const mass = asFound === undefined ? offered[index] : weighed;
        return option(names[at] ?? '', index, {
          ...terms,
          ...(asFound && { does: 'put back' as const }),
          setUps: setUp ? [setUp] : [],
          ...(bulk && { quantity: bulk }),
          ...(way && { way }),
          ...(mass && { mass }),
        });
      }),
    );
    const rows = wanted.map(
      ({ relation, bound, slots: touched }, at): Row => ({
        stands: `rule ${at}`,
        terms: columnsWhere(options, ({ slot }) => touched.some((index) => names[index] === slot)).map(
          ([, column]) => [factors[Number(column.slice(1))]?.[at] ?? 0, column],
        ),
        relation,
        bound,
      }),
    );
    const demands = { ...(days !== undefined && { days }), ...(cents !== undefined && { cents }) };
    return {
      ...modelWith(names, options, rows, demands, couplings),
      options,
      rows,
      demands,
      couplings,
      shut: new Set(shut.map((index) => options[index]?.id ?? '')),
    };
  });

const keeps = (chosen: readonly Option[], { options, rows, demands, couplings }: Case): boolean => {
  const { days = Number.POSITIVE_INFINITY, cents = Number.POSITIVE_INFINITY } = demands;
  const taken = new Set(chosen.map(({ id }) => id));
  return (
    chosen.every((each) => each.days <= days) &&
    centsTogether(chosen) <= cents &&
    rulesOf(engineWith(couplings), [], {}).every(({ holds }) => holds(chosen)) &&
    rows.every(({ terms, relation, bound }) => {
      // Quarters and whole numbers: exact in binary.
      const sum = terms.reduce(
        (total, [factor, column]) =>
          total + (taken.has(options[Number(column.slice(1))]?.id ?? '') ? factor : 0),
        0,
      );
      return relation === '=' ? sum === bound : relation === '<=' ? sum <= bound : sum >= bound;
    })
  );
};

const rankOf = (chosen: readonly Option[], options: readonly Option[]): readonly number[] => [
  centsTogether(chosen),
  Math.max(0, ...chosen.map(({ days }) => days)),
  chosen.reduce((sum, { newParts }) => sum + newParts, 0),
  ...chosen.map((each) => options.indexOf(each)),
];

const isLess = (one: readonly number[], other: readonly number[]): boolean => {
  const at = one.findIndex((value, place) => value !== other[place]);
  return at >= 0 && (one[at] ?? 0) < (other[at] ?? 0);
};

const bestOfAll = (asked: Case): readonly Option[] | undefined => {
  const combinations = asked.slots.reduce<readonly (readonly Option[])[]>(
    (all, { name }) =>
      all.flatMap((chosen) =>
        asked.options
          .filter(({ slot, id }) => slot === name && !asked.shut.has(id))
          .map((each) => [...chosen, each]),
      ),
    [[]],
  );
  return combinations
    .filter((chosen) => keeps(chosen, asked))
    .reduce<readonly Option[] | undefined>(
      (best, chosen) =>
        best && !isLess(rankOf(chosen, asked.options), rankOf(best, asked.options)) ? best : chosen,
      undefined,
    );
};

/** @param rounds  how many models at random */
export const finderContract = (name: string, open: OpenFinder, rounds: number): void => {
  describe(`${name} as the finder of best plans`, () => {
    it('finds the best of all combinations, or that there is none', { timeout: 120_000 }, async () => {
      // source: every combination tried, in this file
      let none = 0;
      await fc.assert(
        fc.asyncProperty(cases, async (asked) => {
          const find = await open(asked.slots, asked.model);
          const found = await find(({ id }) => !asked.shut.has(id));
          const best = bestOfAll(asked);
          if (!best) {
            none += 1;
            expect(found).toBe('no plan');
          } else expect(found).toMatchObject({ chosen: best, cents: centsTogether(best) });
        }),
        { numRuns: rounds },
      );
      expect(none).toBeGreaterThan(rounds / 20);
      expect(none).toBeLessThan((rounds * 19) / 20);
    });

    it.each(knapsacks)('packs knapsack $name to its published optimum', async (knapsack) => {
      const { capacity, weights, values, best, items } = knapsack;
      const names = values.map((_, at) => `item ${at + 1}`);
      // What is left behind is paid for, so that the least cost leaves the least value.
      const options = names.flatMap((slot, at) => [
        option(slot, 0, { cents: values[at] ?? 0, does: 'put back' }),
        option(slot, 1),
      ]);
      const packed: Row = {
        stands: 'what it can hold',
        terms: weights.map((weight, at) => [weight, `x${2 * at + 1}`]),
        relation: '<=',
        bound: capacity,
      };
      const { slots, model } = modelWith(names, options, [packed]);
      const found = await (await open(slots, model))(everything);
      if (typeof found === 'string') throw new Error(found);
      expect(found.cents).toBe(values.reduce((sum, value) => sum + value, 0) - best);
      expect(
        found.chosen.flatMap(({ does, slot }) => (does === 'replace' ? [names.indexOf(slot) + 1] : [])),
      ).toEqual(items);
    });

    it('assigns eight to eight at the published cost', async () => {
      const { costs, best, columns } = eightByEight;
      const names = costs.map((_, at) => `row ${at}`);
      const options = costs.flatMap((row, at) =>
        row.map((cents, index) => option(names[at] ?? '', index, { cents })),
      );
      const rows = costs.map(
        (_, column): Row => ({
          stands: `column ${column} once`,
          terms: columnsWhere(options, ({ size }) => size === `${column}`),
          relation: '=',
          bound: 1,
        }),
      );
      const { slots, model } = modelWith(names, options, rows);
      const found = await (await open(slots, model))(everything);
      if (typeof found === 'string') throw new Error(found);
      expect(found.cents).toBe(best);
      expect(found.chosen.map(({ size }) => Number(size) + 1)).toEqual(columns);
    });

    it('says that there is none where nothing adds up, and finds what does', async () => {
      // source: by hand; powers of two up to 32 make 63 at most; 15 + 22 + 16 is the only way of three to 53
      const sums = async (sizes: readonly number[], bound: number) => {
        const names = sizes.map((_, at) => `size ${at}`);
        const options = names.flatMap((slot) => [option(slot, 0), option(slot, 1, { cents: 1 })]);
        const row: Row = {
          stands: 'sum',
          terms: sizes.map((size, at) => [size, `x${2 * at + 1}`]),
          relation: '=',
          bound,
        };
        const { slots, model } = modelWith(names, options, [row]);
        const found = await (await open(slots, model))(everything);
        return typeof found === 'string'
          ? found
          : sizes.filter((_, at) =>
              found.chosen.some((each) => each.slot === names[at] && each.size === '1'),
            );
      };
      expect(await sums([1, 2, 4, 8, 16, 32], 100)).toBe('no plan');
      // Neither size may be taken, and nothing at all does not add up either.
      expect(await sums([2.5, 2.5], 2)).toBe('no plan');
      expect(await sums([1, 2, 4, 8, 16, 32], 63)).toHaveLength(6);
      expect(await sums([15, 22, 14, 26, 32, 9, 16, 8], 53)).toEqual([15, 22, 16]);
    });
  });
};
