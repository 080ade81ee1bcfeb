/** @module Ovality and taper from a table, on shapes that are known exactly. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { outsideCheck } from '../../test/outside-check.ts';
import { certain } from '../quantity/uncertain.ts';
import { ovality, taper } from './form.ts';
import { reckonByName } from './list.ts';

const ask = (texts: Readonly<Record<string, string>>) => reckonByName('form', texts);
const resultsOf = (texts: Readonly<Record<string, string>>) => {
  const asked = ask(texts);
  if (asked.kind === 'refused') throw new Error(asked.refusal.what);
  return asked.value.results;
};

/** Two-point sizes of r = R + a cos nθ at some angles. */
const lobed = (lobes: number, degrees: readonly number[]) =>
  degrees
    .map((angle) => {
      const at = (half: number) => 42.5 + 0.01 * Math.cos((lobes * (angle + half) * Math.PI) / 180);
      return (at(0) + at(180)).toFixed(6);
    })
    .join(', ');

describe('form', () => {
  it.each([
    // source: exact construction: even n, the diameters range over 4 a; odd n, not at all
    [2, [0, 90], 0.04],
    [4, [0, 45], 0.04],
    [3, [0, 30, 60, 90], 0],
    [5, [0, 18, 36], 0],
  ])('of %i lobes seen along %o', (lobes, degrees, ovality) => {
    const table = `${lobed(lobes, degrees)} mm`;
    const got = Number(resultsOf({ sizes: table }).ovality?.value);
    outsideCheck('form', 'exact construction of a lobed circle', 'mm', 5e-6)(got, ovality);
  });

  it('of a cone is taper along each axis', () => {
    const results = resultsOf({ sizes: '98.03, 98.03; 98.02, 98.02; 98.01, 98.01 mm' });
    expect(results.taper?.value).toBeCloseTo(0.02, 9);
    expect(results.ovality?.value).toBe(0);
  });

  it('of a table turned on its side is the other one', () => {
    const size = fc.integer({ min: 0, max: 50 }).map((n) => certain(98 + n / 1000));
    fc.assert(
      fc.property(fc.array(fc.tuple(size, size, size), { minLength: 1, maxLength: 5 }), (table) => {
        const turned = [0, 1, 2].map((axis) => table.flatMap((row) => row[axis] ?? []));
        expect(ovality(table).value).toBe(taper(turned).value);
        expect(taper(table).value).toBe(ovality(turned).value);
      }),
    );
  });

  it('of one plane has no taper, of one axis no ovality', () => {
    expect(Object.keys(resultsOf({ sizes: '98.03, 98.01 mm' }))).toEqual(['ovality']);
    expect(Object.keys(resultsOf({ sizes: '98.03; 98.01 mm' }))).toEqual(['taper']);
  });

  it('read with a noisy instrument is known as two readings allow', () => {
    const { ovality } = resultsOf({ sizes: '98.060, 98.030 mm', repeatability: '0.002mm' });
    expect(ovality?.u).toBeCloseTo(0.002 * Math.SQRT2, 9);
  });

  it('is in limits with the probability of a folded normal value', () => {
    // source: recomputed: two readings of 2 µm, nothing between them, limit 5 µm: 2 Φ(5 / (2 √2)) - 1 = 0.92290
    const results = resultsOf({ sizes: '98.000, 98.000 mm', repeatability: '0.002mm', greatest: '0.005mm' });
    const source = 'folded normal distribution, recomputed: 2 Φ(5 / (2 √2)) − 1';
    outsideCheck('form', source, '1', 5e-5)(Number(results['ovality-conformance']?.value), 0.9229);
  });

  it.each([
    [{ sizes: '98.01, 98.02; 98.01 mm' }, 'the planes do not all have the same axes'],
    [{ sizes: '98.01 mm' }, 'the planes do not all have the same axes'],
    [{ sizes: '98.01, 98.02 mm', greatest: '-1mm' }, 'a length less than 0 is out of range'],
  ])('refuses %o', (texts, what) => {
    const asked = ask(texts);
    expect(asked.kind === 'refused' && asked.refusal.what).toBe(what);
  });
});
