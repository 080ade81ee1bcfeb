/** @module A finding says all that was found, and a crack is a crack however it was found. */
import { describe, expect, it } from 'vitest';
import { findingWords, isCracked } from './finding-words.ts';

describe('a finding', () => {
  it('is said with its grade, its crack test and its hardness, as far as they are there', () => {
    expect(findingWords({ finding: 'worn' })).toBe('worn');
    expect(
      findingWords({
        finding: 'blued',
        grade: 'severe',
        crackTest: { by: 'magnetic particles', showed: 'no crack' },
        hardness: '48 HRC',
      }),
    ).toBe('blued, severe; crack test by magnetic particles: no crack; hardness 48 HRC');
  });

  it('is a crack where the eye or the test says so', () => {
    expect(isCracked({ finding: 'cracked' })).toBe(true);
    expect(isCracked({ finding: 'blued', crackTest: { by: 'dye penetrant', showed: 'a crack' } })).toBe(true);
    expect(isCracked({ finding: 'blued', crackTest: { by: 'dye penetrant', showed: 'no crack' } })).toBe(
      false,
    );
  });
});
