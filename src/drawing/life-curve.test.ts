/** @module The curve of an engine's life: what is said beside it, and where the hours wanted stand. */
import { describe, expect, it } from 'vitest';
import { engineLife } from '../plan/engine-life.ts';
import { usualLifeOf } from '../plan/life.ts';
import { hours } from '../quantity/brand.ts';
import { lifeCurve } from './life-curve.ts';
import { svgText } from './svg.ts';

const life = engineLife([
  {
    slot: 'a',
    component: 'a',
    hours: 5000,
    life: usualLifeOf({ life: hours(5000), lifeMiddle: hours(8000) }),
  },
]);

describe("the curve of an engine's life", () => {
  it('marks the hours wanted with how many of a hundred last so long', () => {
    // source: by hand; of parts of which nine in ten outlast 5000 h and half 8000 h, an engine of one part is one
    expect(svgText(lifeCurve(life, 8000))).toContain('8000 h wanted: 50 in 100');
    expect(svgText(lifeCurve(life, 5000))).toContain('5000 h wanted: 90 in 100');
    expect(svgText(lifeCurve(life, 1))).toContain('1 h wanted: 100 in 100');
  });

  it('marks the hours counted on where none are wanted, and reaches as far as is wanted', () => {
    expect(svgText(lifeCurve(life, undefined))).toContain('5000 h: 90 in 100');
    expect(svgText(lifeCurve(life, 100_000))).toContain('100000 h wanted: 0 in 100');
  });
});
