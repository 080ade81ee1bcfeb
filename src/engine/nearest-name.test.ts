/** @module Putting a slip of the pen right. */
import { describe, expect, it } from 'vitest';
import { chooseName, nearestName } from './nearest-name.ts';

const known = ['stroke', 'rod', 'pin-offset', 'firing-order'];

describe('the nearest name', () => {
  it.each([
    ['strok', 'stroke'],
    ['Stroke', 'stroke'],
    ['pin_offset', 'pin-offset'],
    ['fireing-order', 'firing-order'],
    ['rdo', 'rod'],
  ])('to %s is %s', (word, meant) => {
    expect(nearestName(word, known)).toBe(meant);
  });

  it('is not guessed where nothing is near', () => {
    expect(nearestName('camshaft', known)).toBeUndefined();
    expect(chooseName('camshaft', known)).toBe('use one of stroke, rod, pin-offset, firing-order');
    expect(chooseName('camshaft', [])).toBe('leave it out: none is defined');
  });

  it('is offered, and not more than eight others', () => {
    expect(chooseName('strok', known)).toBe('write stroke, if that is what is meant');
    expect(
      chooseName(
        'x',
        Array.from({ length: 12 }, (_, no) => `name-${no}`),
      ),
    ).toMatch(/name-7 and 4 more$/);
  });
});
