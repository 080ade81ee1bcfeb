/** @module What SQLite's result codes mean to whoever keeps the store. */
import { Refused } from './refused.ts';

/** Primary result codes (sqlite.org/rescode.html); the extended ones carry them in their low byte. */
const told: Readonly<Record<number, readonly [what: string, remedy: string]>> = {
  5: ['the store is in use by another program', 'close the other program, or wait until it is done'],
  6: ['the store is in use by another program', 'close the other program, or wait until it is done'],
  8: ['the store can be read but not written', 'give yourself the right to write the file and its folder'],
  10: ['the disk cannot be read or written', 'check the disk, then take the last good copy of the store'],
  11: ['the store is damaged', 'put the file aside, do not delete it, and take the last good copy'],
  13: ['the disk is full', 'make room on the disk; what was acknowledged before is kept'],
  14: [
    'the store cannot be opened',
    'check that the folder is there, that it is yours, and that it is a file',
  ],
  26: ['this file is not a store', 'give the path of a store, or of a file that is not there yet'],
};

const isSqlite = (error: unknown): error is Error & { readonly errcode: number } =>
  error instanceof Error && 'errcode' in error && typeof error.errcode === 'number';

const resultCode = (error: unknown): number | undefined =>
  isSqlite(error) ? error.errcode & 0xff : undefined;

/** Whether another program holds the store: worth another try. */
export const isBusy = (error: unknown): boolean => {
  const code = resultCode(error);
  return code === 5 || code === 6;
};

/** The error in words, where it is SQLite's and known; else as it is. */
export const inWords = (error: unknown, path: string): unknown => {
  const words = told[resultCode(error) ?? 0];
  if (words === undefined) return error;
  return new Refused({ what: words[0], where: path, remedy: words[1] }, error);
};
