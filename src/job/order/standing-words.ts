/** @module How a line that was ordered stands, in words. */
import type { LineStanding } from './standing.ts';

export const standingWords = (standing: LineStanding): string => {
  switch (standing.kind) {
    case 'awaited':
      return 'awaited';
    case 'to check':
      return standing.lacking.join('; ');
    case 'failed':
      return `not as ordered: ${standing.says.join('; ')}`;
    case 'taken in':
      return standing.accepted === undefined ? 'taken in' : `taken in as it is: ${standing.accepted}`;
    case 'given up':
      return 'given up: something else has come in its place';
    default:
      return standing satisfies never;
  }
};
