/** @module Guard band and acceptance zone against ISO 14253-1 and the curve itself. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { between } from '../../test/between.ts';
import { outsideCheck } from '../../test/outside-check.ts';
import { normalCumulative } from '../quantity/normal.ts';
import { acceptanceZone } from './guard-band.ts';
import { reckonByName } from './list.ts';

const ask = (texts: Readonly<Record<string, string>>) => reckonByName('guard-band', texts);

describe('the zone of acceptance', () => {
  it('is the limits less 1.645 u where they lie far apart', () => {
    // source: ISO 14253-1:2017: guard band 1.65 u at 95 % (1.645 rounded up)
    const zone = acceptanceZone(0.002, { least: 54.98, greatest: 55.02 }, 0.95);
    const near = outsideCheck('guard-band', 'ISO 14253-1:2017, 1.645 u at 95 %', 'mm', 1e-6);
    near(zone?.least ?? Number.NaN, 54.98 + 1.645 * 0.002);
    near(zone?.greatest ?? Number.NaN, 55.02 - 1.645 * 0.002);
  });

  it('is empty below 3.92 u', () => {
    // source: recomputed: 2 × 1.960, the middle of a tolerance that holds 95 %
    expect(acceptanceZone(1, { least: -1.95, greatest: 1.95 }, 0.95)).toBeUndefined();
    expect(acceptanceZone(1, { least: -1.97, greatest: 1.97 }, 0.95)).toBeDefined();
  });

  it('ends where just the probability asked for is left', () => {
    fc.assert(
      fc.property(between(4.5, 20), between(0.6, 0.97), (width, asked) => {
        const { greatest = Number.NaN } = acceptanceZone(1, { least: 0, greatest: width }, asked) ?? {};
        expect(normalCumulative(width - greatest) - normalCumulative(-greatest)).toBeCloseTo(asked, 9);
      }),
    );
  });

  it('is open where a limit is missing', () => {
    expect(acceptanceZone(0, { greatest: 5 }, 0.95)).toEqual({ greatest: 5 });
    expect(acceptanceZone(1, { least: 5 }, 0.95)?.least).toBeCloseTo(6.645, 3);
  });

  it('that is none is said in words', () => {
    const asked = ask({ 'known-to': '0.02mm', least: '54.98mm', greatest: '55mm' });
    expect(asked.kind === 'answer' && asked.value.notes[0]).toContain('no size can be proved within them');
    const refused = ask({ 'known-to': '-0.02mm', least: '54.98mm' });
    expect(refused.kind === 'refused' && refused.refusal.where).toBe('known-to');
  });
});
