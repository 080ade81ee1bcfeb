/** @module Laws of the chance that several sizes conform together. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { between } from '../../test/between.ts';
import type { Uncertain } from '../quantity/uncertain.ts';
import { conformanceProbability } from './guard-band.ts';
import { jointConformance } from './joint-conformance.ts';

const sizeOf = (value: number, index: number, shared: number, own: number): Uncertain => ({
  value,
  terms: [
    { name: 'calibration', share: shared, freedom: Infinity },
    { name: `repeat ${index}`, share: own, freedom: 9 },
  ].filter(({ share }) => share > 0),
});

const values = fc.array(between(-3, 1), { minLength: 1, maxLength: 6 });
const limits = { greatest: 0.5, least: -4 };

describe('the chance that all conform', () => {
  it('of one size is its own', () => {
    fc.assert(
      fc.property(between(-6, 3), between(0.1, 2), (value, own) => {
        const one = sizeOf(value, 0, 0, own);
        expect(jointConformance([one], limits)).toBeCloseTo(conformanceProbability(value, own, 9, limits), 6);
      }),
    );
  });

  it('is no better than that of the worst, and no worse than if they had nothing in common', () => {
    fc.assert(
      fc.property(values, between(0, 1), between(0.2, 2), (each, shared, own) => {
        const normal = each.map((value, index) => ({
          ...sizeOf(value, index, shared, own),
          terms: sizeOf(value, index, shared, own).terms.map((term) => ({ ...term, freedom: Infinity })),
        }));
        const u = Math.hypot(shared, own);
        const alone = each.map((value) => conformanceProbability(value, u, Infinity, { greatest: 0.5 }));
        const joint = jointConformance(normal, { greatest: 0.5 });
        expect(joint).toBeLessThanOrEqual(Math.min(...alone) + 1e-6);
        expect(joint).toBeGreaterThanOrEqual(alone.reduce((product, chance) => product * chance, 1) - 1e-6);
      }),
    );
  });

  it('does not depend on their order', () => {
    fc.assert(
      fc.property(values, between(0, 3), (each, shared) => {
        const sizes = each.map((value, index) => sizeOf(value, index, shared, 1));
        expect(jointConformance(sizes.toReversed(), limits)).toBeCloseTo(jointConformance(sizes, limits), 12);
      }),
    );
  });

  it('is certain or nothing of sizes known exactly, and of no limits certain', () => {
    const exact = [0, -1].map((value) => ({ value, terms: [] }));
    expect(jointConformance(exact, { greatest: 0 })).toBe(1);
    expect(jointConformance(exact, { greatest: -0.5 })).toBe(0);
    expect(jointConformance(exact, {})).toBe(1);
    expect(jointConformance([sizeOf(0, 0, 1, 1), ...exact], { greatest: -0.5 })).toBe(0);
  });
});
