/** @module The plan as a mixed-integer program in LP text: one option a slot, couplings, set-ups, days, demands. */
import type { EngineType } from '../engine/engine-type.ts';
import { couplingRows } from './coupling-rows.ts';
import { demandRows } from './demand-rows.ts';
import { fitRows } from './fit-rows.ts';
import type { Demands, Option, SetUp } from './plan-model.ts';
import { daysColumn, indicesIn, optionColumn, type Row, setUpColumn, type Terms } from './row.ts';
import type { Slot } from './slot.ts';
import { type Uses, usesOfAll } from './uses.ts';

export interface Model {
  readonly rows: readonly Row[];
  /** Option of each binary column, in order: `x0`, `x1` … */
  readonly options: readonly Option[];
  /** Column of each: `s0`, `s1` …; what masses come from and ways stand among them at no cost. */
  readonly setUps: readonly SetUp[];
  /** What is bought by the piece: n of the columns chosen cost cents[n] beside their own prices. */
  readonly bulk: readonly Bulk[];
}

interface Bulk {
  readonly name: string;
  readonly columns: readonly string[];
  readonly cents: readonly number[];
}

/** One where just so many of a bulk are taken. */
const countColumn = (bulk: number, count: number): string => `q${bulk}_${count}`;
/** A row that no demand or rule stands behind: it only ties columns together. */
const tie = '';

const bulkOf = (options: readonly Option[]): readonly Bulk[] => {
  const counted = options.flatMap(({ quantity }, index) => (quantity ? [{ quantity, index }] : []));
  return [...Map.groupBy(counted, ({ quantity }) => quantity.name)].map(([name, bought]) => ({
    name,
    columns: bought.map(({ index }) => optionColumn(index)),
    cents: bought[0]?.quantity.cents ?? [],
  }));
};

const countsOf = ({ columns }: Bulk): readonly number[] => columns.map((_, index) => index + 1);

/** The count of each bulk in unary: as many as are taken, and one count at most. */
const countRows = (bulk: readonly Bulk[]): readonly Row[] =>
  bulk.flatMap((each, at): readonly Row[] => [
    {
      stands: tie,
      terms: [
        ...each.columns.map((column) => [1, column] as const),
        ...countsOf(each).map((count) => [-count, countColumn(at, count)] as const),
      ],
      relation: '=',
      bound: 0,
    },
    {
      stands: tie,
      terms: countsOf(each).map((count) => [1, countColumn(at, count)] as const),
      relation: '<=',
      bound: 1,
    },
  ]);

/** What each cent stands for: the options, the set-ups, and counts of what is bought by the piece. */
export const costTerms = ({ options, setUps, bulk }: Omit<Model, 'rows'>): Terms => [
  ...options.map(({ cents }, index) => [cents, optionColumn(index)] as const),
  ...setUps.map(({ cents }, index) => [cents, setUpColumn(index)] as const),
  ...bulk.flatMap((each, at) =>
    countsOf(each).map((count) => [each.cents[count] ?? 0, countColumn(at, count)] as const),
  ),
];

export const newPartTerms = ({ options }: Pick<Model, 'options'>): Terms =>
  options.map(({ newParts }, index) => [newParts, optionColumn(index)] as const);

/** Options of a slot by the set-up that they use, in the order of the set-ups. */
const usersIn = (own: readonly number[], byOption: Uses['byOption'], at: ReadonlyMap<string, number>) => {
  const users = new Map<number, number[]>();
  for (const option of own)
    for (const name of byOption[option] ?? []) {
      const setUp = at.get(name) ?? 0;
      users.set(setUp, [...(users.get(setUp) ?? []), option]);
    }
  return [...users].sort(([a], [b]) => a - b);
};

const slotRows = (
  slot: Slot,
  options: readonly Option[],
  { byOption }: Uses,
  setUpAt: ReadonlyMap<string, number>,
): readonly Row[] => {
  const indices = indicesIn(options, slot.name);
  const own = indices.map((index) => [1, optionColumn(index)] as const);
  const days = indices
    .map((index) => [options[index]?.days ?? 0, optionColumn(index)] as const)
    .filter(([each]) => each > 0);
  return [
    // Never two at once: that is no rule that a conflict could do without.
    { stands: tie, terms: own, relation: '<=', bound: 1 },
    { stands: `${slot.title} must be settled`, terms: own, relation: '>=', bound: 1 },
    ...(days.length > 0
      ? [{ stands: tie, terms: [...days, [-1, daysColumn] as const], relation: '<=', bound: 0 } as const]
      : []),
    ...usersIn(indices, byOption, setUpAt).map(
      ([setUp, users]): Row => ({
        stands: tie,
        terms: [...users.map((index) => [1, optionColumn(index)] as const), [-1, setUpColumn(setUp)]],
        relation: '<=',
        bound: 0,
      }),
    ),
  ];
};

export const modelOf = (
  engine: EngineType,
  slots: readonly Slot[],
  options: readonly Option[],
  demands: Demands,
): Model => {
  const uses = usesOfAll(engine, options);
  const columns = { options, setUps: uses.setUps, bulk: bulkOf(options) };
  const setUpAt = new Map(uses.setUps.map(({ name }, index) => [name, index]));
  return {
    ...columns,
    rows: [
      ...slots.flatMap((slot) => slotRows(slot, options, uses, setUpAt)),
      ...couplingRows(engine, slots, options, uses),
      ...fitRows(options, demands.hours),
      ...demandRows(slots, options, demands, costTerms(columns)),
    ],
  };
};

const termText = (terms: Terms): string => {
  const merged = new Map<string, number>();
  for (const [factor, column] of terms) merged.set(column, (merged.get(column) ?? 0) + factor);
  const kept = [...merged].filter(([, factor]) => factor !== 0);
  return kept.length === 0
    ? `0 ${daysColumn}`
    : kept.map(([column, factor]) => `${factor < 0 ? '-' : '+'} ${Math.abs(factor)} ${column}`).join('\n  ');
};

/**
 * The model as text in CPLEX LP format, as general solvers read it.
 *
 * @param model      columns and rows
 * @param objective  what is made least
 * @returns text, one term a line, since some readers take only short lines
 */
export const lpText = ({ rows, options, setUps, bulk }: Model, objective: Terms): string =>
  [
    'Minimize',
    ` least: ${termText(objective)}`,
    'Subject To',
    ...[...rows, ...countRows(bulk)].map(
      ({ terms, relation, bound }, index) => ` r${index}: ${termText(terms)} ${relation} ${bound}`,
    ),
    ` back: ${daysColumn} >= 0`,
    'Binary',
    ...options.map((_, index) => ` ${optionColumn(index)}`),
    ...setUps.map((_, index) => ` ${setUpColumn(index)}`),
    ...bulk.flatMap((each, at) => countsOf(each).map((count) => ` ${countColumn(at, count)}`)),
    'End',
    '',
  ].join('\n');
