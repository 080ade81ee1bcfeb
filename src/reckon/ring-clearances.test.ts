/** @module Gap and side clearance of a ring against manuals, and which way lies the harm. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { between } from '../../test/between.ts';
import { known } from '../../test/known.ts';
import { outsideCheck } from '../../test/outside-check.ts';
import { verdictOf } from '../measure/guard-band.ts';
import { certain, uncertain } from '../quantity/uncertain.ts';
import { reckonByName } from './list.ts';
import { gapToOpen } from './ring-gap.ts';

const reckoned = (name: string, texts: Readonly<Record<string, string>>) => known(reckonByName(name, texts));
const where = (name: string, texts: Readonly<Record<string, string>>) => {
  const asked = reckonByName(name, texts);
  return asked.kind === 'refused' ? asked.refusal.where : undefined;
};

describe('the end gap of a ring', () => {
  const sizes = { gap: '0.38mm', bore: '98mm' };

  it('grows with the wear of the bore as manuals print it', () => {
    const growth = (gap: string, bore: string, worn: string) => {
      const { results } = reckoned('ring-gap', { gap, bore, worn });
      return Number(results['gap-worn']?.value) - Number(results.gap?.value);
    };
    // source: TM 5-3805-261-34: 0.003 in of gap for each 0.001 in of bore, printed to one digit
    outsideCheck(
      'ring-gap',
      'TM 5-3805-261-34: 0.003 in for 0.001 in, one digit',
      'mm',
      0.0005 * 25.4,
    )(growth('0.014in', '4.000in', '4.001in'), 0.003 * 25.4);
    // source: TM 5-3825-229-14&P, p 6-24: a bore 0.03 mm under takes 0.08 mm off the gap; both figures are rounded to
    // 0.01 mm from 0.0012 in and 0.0031 in, and the bore's rounding counts π times
    outsideCheck(
      'ring-gap',
      'TM 5-3825-229-14&P, p 6-24: 0.08 mm for 0.03 mm, rounded',
      'mm',
      0.005 * (1 + Math.PI),
    )(growth('0.35mm', '98.00mm', '97.97mm'), -0.08);
  });

  it('that is too small is outside, says how much must come off, and why it is the worse side', () => {
    // source: TM 5-3825-229-14&P, p 6-24: top ring 0.35 to 0.60 mm
    const limits = { least: '0.35mm', greatest: '0.60mm' };
    const small = reckoned('ring-gap', { ...sizes, gap: '0.30±0.01mm', ...limits });
    expect(small.results.verdict?.value).toBe('outside');
    expect(Number(small.results['open-by']?.value)).toBeCloseTo(0.05 + (1.6449 * 0.01) / 1.95996, 5);
    expect(small.notes[0]).toContain('Too small is worse');
    const right = reckoned('ring-gap', { ...sizes, gap: '0.45±0.01mm', ...limits });
    expect(right.results.verdict?.value).toBe('within');
    expect(right.results['open-by']?.value).toBe(0);
  });

  it('once opened by so much is proved against its least', () => {
    fc.assert(
      fc.property(between(0, 0.6), between(0.1, 0.6), between(0.001, 0.05), (gap, least, u) => {
        const opened = gap + gapToOpen(uncertain(gap, 'feeler', u), least, 0.95);
        expect(verdictOf(opened + 1e-9, u, Infinity, { least }, 0.95)).toBe('within');
      }),
    );
    expect(gapToOpen(certain(0.5), 0.3, 0.95)).toBe(0);
  });

  it('above its greatest in the worn part only is laid to the bore', () => {
    const { notes } = reckoned('ring-gap', { ...sizes, worn: '98.1mm', greatest: '0.6mm' });
    expect(notes.some((note) => note.includes('the bore’s wear'))).toBe(true);
  });

  it.each([
    [{ gap: '-0.1mm' }, 'gap'],
    [{ bore: '0mm' }, 'gap, bore'],
    [{ gap: '0.4m' }, 'gap, bore'],
    [{ worn: '120mm' }, 'bore, worn'],
    [{ least: '0.6mm', greatest: '0.3mm' }, 'least, greatest'],
  ])('refuses %o', (texts, at) => {
    expect(where('ring-gap', { ...sizes, ...texts })).toBe(at);
  });
});

describe('the side clearance of a ring', () => {
  it('of two parallel faces in a standard fit lies where the standard has it', () => {
    // source: ISO 286-2: 25 H8 +33/0, f7 −20/−41 µm, for parallel faces as for cylinders: clearance 20 to 74 µm
    const check = outsideCheck(
      'ring-side-clearance',
      'ISO 286-2, fit 25 H8/f7 of parallel faces',
      'mm',
      1e-9,
    );
    const clearanceOf = (groove: string, ring: string) =>
      Number(reckoned('ring-side-clearance', { groove, ring }).results.clearance?.value);
    check(clearanceOf('25.000mm', '24.980mm'), 0.02);
    check(clearanceOf('25.033mm', '24.959mm'), 0.074);
  });

  it('with a new ring condemns the groove, with a used one not', () => {
    // source: TM 9-2815-255-24, p 3-191: with a new ring not above 0.20 mm
    const asked = { groove: '2.700±0.006mm', ring: '2.478±0.003mm', greatest: '0.20mm' };
    const fresh = reckoned('ring-side-clearance', asked);
    expect(fresh.results.verdict?.value).toBe('outside');
    expect(fresh.notes[0]).toContain('the wear of the groove');
    expect(reckoned('ring-side-clearance', { ...asked, 'ring-is': 'used' }).notes[0]).toContain(
      'the wear of the ring is in it',
    );
    expect(where('ring-side-clearance', { ...asked, 'ring-is': 'spare' })).toContain('ring-is');
  });

  it('of a ring that does not go in is said to be none', () => {
    expect(reckoned('ring-side-clearance', { groove: '2.5mm', ring: '2.5mm' }).notes[0]).toContain(
      'it sticks',
    );
  });
});
