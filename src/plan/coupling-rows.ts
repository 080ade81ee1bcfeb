/** @module Couplings as rows: sizes that follow one another, parts renewed with others, ways that exclude one another. */
import type { Coupling, Does, EngineType } from '../engine/engine-type.ts';
import { renews } from '../engine/renewal.ts';
import { balanceRows } from './balance-rows.ts';
import { type Option, sizeWith } from './plan-model.ts';
import { columnsIn, indicesIn, notBoth, type Row, type SetUpColumns, setUpColumn } from './row.ts';
import { placePairs, type Slot, touches } from './slot.ts';
import { usesOfAll, wayTaken } from './uses.ts';

const pairs = (slots: readonly Slot[], first: string, second: string): readonly (readonly [Slot, Slot])[] =>
  slots
    .filter(({ component }) => component.name === first)
    .flatMap((a) =>
      slots.filter((b) => b.component.name === second && touches(a, b)).map((b) => [a, b] as const),
    );

/** A row for each size at each pair of places; pairs that ask the same of the options ask it once. */
const sameSize = (
  engine: EngineType,
  options: readonly Option[],
  leader: Slot,
  follower: Slot,
): readonly Row[] => {
  const rows = placePairs(engine, leader, follower).flatMap(([led, following]) => {
    const sizesOf = ({ name }: Slot, place: string) =>
      indicesIn(options, name).flatMap((index) => (options[index] ? [sizeWith(options[index], place)] : []));
    const sizes = new Set([...sizesOf(leader, led), ...sizesOf(follower, following)]);
    return [...sizes].map(
      (size): Row => ({
        stands: `${follower.title} must have the size of ${leader.title}`,
        terms: [
          ...columnsIn(options, leader.name, (option) => sizeWith(option, led) === size),
          ...columnsIn(options, follower.name, (option) => sizeWith(option, following) === size, -1),
        ],
        relation: '=',
        bound: 0,
      }),
    );
  });
  return [...new Map(rows.map((row) => [JSON.stringify(row.terms), row])).values()];
};

const renewed = (options: readonly Option[], { name }: Slot, factor = 1) =>
  columnsIn(options, name, ({ does }) => renews(does), factor);

/** What is done with the one that renews the other. */
const renewWhen = (
  options: readonly Option[],
  leader: Slot,
  other: Slot,
  does: (does: Does) => boolean,
  words: string,
): Row => ({
  stands: `${other.title} must be renewed when ${leader.title} is${words}`,
  terms: [...columnsIn(options, leader.name, (option) => does(option.does)), ...renewed(options, other, -1)],
  relation: '<=',
  bound: 0,
});

/** Of the ways that anything takes one at most is taken. */
const eitherOr = (ways: readonly string[], columns: SetUpColumns): readonly Row[] => {
  const taken = ways.flatMap((way) => columns.get(wayTaken(way)) ?? []);
  const stands = `only one of these ways: ${ways.join(', ')}`;
  return taken.flatMap((one, index) => taken.slice(index + 1).map((other) => notBoth(stands, one, other)));
};

const matched = (options: readonly Option[], one: Slot, other: Slot): Row => ({
  stands: `${one.title} and ${other.title} are matched: both are renewed or neither`,
  terms: [...renewed(options, one), ...renewed(options, other, -1)],
  relation: '=',
  bound: 0,
});

const rowsOf = (
  engine: EngineType,
  coupling: Coupling,
  slots: readonly Slot[],
  options: readonly Option[],
  columns: SetUpColumns,
): readonly Row[] => {
  switch (coupling.kind) {
    case 'same size':
      return pairs(slots, coupling.leader, coupling.follower).flatMap(([leader, follower]) =>
        sameSize(engine, options, leader, follower),
      );
    case 'renew with':
      return pairs(slots, coupling.if, coupling.renew).map(([leader, other]) =>
        renewWhen(
          options,
          leader,
          other,
          (does) => coupling.is.includes(does),
          `: ${coupling.is.join(' or ')}`,
        ),
      );
    // One that an operation disturbs is no rule but a put-back that is not open: see options.
    case 'disturbed':
      return pairs(slots, coupling.if ?? '', coupling.renew).map(([leader, other]) =>
        renewWhen(options, leader, other, (does) => does !== 'put back', ' disturbed'),
      );
    case 'matched':
      return pairs(slots, ...coupling.components).map(([one, other]) => matched(options, one, other));
    case 'either or':
      return eitherOr(coupling.ways, columns);
    case 'balance':
      return balanceRows(engine, coupling, options, columns);
    default:
      return coupling satisfies never;
  }
};

/** Rows over the columns of all options and of what they use along with others. */
export const couplingRows = (
  engine: EngineType,
  slots: readonly Slot[],
  options: readonly Option[],
  { setUps } = usesOfAll(engine, options),
): readonly Row[] => {
  const columns = new Map(setUps.map(({ name }, index) => [name, setUpColumn(index)]));
  return engine.couplings.flatMap((coupling) => rowsOf(engine, coupling, slots, options, columns));
};
