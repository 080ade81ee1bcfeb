/** @module An engine type as whoever writes it wants it read: with its sums held against those that the program knows. */
import { type EngineReading, readEngineType } from '../../engine/read-engine-type.ts';
import { checkSums } from './check-sums.ts';

/** As `readEngineType`, and what is wrong with the sums of its operations. */
export const readCheckedType = (source: string | Uint8Array): EngineReading =>
  readEngineType(source, [checkSums]);
