/** @module Shim packs that cannot be measured as found: lost or mixed up, as it was answered where the pack is asked for. */
import type { EngineType } from '../engine/engine-type.ts';
import { cellKey } from '../measure/reading.ts';
import { cellsOf } from '../measure/scheme.ts';
import { answerKey } from './asked.ts';
import type { AnsweredAsk, OpenJob } from './job.ts';

/** Where the pack as found is asked for. */
interface PackAsk {
  readonly operation: string;
  readonly ask: string;
}

/** The ask that wants each pack measured as found; undefined where the engine type asks for none. */
const packAskOf = ({ operations, pumpTiming }: EngineType): PackAsk | undefined => {
  if (pumpTiming?.found === undefined) return undefined;
  for (const { name, at, asks } of operations.values())
    for (const ask of asks)
      if (ask.reads === pumpTiming.found && ask.each && at === pumpTiming.at)
        return { operation: name, ask: ask.name };
  return undefined;
};

/**
 * Why the pack of a pump was not measured as found, and who said so.
 *
 * @returns undefined where it was read after all, or nothing was said
 */
export const packLost = (job: OpenJob, place: string): AnsweredAsk | undefined => {
  const { engine, readings } = job.sheet;
  const ask = packAskOf(engine);
  const answered = ask && job.answers.get(answerKey({ ...ask, place }));
  if (answered === undefined || !answered.good || answered.says.trim() === '') return undefined;
  const read = cellsOf(engine, engine.pumpTiming?.found ?? '', place).some((cell) =>
    readings.has(cellKey(cell)),
  );
  return read ? undefined : answered;
};
