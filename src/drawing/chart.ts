/** @module A chart on plain axes: curves with their words, marked points, bands between two values. */
import { type Axis, chartField } from './chart-field.ts';
import { boxed, hatched, lettering, line, pens } from './ink.ts';
import { round, type SvgNode, sheetOf, svg } from './svg.ts';

type Point = readonly [x: number, y: number];

interface Curve {
  readonly points: readonly Point[];
  readonly words?: string;
  readonly stroke?: 'plain' | 'accent' | 'dashed';
}

interface Mark {
  readonly at: Point;
  readonly words: string;
  /** Lines from the point to both axes. */
  readonly led?: boolean;
}

/** A stretch of one axis that means something: limits, a region where nothing is allowed. */
interface Band {
  readonly along: 'x' | 'y';
  readonly from: number;
  readonly to: number;
  readonly words: string;
}

export interface Chart {
  readonly title: string;
  readonly description: string;
  readonly x: Axis;
  readonly y: Axis;
  readonly curves?: readonly Curve[];
  readonly marks?: readonly Mark[];
  readonly bands?: readonly Band[];
}

const width = 640;
const height = 380;
const field = { x: 70, y: 22, width: width - 70 - 24, height: height - 22 - 58 };

const strokes: Readonly<Record<NonNullable<Curve['stroke']>, SvgNode['attributes']>> = {
  plain: { stroke: pens.ink, 'stroke-width': 1.8 },
  accent: { stroke: pens.accent, 'stroke-width': 2.6 },
  dashed: { stroke: pens.ink, 'stroke-width': 1.4, 'stroke-dasharray': '7 5' },
};

export const chart = (drawn: Chart): SvgNode => {
  const { x, y, foot, across, up, inside, grid, axes } = chartField(field, drawn);
  const bands = (drawn.bands ?? []).flatMap(({ along, from, to, words }) => {
    const axis = along === 'x' ? x : y;
    const [low, high] = [inside(Math.min(from, to), axis), inside(Math.max(from, to), axis)];
    const box =
      along === 'x'
        ? { x: across(low), y: field.y, width: across(high) - across(low), height: field.height }
        : { x: field.x, y: up(high), width: field.width, height: up(low) - up(high) };
    return [
      hatched(box, 14, 'rising', pens.faint),
      boxed(box, { fill: 'none', stroke: pens.faint, 'stroke-width': 1 }),
      lettering(words, box.x + 6, box.y + 16, {
        'font-size': 13,
        stroke: pens.paper,
        'stroke-width': 4,
        'paint-order': 'stroke',
      }),
    ];
  });
  const curves = (drawn.curves ?? []).flatMap(({ points, words, stroke = 'plain' }) => {
    const path = points
      .map(([px, py]) => `${round(across(inside(px, x)))} ${round(up(inside(py, y)))}`)
      .join('L');
    const [endX, endY] = points.at(-1) ?? [x.from, y.from];
    return [
      svg('path', { d: `M${path}`, fill: 'none', ...strokes[stroke] }),
      ...(words === undefined
        ? []
        : [
            lettering(
              words,
              Math.min(field.x + field.width - 6, across(inside(endX, x)) - 6),
              up(inside(endY, y)) - 7,
              {
                'text-anchor': 'end',
                'font-size': 13,
              },
            ),
          ]),
    ];
  });
  const marks = (drawn.marks ?? []).flatMap(({ at: [px, py], words, led = false }) => {
    const [cx, cy] = [across(inside(px, x)), up(inside(py, y))];
    const right = cx < field.x + field.width * 0.6;
    return [
      ...(led
        ? [
            line(cx, cy, cx, foot, { stroke: pens.accent, 'stroke-dasharray': '3 3' }),
            line(field.x, cy, cx, cy, { stroke: pens.accent, 'stroke-dasharray': '3 3' }),
          ]
        : []),
      svg('circle', {
        cx: round(cx),
        cy: round(cy),
        r: 5,
        fill: pens.paper,
        stroke: pens.accent,
        'stroke-width': 2.4,
      }),
      lettering(words, cx + (right ? 10 : -10), Math.max(field.y + 14, cy - 9), {
        'text-anchor': right ? 'start' : 'end',
        'font-weight': 700,
      }),
    ];
  });
  return sheetOf(
    { width, height },
    { title: drawn.title, description: drawn.description },
    ...grid,
    ...bands,
    ...axes,
    ...curves,
    ...marks,
  );
};
