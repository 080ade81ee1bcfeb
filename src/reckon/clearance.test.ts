/** @module Clearance loses the error that both measurements share. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { outsideCheck } from '../../test/outside-check.ts';
import { standardUncertainty, uncertain } from '../quantity/uncertain.ts';
import { clearance } from './clearance.ts';
import { reckonByName } from './list.ts';

const ask = (texts: Readonly<Record<string, string>>) => reckonByName('clearance', texts);
const resultsOf = (texts: Readonly<Record<string, string>>) => {
  const asked = ask(texts);
  if (asked.kind === 'refused') throw new Error(asked.refusal.what);
  return asked.value.results;
};

describe('clearance', () => {
  // source: ISO 286-2, H7/g6 on 50 mm: bore +25/0, shaft -9/-25 µm, clearance 9 to 50 µm
  it.each([
    ['50.000mm', '49.991mm', 0.009],
    ['50.025mm', '49.975mm', 0.05],
    ['1.9685in', '1.9675in', 0.0254],
  ])('of a shaft of %s in a bore of %s is %f mm', (bore, shaft, gap) => {
    const { clearance: got } = resultsOf({ bore, shaft });
    expect(got?.unit).toBe('mm');
    outsideCheck('clearance', 'ISO 286-2, H7/g6 on 50 mm', 'mm', 1e-9)(Number(got?.value), gap);
  });

  it('is minus, and called an interference, where the shaft is the larger', () => {
    // source: ISO 286-2, H7/p6 on 50 mm: 1 to 42 µm of interference
    const asked = ask({ bore: '50.000mm', shaft: '50.042mm' });
    const got = asked.kind === 'answer' ? Number(asked.value.results.clearance?.value) : Number.NaN;
    outsideCheck('clearance', 'ISO 286-2, H7/p6 on 50 mm', 'mm', 1e-9)(got, -0.042);
    expect(asked.kind === 'answer' && asked.value.notes).toEqual([
      'The shaft is the larger: this is an interference.',
    ]);
  });

  it('loses an influence by its name', () => {
    const gap = clearance(uncertain(55.03, 'micrometer', 0.002), uncertain(54.98, 'micrometer', 0.002));
    expect(standardUncertainty(gap)).toBe(0);
  });

  it('obeys u² = u(bore)² + u(shaft)² − 2 u(shared)²', () => {
    // source: JCGM 100:2008, 5.2.2, equation (16)
    fc.assert(
      fc.property(
        fc.integer({ min: 10, max: 90 }),
        fc.integer({ min: 10, max: 90 }),
        fc.nat({ max: 10 }),
        (b, s, c) => {
          const texts = {
            bore: `55.031 ± 0.0${b} mm`,
            shaft: `54.98 ± 0.0${s} mm`,
            shared: `${c / 1000} mm`,
          };
          const u = (resultsOf(texts).clearance?.u ?? 0) * 1.959963985;
          expect(u ** 2).toBeCloseTo((b / 1000) ** 2 + (s / 1000) ** 2 - 2 * (c / 1000) ** 2, 9);
        },
      ),
    );
  });

  it('over the shaft is known as its quotient is', () => {
    const { clearance: gap, 'per-shaft': ratio } = resultsOf({
      bore: '50.05 ± 0.01 mm',
      shaft: '50 ± 0.01 mm',
    });
    expect(ratio?.value).toBeCloseTo(0.001, 12);
    expect(ratio?.u).toBeCloseTo((gap?.u ?? 0) / 50, 6);
  });

  it.each([
    [{ bore: '55.03 ± 0.003 mm', shaft: '54.98mm', shared: '0.002mm' }, 'shared'],
    [{ bore: '55.03 ± 0.003 mm', shaft: '54.98 ± 0.003 mm', shared: '-0.002mm' }, 'shared'],
    [{ bore: '-55.03mm', shaft: '54.98mm' }, 'bore'],
    [{ bore: '55.03mm', shaft: '0mm' }, 'shaft'],
  ])('refuses %o', (texts, where) => {
    const refused = ask(texts);
    expect(refused.kind === 'refused' && refused.refusal.where).toBe(where);
  });
});
