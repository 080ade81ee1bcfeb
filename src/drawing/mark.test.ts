/** @module Checks of the mark that a place gets from its verdicts. */
import { describe, expect, it } from 'vitest';
import type { Judged, Verdict } from '../measure/verdict-model.ts';
import { markOf } from './mark.ts';

const limits = { new: {}, goesBack: {}, printed: {} };
const cell = { place: 'main.1', characteristic: 'size', plane: '', axis: '' };

const judged = (verdict: Verdict, cells: readonly Verdict[]): Judged => ({
  place: 'main.1',
  characteristic: 'size',
  limits,
  verdict,
  cells: cells.map((one) => ({ cell, verdict: one, ...(one === 'not yet known' ? {} : { reading: 'r' }) })),
  missing: cells.filter((one) => one === 'not yet known').map(() => cell),
});

describe('the mark of a place', () => {
  it('is the worst that is known there', () => {
    const within = judged('within', ['within']);
    expect(markOf([within, judged('unsure', ['unsure'])])).toBe('unsure');
    expect(markOf([judged('unsure', ['unsure']), judged('outside', ['outside']), within])).toBe('outside');
  });

  it('shows one cell outside before the rest is read', () => {
    expect(markOf([judged('outside', ['outside', 'not yet known'])])).toBe('outside');
  });

  it('is within only when nothing is missing', () => {
    expect(markOf([judged('not yet known', ['within', 'not yet known'])])).toBe('read in part');
    expect(markOf([judged('within', ['within', 'within'])])).toBe('within');
  });

  it('is nothing yet where nothing is read', () => {
    expect(markOf([judged('not yet known', ['not yet known'])])).toBe('nothing yet');
    expect(markOf([])).toBe('nothing yet');
  });
});
