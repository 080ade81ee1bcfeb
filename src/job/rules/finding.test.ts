/** @module Which findings and sizes may be noted. */
import { describe, expect, it } from 'vitest';
import { bookedIn } from '../../../test/job/bench.ts';

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
    expect(bench.refused({ kind: 'note size found', component: 'mains', size: '0.5' })).toContain(
      'standard or 0.25',
    );
    bench.done({ kind: 'note size found', component: 'mains', size: '0.25' });
    expect(bench.open.sheet.sizesFound.get('mains')).toBe('0.25');
  });
});
