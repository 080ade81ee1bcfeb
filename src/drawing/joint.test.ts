/** @module A joint drawn: every bolt once, done and next told apart by more than colour, the way to turn as it is. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { degrees } from '../quantity/brand.ts';
import { type JointDrawn, jointDrawing } from './joint.ts';
import { type SvgNode, svgText } from './svg.ts';

const joint: JointDrawn = {
  title: 'head nuts',
  bolts: [
    { name: 'A', x: 0, y: 0 },
    { name: 'B', x: 90, y: 0 },
    { name: 'C', x: 180, y: 0 },
  ],
  order: ['B', 'C', 'A'],
  done: ['B'],
  next: 'C',
  hand: 'right',
};

const bolts = (drawing: SvgNode): readonly SvgNode[] =>
  drawing.children.filter((one): one is SvgNode => typeof one !== 'string' && 'data-bolt' in one.attributes);
const texts = (node: SvgNode): readonly string[] =>
  node.children.flatMap((child) => (typeof child === 'string' ? [child] : texts(child)));
const bolt = (drawn: JointDrawn, name: string): SvgNode => {
  const found = bolts(jointDrawing(drawn)).find((one) => one.attributes['data-bolt'] === name);
  if (found === undefined) throw new Error(`bolt ${name} is not drawn`);
  return found;
};
/** The sweep flag of the arc of the arrow: 1 is clockwise (SVG 2, 9.3.8). */
const sweep = (drawn: JointDrawn): string | undefined =>
  /A\S+ \S+ 0 [01] ([01])/.exec(svgText(bolt(drawn, 'C')))?.[1];

describe('a joint drawn', () => {
  it('shows its bolts by their turn, with their names beside them', () => {
    expect(texts(bolt(joint, 'B'))).toEqual(['1', '✓', 'B']);
    expect(texts(bolt(joint, 'C'))).toEqual(['2', 'next, bolt C']);
    expect(texts(bolt(joint, 'A'))).toEqual(['3', 'A']);
  });

  it('turns the next bolt clockwise, and a left-hand thread the other way', () => {
    // source: SVG 2, 9.3.8: a sweep flag of 1 is drawn in the positive direction, clockwise on the screen
    expect(sweep(joint)).toBe('1');
    expect(sweep({ ...joint, hand: 'left' })).toBe('0');
  });

  it('draws the angle of an angle stage, from its line to its line', () => {
    const angle = { ...joint, angle: degrees(90) };
    expect(texts(bolt(angle, 'C'))).toContain('next, bolt C: 90°');
    const drawn = svgText(bolt(angle, 'C'));
    const [, x1, , , , x2] = /M(\S+) (\S+)A(\S+) \S+ 0 0 1 (\S+) (\S+)"/.exec(drawn)?.map(Number) ?? [];
    expect(x1).toBeDefined();
    expect(x2).toBeDefined();
    expect(drawn.match(/<line/g)).toHaveLength(2);
  });

  it('says in words what it shows', () => {
    const text = svgText(jointDrawing(joint));
    expect(text).toContain('aria-label="head nuts: 1 of 3 bolts done"');
    expect(text).toContain('Order B, C, A. Bolt C is next. Left: C, A.');
  });

  it('draws every bolt once, apart from the others and within the sheet, however they stand', () => {
    const grid = fc
      .uniqueArray(fc.record({ column: fc.nat(12), row: fc.nat(3) }), {
        minLength: 1,
        maxLength: 26,
        selector: ({ column, row }) => `${column} ${row}`,
      })
      .map((places) => places.map(({ column, row }, at) => ({ name: `${at}`, x: column * 60, y: row * 90 })));
    fc.assert(
      fc.property(grid, fc.boolean(), (at, angle) => {
        const order = at.map(({ name }) => name);
        const drawing = jointDrawing({
          ...joint,
          bolts: at,
          order,
          done: [],
          next: order[0] ?? '',
          ...(angle && { angle: degrees(360) }),
        });
        expect(bolts(drawing).map(({ attributes }) => attributes['data-bolt'])).toHaveLength(at.length);
        const [, , wide = 0, high = 0] = String(drawing.attributes.viewBox).split(' ').map(Number);
        const circles = bolts(drawing).flatMap((one) =>
          one.children.flatMap((child) =>
            typeof child !== 'string' && child.tag === 'circle'
              ? [
                  {
                    x: Number(child.attributes.cx),
                    y: Number(child.attributes.cy),
                    r: Number(child.attributes.r),
                  },
                ]
              : [],
          ),
        );
        for (const [index, one] of circles.entries()) {
          expect(one.x - one.r).toBeGreaterThanOrEqual(0);
          expect(one.x + one.r).toBeLessThanOrEqual(wide);
          expect(one.y + one.r).toBeLessThanOrEqual(high);
          for (const other of circles.slice(index + 1))
            expect(Math.hypot(one.x - other.x, one.y - other.y)).toBeGreaterThan(one.r + other.r - 1);
        }
        expect(svgText(drawing)).not.toContain('NaN');
      }),
      { numRuns: 60 },
    );
  });
});
