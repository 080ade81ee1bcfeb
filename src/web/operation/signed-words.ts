/** @module How an operation was signed, in words. */
import type { DoneOperation } from '../../job/job.ts';

export const signedWords = ({ by, at, note, overruled }: DoneOperation): string =>
  [
    `done by ${by}, ${at.slice(0, 16).replace('T', ' ')}`,
    ...(note === '' ? [] : [note]),
    ...(overruled === undefined ? [] : [`overruled by ${overruled.by}: ${overruled.why}`]),
  ].join(': ');
