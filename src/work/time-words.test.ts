/** @module How long work takes, in words. */
import { expect, it } from 'vitest';
import { leftWords, timeWords } from './time-words.ts';

it('the time left names the operations of which nobody said how long they take', () => {
  expect(leftWords({ left: 380, untold: 0 })).toBe('6 h 20 min');
  expect(leftWords({ left: 380, untold: 1 })).toBe('6 h 20 min and 1 operation');
  expect(leftWords({ left: 0, untold: 3 })).toBe('3 operations');
  expect(timeWords([{ minutes: 50 }, { minutes: 25 }, {}])).toBe('1 h 15 min and 1 operation');
});
