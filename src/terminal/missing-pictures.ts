/** @module Pictures that a journal names and a file does not hold, said on stderr. */
import { plain } from './plain.ts';

export const missingLines = (missing: readonly string[]): readonly string[] =>
  missing.map((picture) => `endfloat: not in the file: ${plain(picture)}`);
