/** @module Hours left by wear so far: closed forms where all but the rate is known, laws, and what is refused. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { between } from '../../test/between.ts';
import { outsideCheck } from '../../test/outside-check.ts';
import { normalCumulative } from '../quantity/normal.ts';
import { reckonByName } from './list.ts';
import { type WearSoFar, wearLasts } from './remaining-hours.ts';

const asked = (texts: Readonly<Record<string, string>>) =>
  reckonByName('remaining-hours', {
    size: '54.95mm',
    'made-least': '54.98mm',
    'made-greatest': '54.98mm',
    limit: '54.93mm',
    run: '6000h',
    ...texts,
  });
const resultsOf = (texts: Readonly<Record<string, string>>) => {
  const found = asked(texts);
  if (found.kind === 'refused') throw new Error(found.refusal.what);
  return found.value.results;
};

/** The same from its definition alone: sizes and sizes as made gone through one by one, wear that makes larger. */
const goneThrough = (wear: WearSoFar, hours: number): number => {
  const { size, uncertainty, made, limit, run, scatter } = wear;
  let [worn, lasting] = [0, 0];
  for (let z = -5; z < 5; z += 0.005) {
    const found = size + z * uncertainty;
    for (let step = 0.5; step < 20; step += 1) {
      const far = found - (made.least + ((made.greatest - made.least) * step) / 20);
      if (far <= 0) continue;
      const likely = Math.exp((-z * z) / 2);
      worn += likely;
      if (found < limit) {
        lasting += likely * normalCumulative(Math.log(((limit - found) * run) / (far * hours)) / scatter);
      }
    }
  }
  return lasting / worn;
};

describe('hours left of a worn part', () => {
  it('are lognormal where only the rate to come is not known', () => {
    const closed = outsideCheck(
      'remaining-hours',
      'closed form of a lognormal rate, JCGM 106 Table 1',
      'h',
      0.5,
    );
    closed(Number(resultsOf({}).middle?.value), 4000);
    closed(Number(resultsOf({})['counted-on']?.value), 4000 * Math.exp(-1.2816 * 0.25));
    // source: closed form; 0.02 mm left at 0.03 mm in 6000 h is 4000 h in the middle; the normal value that nine in ten
    // exceed is -1.2816 (JCGM 106, Table 1 has 1.28): 4000 h × exp(∓1.2816 × 0.25) = 2903 h and 5511 h
    expect(resultsOf({})).toMatchObject({
      'counted-on': { value: 2903, unit: 'h' },
      middle: { value: 4000 },
      'one-in-ten': { value: 5511 },
      'still-within': { value: 100, unit: '%' },
    });
  });

  it('follow the size as made alone where the rate is steady', () => {
    // source: by hand; made anywhere from 54.97 to 54.99, worn 0.02 to 0.04: nine in ten have worn less than 0.038,
    // which leaves 0.02 for 3158 h, and half less than 0.03, which leaves it for 4000 h
    expect(resultsOf({ 'made-least': '54.97mm', 'made-greatest': '54.99mm', scatter: '0%' })).toMatchObject({
      'counted-on': { value: 3158 },
      middle: { value: 4000 },
    });
  });

  it('are the same for a bore as for a shaft', () => {
    const bore = { size: '55.03mm', 'made-least': '55mm', 'made-greatest': '55mm', limit: '55.05mm' };
    expect(resultsOf(bore)['counted-on']).toEqual(resultsOf({})['counted-on']);
  });

  it('are a matter of how likely it is within its limit still, where that is not sure', () => {
    // source: by hand; at the limit as read, as likely within as not
    expect(resultsOf({ size: '54.93±0.004mm' })).toMatchObject({
      'counted-on': { value: 0 },
      'still-within': { value: 50 },
    });
  });

  it('are not told of a part that shows no wear, nor where nothing was run, nor from figures turned about', () => {
    expect(asked({ size: '54.99mm' }).kind).toBe('refused');
    expect(asked({ run: '0h' }).kind).toBe('refused');
    expect(asked({ scatter: '120%' }).kind).toBe('refused');
    expect(asked({ 'made-least': '54.99mm' }).kind).toBe('refused');
  });

  it('fall with the hours, and come to nothing', () => {
    fc.assert(
      fc.property(between(54.931, 54.969), between(0, 0.005), between(0, 1), (size, uncertainty, scatter) => {
        const made = { least: 54.97, greatest: 54.99 };
        const wear = { wears: 'smaller' as const, size, uncertainty, made, limit: 54.93, run: 6000, scatter };
        let before = 1;
        for (const hours of [0, 10, 300, 2000, 6000, 30_000]) {
          const share = wearLasts(wear, hours) ?? Number.NaN;
          expect(share).toBeLessThanOrEqual(before + 1e-4);
          before = share;
        }
        expect(wearLasts(wear, 1e12)).toBeLessThan(1e-3);
      }),
    );
  });

  it('are as by their definition however well the size is known, hardly worn or all but at the limit', () => {
    // source: the definition, summed over 2000 sizes and 20 sizes as made; a ten-thousandth for each of the two sums
    for (const size of [0.012, 0.04, 0.09, 0.099, 0.102]) {
      for (const uncertainty of [0.0002, 0.0008, 0.003, 0.012]) {
        for (const scatter of [0.08, 0.25, 0.7]) {
          const made = { least: 0, greatest: 0.01 };
          const wear = { wears: 'larger' as const, size, uncertainty, made, limit: 0.1, run: 6000, scatter };
          for (const hours of [40, 1500, 9000]) {
            const found = wearLasts(wear, hours) ?? Number.NaN;
            const where = `${size} ± ${uncertainty}, ${scatter}, ${hours} h`;
            expect(Math.abs(found - goneThrough(wear, hours)), where).toBeLessThan(0.0002);
          }
        }
      }
    }
  });
});
