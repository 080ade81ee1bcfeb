/** @module Offers and couplings of an engine type put together from its file. */
import { hours, mm } from '../quantity/brand.ts';
import type { EngineFile } from './engine-file.ts';
import type { Coupling, Offer } from './engine-type.ts';
import { type FigureReader, readFigure } from './figure-reader.ts';
import type { FilePath } from './file-path.ts';
import { given } from './given.ts';
import { readBounds } from './limits.ts';
import { centsOf } from './price.ts';

export const offerOf = (reader: FigureReader, file: EngineFile['offers'][number], path: FilePath): Offer => ({
  component: file.component,
  does: file.does,
  size: file.size,
  supplier: file.supplier,
  cents: centsOf(file.price),
  per: file.per,
  days: file.days,
  ...given('setUp', file['set-up'] && { name: file['set-up'].name, cents: centsOf(file['set-up'].price) }),
  ...given(
    'quantity',
    file.quantity
      ?.map(({ from, price }) => ({ from, cents: centsOf(price) }))
      .sort((a, b) => a.from - b.from),
  ),
  ...given('deposit', file.deposit === undefined ? undefined : centsOf(file.deposit)),
  ...given(
    'life',
    file.life === undefined
      ? undefined
      : hours(readFigure(reader, file.life, 'time', [...path, 'life']).amount),
  ),
  ...given('way', file.way),
  ...given(
    'boredTo',
    file['bored-to'] === undefined
      ? undefined
      : mm(readFigure(reader, file['bored-to'], 'length', [...path, 'bored-to']).amount),
  ),
  ...given('mass', file.mass && readBounds(reader, file.mass, [...path, 'mass'], {}, 'mass', 'mass')),
});

export const couplingOf = (
  reader: FigureReader,
  file: EngineFile['couplings'][number],
  path: FilePath,
): Coupling => {
  switch (file.kind) {
    case 'same size':
      return { kind: file.kind, leader: file.components[0], follower: file.components[1] };
    case 'disturbed':
      return { kind: file.kind, renew: file.renew, ...given('if', file.if), ...given('by', file.by) };
    case 'balance':
      return {
        kind: file.kind,
        of: file.of,
        ...given('mass', file.mass),
        most: readFigure(reader, file.most, 'mass', [...path, 'most']).amount,
      };
    case 'renew with':
    case 'matched':
    case 'either or':
      return file;
    default:
      return file satisfies never;
  }
};
