/** @module The engine type that a job carries, read once however often its journal is replayed. */
import { type EngineReading, readEngineType } from '../engine/read-engine-type.ts';

/** Texts that were read lately; a shop works on few types at a time. */
const most = 8;
const known = new Map<string, EngineReading>();

/** As `readEngineType`; the same text gives the very same engine, so that what is kept of it is found again. */
export const engineOfJob = (text: string): EngineReading => {
  const before = known.get(text);
  if (before !== undefined) return before;
  const reading = readEngineType(text);
  const [oldest] = known.keys();
  if (known.size >= most && oldest !== undefined) known.delete(oldest);
  known.set(text, reading);
  return reading;
};
