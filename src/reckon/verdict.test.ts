/** @module A verdict asked for by name follows the rule, and says what would settle it. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { between } from '../../test/between.ts';
import { outsideCheck } from '../../test/outside-check.ts';
import { verdictOf } from '../measure/guard-band.ts';
import { reckonByName } from './list.ts';
import { settledBy } from './verdict.ts';

const ask = (texts: Readonly<Record<string, string>>) => {
  const asked = reckonByName('verdict', texts);
  if (asked.kind === 'refused') throw new Error(asked.refusal.what);
  return asked.value;
};

describe('a verdict', () => {
  it('has the printed probability of conformance', () => {
    // source: JCGM 106:2012, 7.3 example (limit -5.40, measured -5.47, u 0.05: 0.92), as a length
    const { results } = ask({ size: '-5.47 ± 0.098 mm', greatest: '-5.40mm' });
    outsideCheck(
      'verdict',
      'JCGM 106:2012, 7.3, example',
      '1',
      0.005,
    )(Number(results.conformance?.value), 0.92);
    expect(results.verdict).toEqual({ value: 'unsure', unit: '' });
  });

  it('keeps the guard band of ISO 14253-1', () => {
    // source: ISO 14253-1:2017: 1.65 u at 95 % and one limit (1.645 rounded up)
    const { results } = ask({ size: '54.990 ± 0.00196 mm', least: '54.980mm', greatest: '55.000mm' });
    outsideCheck(
      'verdict',
      'ISO 14253-1:2017, 1.645 u at 95 %',
      'mm',
      5e-7,
    )(Number(results['guard-band']?.value), 0.001645);
    expect(results.verdict?.value).toBe('within');
  });

  it.each([
    ['54.990 ± 0.004 mm', 'within'],
    ['54.982 ± 0.004 mm', 'unsure'],
    ['54.979 ± 0.004 mm', 'unsure'],
    ['54.970 ± 0.004 mm', 'outside'],
    ['55.010 ± 0.004 mm', 'outside'],
    ['54.980mm', 'within'],
    ['54.9799mm', 'outside'],
  ])('of %s between 54.980 and 55.000 is %s', (size, verdict) => {
    expect(ask({ size, least: '54.980mm', greatest: '55.000mm' }).results.verdict?.value).toBe(verdict);
  });

  it('asks for as much as it is told to', () => {
    const texts = { size: '54.983 ± 0.004 mm', least: '54.980mm' };
    expect(ask({ ...texts, conformance: '90 %' }).results.verdict?.value).toBe('within');
    expect(ask({ ...texts, conformance: '0.95' }).results.verdict?.value).toBe('unsure');
  });

  it('says what would settle it, or that nothing does, or that no ± was given', () => {
    expect(ask({ size: '54.983 ± 0.004 mm', least: '54.980mm' }).notes).toEqual([
      'Known to ±0.00357 mm or better, a size that stays there would be settled.',
    ]);
    expect(ask({ size: '54.980 ± 0.004 mm', least: '54.980mm' }).notes).toEqual([
      'It lies on its limit: no measurement settles that.',
    ]);
    expect(ask({ size: '54.990mm', least: '54.980mm' }).notes).toEqual([
      'No ± was given with the size: it was taken as known exactly.',
    ]);
  });

  it('turns where it says that it is settled', () => {
    const sizes = between(-3, 3);
    const limits = fc.constantFrom<readonly [number | undefined, number | undefined]>(
      [-1, 1],
      [-1, undefined],
      [undefined, 1],
      [-0.1, 0.1],
    );
    fc.assert(
      fc.property(sizes, limits, between(0.6, 0.999), (value, [least, greatest], asked) => {
        const bounds = {
          ...(least !== undefined && { least }),
          ...(greatest !== undefined && { greatest }),
        };
        const settled = settledBy(value, bounds, asked) / 1.959963984540054;
        fc.pre(settled > 1e-9);
        const at = (factor: number) => verdictOf(value, settled * factor, Infinity, bounds, asked);
        expect(at(1 - 1e-6)).not.toBe('unsure');
        expect(at(1 + 1e-6)).toBe('unsure');
      }),
    );
  });

  it.each([
    [{ size: '54.98mm' }, 'there is no limit to judge by'],
    [{ size: '54.98mm', least: '2mm', greatest: '1mm' }, 'the least, 2 mm, is more than the greatest, 1 mm'],
    [{ size: '54.98mm', least: '2mm', conformance: '50 %' }, 'a probability of 0.5 is out of range'],
    [{ size: '54.98mm', least: '2mm', conformance: '95' }, 'a probability of 95 is out of range'],
    [{ size: '54.98mm', least: '2 ± 0.1 mm' }, 'it is agreed and not measured'],
  ])('refuses %o', (texts, what) => {
    const refused = reckonByName('verdict', texts);
    expect(refused.kind === 'refused' && refused.refusal.what).toBe(what);
  });
});
