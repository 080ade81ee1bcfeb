/** @module A mistyped name is answered with the one that was probably meant, and never with a far-fetched one. */
import { describe, expect, it } from 'vitest';
import { didYouMean, nearest } from './nearest.ts';

const names = ['check', 'judge', 'plan', 'reckon', 'record', 'export', 'import', 'verify', 'serve', 'demo'];

describe('the nearest name', () => {
  it.each([
    ['chek', 'check'],
    ['paln', 'plan'],
    ['Verify', 'verify'],
    ['recrod', 'record'],
    ['exprot', 'export'],
  ])('of %s is %s', (typed, name) => {
    expect(nearest(typed, names)).toBe(name);
  });

  it('is none where the word is another altogether', () => {
    expect(nearest('crankshaft', names)).toBeUndefined();
    expect(didYouMean('crankshaft', names, 'look at the help')).toBe('look at the help');
  });

  it('is soon found for a word of a million letters', () => {
    expect(nearest('x'.repeat(1_000_000), names)).toBeUndefined();
  });
});
