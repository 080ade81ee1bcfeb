/** @module Where a plan falls short of what is asked. */
import { describe, expect, it } from 'vitest';
import { fallsShort } from './falls-short.ts';

const plan = { cents: 120_050, days: 9, hours: 3_999.5 };

describe('a plan held against what is asked', () => {
  it('falls short in nothing where it keeps all to the last hour, day and hundredth', () => {
    expect(fallsShort(plan, {})).toEqual([]);
    expect(fallsShort(plan, { cents: 120_050, days: 9, hours: 3_999.5 })).toEqual([]);
  });

  it('is said to be too short, too late and too dear', () => {
    expect(fallsShort(plan, { cents: 120_000, days: 8, hours: 4_000 })).toEqual([
      '1 h too short',
      '1 day too late',
      '0.50 too dear',
    ]);
    expect(fallsShort(plan, { days: 6.5 })).toEqual(['2.5 days too late']);
  });
});
