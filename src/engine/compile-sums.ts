/** @module The sums of an operation, put together from its file. */
import { amountOf, readTyped, unitTyped } from '../quantity/typed.ts';
import { findUnit } from '../quantity/unit.ts';
import type { EngineFile } from './engine-file.ts';
import type { FigureReader } from './figure-reader.ts';
import type { FilePath } from './file-path.ts';
import { wrong } from './finding.ts';
import { given } from './given.ts';
import type { GivenInput, Kept, KeptFigures, OperationSum } from './operation-sum.ts';
import { ofFastener, ofInstrument, ofSizes, type SumFile } from './sum-file.ts';

type Source = Exclude<SumFile['given'][string], string>;

/** The word that says what kind of source it is. */
const heads = [
  'characteristic',
  'limit',
  'engine',
  'fastener',
  'list',
  'pumps',
  'valves',
  'instrument',
  'sum',
  'shared-by',
] as const;

/** What may stand beside each of them. */
const beside: Readonly<Record<(typeof heads)[number], readonly (keyof Source)[]>> = {
  characteristic: ['of', 'place', 'places'],
  limit: ['is'],
  engine: [],
  fastener: ['of'],
  list: ['as'],
  pumps: [],
  valves: [],
  instrument: ['of'],
  sum: ['result', 'input'],
  'shared-by': [],
};

const among = <Word extends string>(words: readonly Word[], word: string | undefined): Word | undefined =>
  words.find((one) => one === word);

/** A source with all that its kind needs; undefined where something is missing or out of place. */
const sourceOf = (file: Source): GivenInput | undefined => {
  if (file.characteristic !== undefined) {
    const of = among(ofSizes, file.of);
    if (file.of !== undefined && of === undefined) return undefined;
    const where = file.place === undefined ? undefined : { place: file.place };
    if (where && file.places) return undefined;
    return {
      kind: 'characteristic',
      name: file.characteristic,
      ...given('of', of),
      ...given('where', where ?? (file.places && ('all places' as const))),
    };
  }
  if (file.limit !== undefined) return file.is && { kind: 'limit', name: file.limit, is: file.is };
  if (file.engine !== undefined) return { kind: 'engine', of: file.engine };
  if (file.fastener !== undefined) {
    const of = among(ofFastener, file.of);
    return of && { kind: 'fastener', name: file.fastener, of };
  }
  if (file.list !== undefined) return { kind: 'list', name: file.list, as: file.as ?? 'named' };
  if (file.pumps !== undefined) return { kind: 'pumps', of: file.pumps };
  if (file.valves !== undefined) return { kind: 'valves', of: file.valves };
  if (file.instrument !== undefined) {
    const of = among(ofInstrument, file.of);
    return of && { kind: 'instrument', name: file.instrument, of };
  }
  if (file.sum !== undefined) {
    const { sum: name, result, input } = file;
    if (result !== undefined && input !== undefined) return undefined;
    if (result !== undefined) return { kind: 'sum', name, takes: 'result', key: result };
    return input === undefined ? undefined : { kind: 'sum', name, takes: 'input', key: input };
  }
  return file['shared-by'] && { kind: 'shared', by: file['shared-by'] };
};

const givenOf = (reader: FigureReader, file: SumFile['given'][string], path: FilePath): GivenInput => {
  if (typeof file === 'string') return { kind: 'text', text: file };
  const named = heads.filter((head) => file[head] !== undefined);
  const [head] = named;
  const stray =
    head && Object.keys(file).find((key) => key !== head && !beside[head].some((also) => also === key));
  const source = head && named.length === 1 && stray === undefined ? sourceOf(file) : undefined;
  if (source) return source;
  const needs = head ? [head, ...beside[head]].join(', ') : heads.join(', ');
  reader.findings.push(
    wrong(
      path,
      'it does not say where the input comes from',
      head ? `with ${head} go ${needs} and nothing else` : `give a figure, or one of ${needs}`,
    ),
  );
  return { kind: 'text', text: '' };
};

const boundOf = (reader: FigureReader, text: string, path: FilePath) => {
  const unit = findUnit(unitTyped(text) || '1');
  const typed = unit.kind === 'answer' ? readTyped(text, unit.value.dimension) : unit;
  const amount =
    typed.kind === 'answer' && unit.kind === 'answer' ? amountOf(typed.value, unit.value.dimension) : typed;
  if (
    unit.kind === 'answer' &&
    typed.kind === 'answer' &&
    amount.kind === 'answer' &&
    typeof amount.value === 'number'
  )
    return { dimension: unit.value.dimension, typed: typed.value, amount: amount.value };
  const refusal = [unit, typed, amount].flatMap((one) => (one.kind === 'refused' ? [one.refusal] : []))[0];
  reader.findings.push(
    wrong(path, `'${text}': ${refusal?.what ?? 'it cannot be read'}`, refusal?.remedy ?? ''),
  );
  return undefined;
};

const figuresKept = (
  reader: FigureReader,
  file: Pick<SumFile['keeps'][string], 'least' | 'greatest'>,
  path: FilePath,
): KeptFigures => {
  const least = file.least === undefined ? undefined : boundOf(reader, file.least, [...path, 'least']);
  const greatest =
    file.greatest === undefined ? undefined : boundOf(reader, file.greatest, [...path, 'greatest']);
  const dimension = least?.dimension ?? greatest?.dimension;
  if (least && greatest && least.dimension !== greatest.dimension)
    reader.findings.push(
      wrong(path, 'its two limits are figures of two kinds', 'give both in a unit of one kind'),
    );
  if (least && greatest && least.amount > greatest.amount)
    reader.findings.push(wrong(path, 'the least is more than the greatest', 'compare both with the manual'));
  return {
    bounds: { ...given('least', least?.amount), ...given('greatest', greatest?.amount) },
    ...given('dimension', dimension),
    printed: { ...given('least', least?.typed), ...given('greatest', greatest?.typed) },
  };
};

const keptOf = (
  reader: FigureReader,
  result: string,
  file: SumFile['keeps'][string],
  path: FilePath,
): Kept => ({
  result,
  ...figuresKept(reader, file, path),
  ...given('is', file.is),
  ...given('sizeOf', file['size-of']),
  ...given(
    'sizes',
    file.sizes &&
      new Map(
        Object.entries(file.sizes).map(([size, figures]) => [
          size,
          figuresKept(reader, figures, [...path, 'sizes', size]),
        ]),
      ),
  ),
});

/** The sums of an operation, in the order in which they are done. */
export const sumsOf = (
  reader: FigureReader,
  { at, sums }: Pick<EngineFile['operations'][string], 'at' | 'sums'>,
  path: FilePath,
): readonly OperationSum[] =>
  Object.entries(sums).map(([name, file]): OperationSum => {
    const own = [...path, name];
    if (file.each && (file.at ?? at) === undefined)
      reader.findings.push(
        wrong([...own, 'each'], 'it is not said where each of them is', 'name the kind of place under at'),
      );
    return {
      name,
      reckon: file.reckon,
      ...given('title', file.title),
      ...given('at', file.each ? (file.at ?? at) : undefined),
      given: new Map(
        Object.entries(file.given).map(([key, source]) => [
          key,
          givenOf(reader, source, [...own, 'given', key]),
        ]),
      ),
      keeps: Object.entries(file.keeps).map(([result, kept]) =>
        keptOf(reader, result, kept, [...own, 'keeps', result]),
      ),
      optional: file.optional,
      ...given('source', file.source),
    };
  });
