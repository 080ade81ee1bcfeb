/** @module Couplings as rows: sizes that follow one another, parts that are renewed with others. */
import type { Coupling, EngineType } from '../engine/engine-type.ts';
import type { Option } from './plan-model.ts';
import { columnsWhere, type Row } from './row.ts';
import { type Slot, touches } from './slot.ts';

const pairs = (slots: readonly Slot[], first: string, second: string): readonly (readonly [Slot, Slot])[] =>
  slots
    .filter(({ component }) => component.name === first)
    .flatMap((a) =>
      slots.filter((b) => b.component.name === second && touches(a, b)).map((b) => [a, b] as const),
    );

const sameSize = (options: readonly Option[], leader: Slot, follower: Slot): readonly Row[] => {
  const sizes = new Set(
    options.filter(({ slot }) => slot === leader.name || slot === follower.name).map(({ size }) => size),
  );
  return [...sizes].map((size) => ({
    stands: `${follower.title} must have the size of ${leader.title}`,
    terms: [
      ...columnsWhere(options, (option) => option.slot === leader.name && option.size === size),
      ...columnsWhere(options, (option) => option.slot === follower.name && option.size === size, -1),
    ],
    relation: '=',
    bound: 0,
  }));
};

const renewWith = (
  options: readonly Option[],
  is: Extract<Coupling, { kind: 'renew with' }>['is'],
  leader: Slot,
  renewed: Slot,
): Row => ({
  stands: `${renewed.title} must be renewed when ${leader.title} is: ${is.join(' or ')}`,
  terms: [
    ...columnsWhere(options, (option) => option.slot === leader.name && is.includes(option.does)),
    ...columnsWhere(options, (option) => option.slot === renewed.name && option.does === 'replace', -1),
  ],
  relation: '<=',
  bound: 0,
});

export const couplingRows = (
  engine: EngineType,
  slots: readonly Slot[],
  options: readonly Option[],
): readonly Row[] =>
  engine.couplings.flatMap((coupling): readonly Row[] => {
    switch (coupling.kind) {
      case 'same size':
        return pairs(slots, coupling.leader, coupling.follower).flatMap(([leader, follower]) =>
          sameSize(options, leader, follower),
        );
      case 'renew with':
        return pairs(slots, coupling.if, coupling.renew).map(([leader, renewed]) =>
          renewWith(options, coupling.is, leader, renewed),
        );
      default:
        return coupling satisfies never;
    }
  });
