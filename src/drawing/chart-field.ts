/** @module The field of a chart: plain axes with round values along them, and where a value stands on it. */
import { formatFigure } from '../quantity/figure.ts';
import { type Box, lettering, line, pens } from './ink.ts';
import type { SvgNode } from './svg.ts';

export interface Axis {
  /** What is along it, with its unit: `hours from now, h`. */
  readonly words: string;
  readonly from: number;
  readonly to: number;
}

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

interface ChartField {
  /** The axes as drawn: with some room where their ends fell together. */
  readonly x: Axis;
  readonly y: Axis;
  /** Where the field ends below. */
  readonly foot: number;
  readonly across: (value: number) => number;
  readonly up: (value: number) => number;
  /** A value brought to the nearer end where it lies beyond an axis. */
  readonly inside: (value: number, axis: Axis) => number;
  readonly grid: readonly SvgNode[];
  /** Both axes with their words, to be drawn over the grid. */
  readonly axes: readonly SvgNode[];
}

export const chartField = (box: Box, drawn: { readonly x: Axis; readonly y: Axis }): ChartField => {
  const x = opened(drawn.x);
  const y = opened(drawn.y);
  const foot = box.y + box.height;
  const right = box.x + box.width;
  const across = (value: number) => box.x + ((value - x.from) / (x.to - x.from)) * box.width;
  const up = (value: number) => foot - ((value - y.from) / (y.to - y.from)) * box.height;
  const thin = { stroke: pens.faint, 'stroke-width': 0.4 };
  return {
    x,
    y,
    foot,
    across,
    up,
    inside: (value, { from, to }) => Math.min(to, Math.max(from, value)),
    grid: [
      ...ticksOf(x.from, x.to).flatMap(({ at, text }) => [
        line(across(at), box.y, across(at), foot, thin),
        lettering(text, across(at), foot + 20, { 'text-anchor': 'middle', 'font-size': 13 }),
      ]),
      ...ticksOf(y.from, y.to).flatMap(({ at, text }) => [
        line(box.x, up(at), right, up(at), thin),
        lettering(text, box.x - 8, up(at) + 5, { 'text-anchor': 'end', 'font-size': 13 }),
      ]),
    ],
    axes: [
      line(box.x, foot, right, foot, { 'stroke-width': 1.8 }),
      line(box.x, box.y, box.x, foot, { 'stroke-width': 1.8 }),
      lettering(x.words, right, foot + 46, { 'text-anchor': 'end', fill: pens.faint }),
      lettering(y.words, box.x, box.y - 7, {
        'text-anchor': 'start',
        fill: pens.faint,
        stroke: pens.paper,
        'stroke-width': 4,
        'paint-order': 'stroke',
      }),
    ],
  };
};
