/** @module An operation and what it asks, from its entry in the file. */
import { sumsOf } from './compile-sums.ts';
import type { EngineFile } from './engine-file.ts';
import type { Ask, Operation } from './engine-type.ts';
import type { FigureReader } from './figure-reader.ts';
import { given } from './given.ts';

type OperationFile = EngineFile['operations'][string];

const askOf = ([name, file]: readonly [string, OperationFile['asks'][string]]): Ask => ({
  name,
  ask: file.ask,
  answer: file.answer,
  ...given('reads', file.reads),
  each: file.each,
  ...given('like', file.like),
  secondPerson: file.by === 'second person',
});

export const operationOf = (reader: FigureReader, name: string, file: OperationFile): Operation => ({
  name,
  title: file.title,
  phase: file.phase,
  ...given('at', file.at),
  after: file.after,
  needs: file.needs,
  readAgain: file['read-again'],
  removes: file.removes,
  fits: file.fits,
  renews: file.renews,
  covers: file.covers,
  tightens: file.tightens,
  ...given('stand', file.stand),
  tools: file.tools,
  people: file.people,
  ...given('minutes', file.minutes),
  asks: Object.entries(file.asks).map(askOf),
  gate: file.gate,
  breaks: new Map(Object.entries(file.breaks)),
  cautions: file.cautions,
  sums: sumsOf(reader, file, ['operations', name, 'sums']),
});
