/** @module The bars of fitters side by side: every operation told, none beyond the end, none over another in one row. */
import { describe, expect, it } from 'vitest';
import { quillfeather } from '../../test/engines/demo-engines.ts';
import { known } from '../../test/known.ts';
import { precedenceOf } from '../work/precedence.ts';
import { sideBySide } from '../work/side-by-side.ts';
import { shiftsChart } from './shifts-chart.ts';
import type { SvgNode } from './svg.ts';

const found = known(
  sideBySide(
    precedenceOf(quillfeather().operations, ({ phase }) => phase === 'strip'),
    2,
  ),
);
const drawing = shiftsChart(found.shifts, 2, found.minutes);
const boxes = drawing.children
  .filter((one): one is SvgNode => typeof one !== 'string' && one.tag === 'rect')
  .map(({ attributes }) => ({
    x: Number(attributes.x),
    y: Number(attributes.y),
    to: Number(attributes.x) + Number(attributes.width),
  }));

describe('the chart of fitters side by side', () => {
  it('has a bar for each pair of hands at each operation, all before the end', () => {
    expect(boxes).toHaveLength(found.shifts.reduce((sum, { fitters }) => sum + fitters.length, 0));
    expect(Math.max(...boxes.map(({ to }) => to))).toBeLessThanOrEqual(704.01);
  });

  it('has no bar over another in a row', () => {
    for (const row of Map.groupBy(boxes, ({ y }) => y).values()) {
      const inOrder = row.toSorted((a, b) => a.x - b.x);
      for (const [at, box] of inOrder.entries())
        expect(box.to).toBeLessThanOrEqual((inOrder[at + 1]?.x ?? Infinity) + 0.02);
    }
  });

  it('is told in words to who does not see it', () => {
    const [desc] = drawing.children;
    const words = typeof desc === 'string' ? '' : String(desc?.children[0]);
    for (const { operation } of found.shifts) expect(words).toContain(operation.title);
  });
});
