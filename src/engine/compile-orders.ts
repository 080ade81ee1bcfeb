/** @module What an engine type says for orders, put together from its file: one-use parts, the machine shop's terms. */
import type { Typed } from '../quantity/typed.ts';
import type { EngineFile } from './engine-file.ts';
import type { Machining, OneUse } from './engine-type.ts';
import type { FigureReader } from './figure-reader.ts';
import type { FilePath } from './file-path.ts';
import { given } from './given.ts';
import { readBounds } from './limits.ts';
import { centsOf } from './price.ts';

export const machiningOf = (
  reader: FigureReader,
  file: NonNullable<EngineFile['components'][string]['machining']>,
  path: FilePath,
): Machining => {
  const printed: Record<string, Typed> = {};
  const read = (what: 'finish' | 'fillet' | 'chamfer') =>
    readBounds(reader, file[what], [...path, what], printed, what);
  return {
    finish: read('finish'),
    fillet: read('fillet'),
    chamfer: read('chamfer'),
    printed,
    ...given('marks', file.marks),
    also: file.also,
    crackTest: {
      ...given('before', file['crack-test']?.before),
      ...given('after', file['crack-test']?.after),
    },
    ...given('source', file.source),
  };
};

export const oneUseOf = (name: string, file: EngineFile['one-use'][string]): OneUse => ({
  name,
  title: file.title,
  at: file.at,
  each: file.each,
  supplier: file.supplier,
  cents: centsOf(file.price),
  days: file.days,
  disturbedBy: file['disturbed-by'],
  renewedWith: file['renewed-with'],
  ...given('source', file.source),
});
