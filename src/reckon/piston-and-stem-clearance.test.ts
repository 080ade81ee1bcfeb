/** @module Clearances of piston and stem against published sizes, and their verdicts. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { between } from '../../test/between.ts';
import { known } from '../../test/known.ts';
import { outsideCheck } from '../../test/outside-check.ts';
import { certain, standardUncertainty, uncertain } from '../quantity/uncertain.ts';
import { clearanceByDiameter } from './clearance.ts';
import { reckonByName } from './list.ts';

const reckoned = (name: string, texts: Readonly<Record<string, string>>) => known(reckonByName(name, texts));
const where = (name: string, texts: Readonly<Record<string, string>>) => {
  const asked = reckonByName(name, texts);
  return asked.kind === 'refused' ? asked.refusal.where : undefined;
};
const numberOf = (name: string, texts: Readonly<Record<string, string>>, key: string): number =>
  Number(reckoned(name, texts).results[key]?.value);

describe('the clearance of a piston', () => {
  it('is what two manuals print for the sizes that they print', () => {
    // source: TM 55-1905-220-14-4, p 3-859: liner 4.2495 to 4.2511 in; TM 5-3810-303-24, table of standard sizes: skirt
    // 4.2428 to 4.2450 in, skirt to liner 0.0045 to 0.0083 in
    const check = outsideCheck(
      'piston-clearance',
      'TM 55-1905-220-14-4, p 3-859 (liner) and TM 5-3810-303-24 (skirt, clearance)',
      'mm',
      1e-9,
    );
    check(numberOf('piston-clearance', { bore: '4.2495in', piston: '4.2450in' }, 'clearance'), 0.0045 * 25.4);
    check(numberOf('piston-clearance', { bore: '4.2511in', piston: '4.2428in' }, 'clearance'), 0.0083 * 25.4);
  });

  it('of a standard fit lies where the standard has it', () => {
    // source: ISO 286-2: 80 H8 +46/0, f7 −30/−60 µm: clearance 30 to 106 µm
    const check = outsideCheck('piston-clearance', 'ISO 286-2, fit 80 H8/f7', 'mm', 1e-9);
    check(numberOf('piston-clearance', { bore: '80.000mm', piston: '79.970mm' }, 'clearance'), 0.03);
    check(numberOf('piston-clearance', { bore: '80.046mm', piston: '79.940mm' }, 'clearance'), 0.106);
  });

  it('is judged by the manual’s limits, and by none where none are given', () => {
    // source: TM 9-2815-260-24, p 5-87: piston to liner 0.003 to 0.006 in
    const limits = { least: '0.003in', greatest: '0.006in' };
    const sizes = { bore: '4.2000±0.0002in', piston: '4.1955±0.0002in' };
    expect(reckoned('piston-clearance', { ...sizes, ...limits }).results.verdict?.value).toBe('within');
    const worn = reckoned('piston-clearance', { ...sizes, bore: '4.2030±0.0002in', ...limits });
    expect(worn.results.verdict?.value).toBe('outside');
    expect(worn.notes[0]).toBe('It lies 0.038 mm above the greatest allowed.');
    const near = reckoned('piston-clearance', { ...sizes, bore: '4.2014±0.0002in', ...limits });
    expect(near.results.verdict?.value).toBe('unsure');
    const unjudged = reckoned('piston-clearance', sizes);
    expect(unjudged.results.verdict).toBeUndefined();
    expect(unjudged.notes[0]).toContain('No limit was given');
  });

  it('loses the error of the one micrometer that set the bore gauge', () => {
    const sizes = { bore: '98.06±0.005mm', piston: '97.95±0.005mm', shared: '0.005mm' };
    expect(reckoned('piston-clearance', sizes).results.clearance?.u ?? 0).toBeLessThan(1e-9);
    expect(where('piston-clearance', { ...sizes, shared: '0.006mm' })).toBe('shared');
  });

  it('says when the piston does not go in', () => {
    expect(reckoned('piston-clearance', { bore: '98mm', piston: '98mm' }).notes[0]).toContain(
      'does not go in',
    );
    expect(where('piston-clearance', { bore: '0mm', piston: '98mm' })).toBe('bore');
  });
});

describe('a clearance as a part of a diameter', () => {
  it('does not change when both sizes grow alike', () => {
    fc.assert(
      fc.property(between(50, 150), between(0.01, 0.2), between(0.5, 2), (size, gap, factor) => {
        for (const of of ['inner', 'outer'] as const) {
          const own = clearanceByDiameter(certain(size + gap), certain(size), of).value;
          const grown = clearanceByDiameter(certain((size + gap) * factor), certain(size * factor), of).value;
          expect(grown).toBeCloseTo(own, 12);
        }
      }),
    );
  });

  it('is known as its slopes say', () => {
    // source: JCGM 100:2008, 5.1.2: of 1 − piston / bore the slopes are piston / bore² and −1 / bore
    const part = clearanceByDiameter(
      uncertain(100, 'bore', 0.003),
      uncertain(99.9, 'piston', 0.004),
      'outer',
    );
    expect(standardUncertainty(part)).toBeCloseTo(Math.hypot((0.003 * 99.9) / 1e4, 0.004 / 100), 12);
  });
});

describe('the clearance of a valve stem', () => {
  it('is what a manual prints for the sizes that it prints', () => {
    // source: TM 9-6115-464-34, p 1-15: inlet stem 0.3725 to 0.3735 in, guide 0.3740 to 0.3750 in, clearance 0.0005 to
    // 0.0025 in
    const check = outsideCheck('stem-clearance', 'TM 9-6115-464-34, p 1-15', 'mm', 1e-9);
    check(numberOf('stem-clearance', { guide: '0.3740in', stem: '0.3735in' }, 'clearance'), 0.0005 * 25.4);
    check(numberOf('stem-clearance', { guide: '0.3750in', stem: '0.3725in' }, 'clearance'), 0.0025 * 25.4);
  });

  it('parts the wear between stem and guide', () => {
    // source: TM 10-3930-647-14: stem worn by 0.001 in, guide by 0.0015 in at most: both together open by 0.0025 in
    const asked = {
      'new-guide': '0.3750in',
      'new-stem': '0.3725in',
      guide: '0.3765in',
      stem: '0.3715in',
    };
    const check = outsideCheck(
      'stem-clearance',
      'TM 10-3930-647-14, wear of valve stem and guide',
      'mm',
      1e-9,
    );
    check(numberOf('stem-clearance', asked, 'guide-wear'), 0.0015 * 25.4);
    check(numberOf('stem-clearance', asked, 'stem-wear'), 0.001 * 25.4);
    check(numberOf('stem-clearance', asked, 'clearance'), (0.0025 + 0.0025) * 25.4);
  });

  it.each([
    [{ guide: '-8mm' }, 'guide'],
    [{ 'new-guide': '8in' }, 'new-guide'],
    [{ 'new-stem': '0mm' }, 'new-stem'],
    [{ least: '0.2mm', greatest: '0.1mm' }, 'least, greatest'],
    [{ shared: '-1mm' }, 'shared'],
    [{ conformance: '20%' }, 'conformance'],
  ])('refuses %o', (texts, at) => {
    expect(where('stem-clearance', { guide: '8.04mm', stem: '7.96mm', ...texts })).toBe(at);
  });

  it('says that a stem binds', () => {
    expect(reckoned('stem-clearance', { guide: '8mm', stem: '8.01mm' }).notes[0]).toContain('it binds');
  });
});
