/** @module Figures printed in two units are both kept, and pairs that disagree are told from honest rounding. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatFigure } from '../quantity/figure.ts';
import { readTyped } from '../quantity/typed.ts';
import { type PrintedPair, pairTrouble, pairTyped } from './printed-pair.ts';

const pairOf = (
  figure: string,
  also: string,
  dimension: PrintedPair['dimension'] = 'length',
): PrintedPair => {
  const [one, other] = [figure, also].map((text) => readTyped(text, dimension));
  if (one?.kind !== 'answer' || other?.kind !== 'answer') throw new Error('a figure of the test is unread');
  return { path: [], dimension, figure: one.value, also: other.value };
};

describe('a figure printed in two units', () => {
  it('is taken apart at its brackets', () => {
    expect(pairTyped('54.970 mm (2.1642 in)')).toEqual({ figure: '54.970 mm', also: '2.1642 in' });
    expect(pairTyped('2 9/16 in(65.1 mm)')).toEqual({ figure: '2 9/16 in', also: '65.1 mm' });
    expect(pairTyped('54.970 mm')).toEqual({ figure: '54.970 mm' });
    expect(pairTyped('(2.1642 in)')).toEqual({ figure: '(2.1642 in)' });
  });

  // source: TM 9-6115-604-34 (0.0025 in beside 0.089 mm; 0.0025 × 25.4 = 0.0635)
  // source: TM 9-2815-205-24, p 0097-6 (0.1255 in beside 3.162 mm; 0.1255 × 25.4 = 3.1877)
  // source: TM 9-2815-225-34 (0.00942 in where 0.0942 in is meant; 0.0942 × 25.4 = 2.3927)
  it.each([
    ['0.0025 in', '0.089 mm', 0.0635],
    ['0.1255 in', '3.162 mm', 3.1877],
    ['0.00942 in', '2.39 mm', 0.239268],
  ])('of which a manual prints %s beside %s is found to disagree', (inch, metric, is) => {
    expect(pairTrouble(pairOf(inch, metric))?.inAlso).toBeCloseTo(is, 9);
    expect(pairTrouble(pairOf(metric, inch))?.inFigure).toBeCloseTo(is, 9);
  });

  // source: 25.4 mm to the inch, by definition; 1 lbf·ft = 1.3558 N·m (NIST SP 811, Appendix B.8)
  it.each([
    ['0.0025 in', '0.064 mm', 'length'],
    ['0.0025 in', '0.063 mm', 'length'],
    ['0.1255 in', '3.188 mm', 'length'],
    ['0.0942 in', '2.39 mm', 'length'],
    ['0.06 mm', '0.002 in', 'length'],
    ['2 9/16 in', '65.1 mm', 'length'],
    ['54 N·m', '40 lbf·ft', 'torque'],
    ['95 N·m', '70 lbf·ft', 'torque'],
  ] as const)('agrees where it is rounded or cut off: %s beside %s', (one, other, dimension) => {
    expect(pairTrouble(pairOf(one, other, dimension))).toBeUndefined();
    expect(pairTrouble(pairOf(other, one, dimension))).toBeUndefined();
  });

  it('always agrees with its own conversion, rounded to any digit', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 999_999 }),
        fc.integer({ min: 0, max: 5 }),
        fc.integer({ min: 0, max: 6 }),
        (digits, places, kept) => {
          const metric = digits / 10 ** places;
          const pair = pairOf(
            `${formatFigure(metric, places)} mm`,
            `${formatFigure(metric / 25.4, kept)} in`,
          );
          expect(pairTrouble(pair)).toBeUndefined();
        },
      ),
    );
  });

  it('disagrees once it is more than a step of either last digit away', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 100, max: 99_999 }),
        fc.integer({ min: 3, max: 500 }),
        (thousandths, off) => {
          const inch = `${formatFigure(thousandths / 1000, 3)} in`;
          // A thousandth of an inch is 0.0254 mm, so that the coarser step is the inch's.
          const metric = `${formatFigure((thousandths + off) * 0.0254, 3)} mm`;
          expect(pairTrouble(pairOf(inch, metric))).toBeDefined();
        },
      ),
    );
  });
});
