/** @module Checks of a size drawn on its tolerance zone. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Limits } from '../engine/engine-type.ts';
import { mm } from '../quantity/brand.ts';
import { pens } from './ink.ts';
import { type SvgNode, svgText } from './svg.ts';
import { toleranceZone } from './tolerance-zone.ts';

const limits: Limits = {
  new: { least: mm(54.98), greatest: mm(55) },
  goesBack: { least: mm(54.94), greatest: mm(55) },
  printed: {},
};

const all = (node: SvgNode | string): readonly SvgNode[] =>
  typeof node === 'string' ? [] : [node, ...node.children.flatMap(all)];

/** Abscissae of the upright lines drawn with one pen. */
const uprights = (drawing: SvgNode, pen: string): readonly number[] =>
  all(drawing)
    .filter(
      ({ tag, attributes }) => tag === 'line' && attributes.x1 === attributes.x2 && attributes.stroke === pen,
    )
    .map(({ attributes }) => Number(attributes.x1));

const drawn = (value: number) =>
  toleranceZone({ title: 'main journal', limits, value, expanded: 0.004, verdict: 'within' });

describe('a tolerance zone', () => {
  it('says once what is the same as made and to go back', () => {
    const asMade = { ...limits, goesBack: limits.new };
    const words = svgText(toleranceZone({ title: 'main journal', limits: asMade, verdict: 'within' }));
    expect(words).toContain('as made, and to go back');
    expect(words.match(/55\.000<\/text>/g)).toHaveLength(1);
    expect(svgText(drawn(54.99)).match(/55\.000<\/text>/g)).toHaveLength(2);
  });

  it('stands the value between the limits exactly when it lies between them', () => {
    fc.assert(
      fc.property(fc.double({ min: 54.9, max: 55.04, noNaN: true }), (value) => {
        const drawing = drawn(value);
        const edges = uprights(drawing, pens.ink);
        const [at = Number.NaN] = uprights(drawing, pens.accent);
        const least = Math.min(...edges);
        const greatest = Math.max(...edges);
        // A hundredth of a unit is what the drawing rounds to.
        if (value < 54.9399) expect(at).toBeLessThan(least + 0.01);
        else if (value > 55.0001) expect(at).toBeGreaterThan(greatest - 0.01);
        else if (value > 54.9401 && value < 54.9999) {
          expect(at).toBeGreaterThanOrEqual(least - 0.01);
          expect(at).toBeLessThanOrEqual(greatest + 0.01);
        }
      }),
    );
  });

  it('is drawn to scale', () => {
    const edges = [...new Set(uprights(drawn(54.96), pens.ink))].sort((a, b) => a - b);
    const [low = 0, made = 0, high = 0] = edges;
    // 54.94 to 54.98 is twice as far as 54.98 to 55.00.
    expect((made - low) / (high - made)).toBeCloseTo(2, 2);
  });

  it('says that a value far off is off the drawing, and which way', () => {
    expect(svgText(drawn(2.164))).toContain('2.164 mm: far below, off this drawing');
    expect(svgText(drawn(5500))).toContain('far above');
  });

  it('has no edge where there is no limit', () => {
    const open = toleranceZone({
      title: 'ovality',
      limits: { new: { greatest: mm(0.01) }, goesBack: { greatest: mm(0.04) }, printed: {} },
      verdict: 'not yet known',
    });
    expect(new Set(uprights(open, pens.ink)).size).toBe(2);
    expect(svgText(open)).toContain(
      'As made at most 0.010 mm. May go back at most 0.040 mm. Nothing measured yet.',
    );
  });

  it('tells value, spread and verdict in words', () => {
    expect(svgText(drawn(54.962))).toContain('Measured 54.962 mm, give or take 0.004 mm: within.');
  });
});
