/** @module A chart on plain axes: curves with their words, marked points, bands between two values. */
import { formatFigure } from '../quantity/figure.ts';
import { boxed, hatched, lettering, line, pens } from './ink.ts';
import { round, type SvgNode, sheetOf, svg } from './svg.ts';

interface Axis {
  /** What is along it, with its unit: `hours from now, h`. */
  readonly words: string;
  readonly from: number;
  readonly to: number;
}

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

/** A round step that divides a stretch into some five parts: 1, 2 or 5 times a power of ten. */
const stepOf = (span: number): number => {
  const rough = span / 5;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].find((each) => each * power >= rough * 0.999) ?? 10;
  return step * power;
};

/** Round values on an axis, with as many decimals as their step needs. */
export const ticksOf = (
  from: number,
  to: number,
): readonly { readonly at: number; readonly text: string }[] => {
  const step = stepOf(to - from);
  const places = Math.max(0, Math.min(12, -Math.floor(Math.log10(step) + 1e-9)));
  const first = Math.ceil(from / step - 1e-9);
  const last = Math.floor(to / step + 1e-9);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => {
    const at = (first + index) * step;
    return { at, text: formatFigure(at, places) };
  });
};

/** An axis that shows something even where its two ends fall together. */
const opened = ({ from, to, ...rest }: Axis): Axis => {
  if (to > from) return { ...rest, from, to };
  const room = Math.max(Math.abs(from) * 0.1, 1e-3);
  return { ...rest, from: from - room, to: from + room };
};

const strokes: Readonly<Record<NonNullable<Curve['stroke']>, SvgNode['attributes']>> = {
  plain: { stroke: pens.ink, 'stroke-width': 1.8 },
  accent: { stroke: pens.accent, 'stroke-width': 2.6 },
  dashed: { stroke: pens.ink, 'stroke-width': 1.4, 'stroke-dasharray': '7 5' },
};

export const chart = (drawn: Chart): SvgNode => {
  const x = opened(drawn.x);
  const y = opened(drawn.y);
  const foot = field.y + field.height;
  const across = (value: number) => field.x + ((value - x.from) / (x.to - x.from)) * field.width;
  const up = (value: number) => foot - ((value - y.from) / (y.to - y.from)) * field.height;
  const inside = (value: number, { from, to }: Axis) => Math.min(to, Math.max(from, value));

  const grid = [
    ...ticksOf(x.from, x.to).flatMap(({ at, text }) => [
      line(across(at), field.y, across(at), foot, { stroke: pens.faint, 'stroke-width': 0.4 }),
      lettering(text, across(at), foot + 20, { 'text-anchor': 'middle', 'font-size': 13 }),
    ]),
    ...ticksOf(y.from, y.to).flatMap(({ at, text }) => [
      line(field.x, up(at), field.x + field.width, up(at), { stroke: pens.faint, 'stroke-width': 0.4 }),
      lettering(text, field.x - 8, up(at) + 5, { 'text-anchor': 'end', 'font-size': 13 }),
    ]),
  ];
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
    line(field.x, foot, field.x + field.width, foot, { 'stroke-width': 1.8 }),
    line(field.x, field.y, field.x, foot, { 'stroke-width': 1.8 }),
    ...curves,
    ...marks,
    lettering(drawn.x.words, field.x + field.width, height - 12, { 'text-anchor': 'end', fill: pens.faint }),
    lettering(drawn.y.words, field.x, field.y - 7, { 'text-anchor': 'start', fill: pens.faint }),
  );
};
