/** @module What is to be measured for the decision, and what only once the engine goes together again. */
import type { EngineType } from '../engine/engine-type.ts';
import { measuredFor } from '../engine/measured-for.ts';
import { type Cell, cellKey } from '../measure/reading.ts';
import { entryOrder } from '../measure/scheme.ts';
import type { OpenJob } from './job.ts';
import { packLost } from './pack-lost.ts';
import { scopeOf } from './scope.ts';

/** Those that prove the build and judge no part: taken when the engine goes together, not at the strip. */
const builtOnly = (engine: EngineType): ReadonlySet<string> => {
  const judged = measuredFor(
    engine,
    [...engine.components.values()].flatMap(({ judgedBy }) => judgedBy),
  );
  const proving = [...engine.operations.values()]
    .filter(({ phase }) => phase !== 'strip')
    .flatMap(({ needs }) => needs);
  const depth = engine.pumpTiming === undefined ? [] : [engine.pumpTiming.depth];
  const built = measuredFor(engine, [...proving, ...depth]);
  return new Set([...built].filter((name) => !judged.has(name)));
};

interface KeyedCell {
  readonly cell: Cell;
  readonly key: string;
}

/** The cells of an engine never change, and they are asked for at every reading. */
const known = new WeakMap<EngineType, readonly KeyedCell[]>();

const cellsForDecision = (engine: EngineType): readonly KeyedCell[] => {
  const before = known.get(engine);
  if (before !== undefined) return before;
  const later = builtOnly(engine);
  const cells = entryOrder(engine)
    .filter(({ characteristic }) => !later.has(characteristic))
    .map((cell) => ({ cell, key: cellKey(cell) }));
  known.set(engine, cells);
  return cells;
};

export interface ToMeasure {
  readonly of: number;
  /** Cells still to be read, in the order in which hands go. */
  readonly left: readonly Cell[];
}

/** How far measuring for the decision has come. */
export const toMeasure = (job: OpenJob): ToMeasure => {
  const { engine, readings } = job.sheet;
  const { whole, inQuestion } = scopeOf(job);
  const all = cellsForDecision(engine);
  const cells = whole ? all : all.filter(({ cell }) => inQuestion(cell.characteristic, cell.place));
  const lost = ({ characteristic, place }: Cell): boolean =>
    characteristic === engine.pumpTiming?.found && packLost(job, place) !== undefined;
  return {
    of: cells.length,
    left: cells.filter(({ key, cell }) => !readings.has(key) && !lost(cell)).map(({ cell }) => cell),
  };
};
