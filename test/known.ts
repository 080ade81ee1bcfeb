/** @module What an answer holds, where a test knows that it is no refusal. */
import { type Answer, refusalText } from '../src/quantity/refusal.ts';

export const known = <T>(given: Answer<T>): T => {
  if (given.kind === 'refused') throw new Error(refusalText(given.refusal));
  return given.value;
};
