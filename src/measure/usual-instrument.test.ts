/** @module Figures of instruments of which only the kind is known. */
import { describe, expect, it } from 'vitest';
import { lengthOf } from '../quantity/typed.ts';
import { usualInstrument } from './usual-instrument.ts';

describe('a usual instrument', () => {
  it.each([
    // source: DIN 863-1: 4 µm to 50 mm, 5 to 100, 6 to 150, 7 to 200, 8 to 250, 9 to 300
    ['outside micrometer', 24, 0.004],
    ['outside micrometer', 50, 0.004],
    ['outside micrometer', 54.98, 0.005],
    ['outside micrometer', 100, 0.005],
    ['outside micrometer', 120, 0.006],
    ['outside micrometer', 299, 0.009],
    ['ball micrometer', 2, 0.004],
    // common practice, no source
    ['bore gauge', 85, 0.005],
    ['feeler set', 0.3, 0.005],
    ['feeler set', 0.6, 0.01],
    // source: DIN 878:2006 from memory; DIN 862
    ['dial gauge', 0.2, 0.017],
    ['depth gauge', 82, 0.04],
    ['caliper', 82, 0.05],
  ])('%s at %f mm errs by no more than %f mm', (kind, size, error) => {
    expect(lengthOf(usualInstrument(kind, 'x', size).permissibleError)).toEqual({
      kind: 'answer',
      value: error,
    });
  });

  it('has never been checked on its zero', () => {
    expect(usualInstrument('outside micrometer', 'x')).not.toHaveProperty('zero');
  });
});
