/** @module Reading the figures of an engine type, each with its unit, and noting those that cannot be read. */
import { amountOf, readTyped, type Typed } from '../quantity/typed.ts';
import type { FigureKind } from './figure-field.ts';
import type { FilePath } from './file-path.ts';
import { type Finding, wrong } from './finding.ts';
import { type PrintedPair, pairTyped } from './printed-pair.ts';

export interface Figure {
  readonly typed: Typed;
  /** In the core's unit. */
  readonly amount: number;
}

/** Collects what cannot be read while an engine type is put together. */
export interface FigureReader {
  readonly findings: Finding[];
  /** Figures printed in two units. */
  readonly pairs: PrintedPair[];
}

const unreadable: Figure = { typed: { text: '', unit: '' }, amount: Number.NaN };

const readOne = (
  { findings }: FigureReader,
  text: string,
  kind: FigureKind,
  path: FilePath,
): Figure | undefined => {
  const typed = readTyped(text, kind);
  const amount = typed.kind === 'refused' ? typed : amountOf(typed.value, kind);
  if (typed.kind === 'answer' && amount.kind === 'answer') {
    return { typed: typed.value, amount: amount.value };
  }
  const refusal =
    typed.kind === 'refused' ? typed.refusal : amount.kind === 'refused' ? amount.refusal : undefined;
  findings.push(wrong(path, `'${text}': ${refusal?.what ?? 'it cannot be read'}`, refusal?.remedy ?? ''));
  return undefined;
};

/**
 * A figure as typed and in the core's unit; one in brackets behind it is put down as its pair. One that cannot be
 * read is noted, and no engine comes of the file.
 */
export const readFigure = (reader: FigureReader, text: string, kind: FigureKind, path: FilePath): Figure => {
  const typed = pairTyped(text);
  const figure = readOne(reader, typed.figure, kind, path);
  const also = typed.also === undefined ? undefined : readOne(reader, typed.also, kind, path);
  if (figure && also) reader.pairs.push({ path, dimension: kind, figure: figure.typed, also: also.typed });
  return figure ?? unreadable;
};
