/** @module Asks that cannot be answered, and words for an order that is never broken. */
import { describe, expect, it } from 'vitest';
import { askingEngine } from '../../../test/job/asking.ts';
import { readEngineType } from '../read-engine-type.ts';

const found = (from: string, to: string): string =>
  readEngineType(askingEngine.replace(from, to))
    .troubles.map(({ what, remedy }) => `${what} | ${remedy}`)
    .join('\n');

describe('what an operation asks', () => {
  it('is in order where each can be answered', () => {
    expect(found('', '')).not.toMatch(/asks for (no|a) reading|must be counts|need not be done|no places/);
  });

  it.each([
    ['a reading of nothing', 'answer: picture }', 'answer: reading }', 'marks asks for a reading of nothing'],
    [
      'a reading of what is not there',
      'answer: picture }',
      'answer: reading, reads: pump-dept }',
      'pump-depth',
    ],
    [
      'a reading at places where it is not read',
      'answer: picture }',
      'answer: reading, reads: pump-depth, each: true }',
      'is not read at main',
    ],
    [
      'a characteristic for what is no reading',
      'answer: picture }',
      'reads: pump-depth }',
      'asks for no reading',
    ],
    ['a count like what is no count', 'ask: plugs-out } }', 'ask: marks } }', 'both must be counts'],
    ['once a place of nowhere', 'stop to stop }', 'stop to stop, each: true }', 'has no places of its own'],
    [
      'words for what need not come before',
      'breaks: { lay-crankshaft',
      'breaks: { first-start',
      'put first-start under',
    ],
  ])('is an error where it is %s', (_, from, to, says) => {
    expect(found(from, to)).toContain(says);
  });
});
