/** @module Which findings and sizes may be noted. */
import { describe, expect, it } from 'vitest';
import { bookedIn } from '../../../test/job/bench.ts';
import { planQuestionOf } from '../planning.ts';

describe('a finding or a size found', () => {
  it('names a component, a place of it and a size that are there', () => {
    const bench = bookedIn();
    const finding = {
      kind: 'note finding',
      component: 'mains',
      place: 'main.2',
      finding: 'scored',
      mayGoBack: false,
      says: 'a groove 0.1 deep all round',
    } as const;
    expect(bench.refused({ ...finding, component: 'main' })).toContain('mains');
    expect(bench.refused({ ...finding, place: 'pump.1' })).toMatch(/main\.1/);
    expect(bench.refused({ ...finding, says: '' })).toContain('write what you saw');
    bench.done(finding);
    bench.done({ ...finding, finding: 'sound', says: '' });
    expect(bench.open.findings).toHaveLength(2);
    const tested = {
      ...finding,
      finding: 'blued',
      crackTest: { by: 'dye penetrant', showed: 'a crack' },
    } as const;
    expect(bench.refused({ ...tested, finding: 'sound' })).toContain('note it as cracked');
    expect(bench.refused({ ...tested, hardness: 'hard' })).toContain('52 HRC');
    expect(bench.refused({ ...tested, hardness: '52' })).toContain('52 HRC');
    // source: ISO 6506-1, designation of a Brinell hardness (600 HBW 1/30/20), written without blanks
    for (const hardness of ['52 HRC', '210 HB', '600 HBW1/30/20', '81,5 HR30N'])
      bench.done({ ...tested, grade: 'severe', hardness });
    const { findings } = planQuestionOf(bench.open);
    expect(findings.map(({ cracked }) => cracked)).toEqual([false, false, true, true, true, true]);
    expect(bench.refused({ kind: 'note size found', component: 'mains', size: '0.5' })).toContain(
      'standard or 0.25',
    );
    bench.done({ kind: 'note size found', component: 'mains', size: '0.25' });
    expect(bench.open.sheet.sizesFound.get('mains')).toBe('0.25');
  });
});
