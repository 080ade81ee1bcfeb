/** @module Values on one line: marked points with their words, hatched stretches between two of them. */
import { formatFigure } from '../quantity/figure.ts';
import { ticksOf } from './chart-field.ts';
import { arrowHead, boxed, hatched, lettering, line, pens } from './ink.ts';
import { type SvgNode, sheetOf } from './svg.ts';

interface MarkedValue {
  readonly at: number;
  readonly words: string;
  /** The one that the sum is about. */
  readonly strong?: boolean;
  /** Half width of its 95 % interval. */
  readonly spread?: number;
}

interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly words: string;
  readonly hatch: 'close' | 'wide' | 'none';
}

export interface NumberLine {
  readonly title: string;
  readonly description: string;
  readonly unit: string;
  readonly marks: readonly MarkedValue[];
  readonly stretches?: readonly Stretch[];
}

const width = 640;
const left = 30;
const right = width - 30;
const rowHeight = 26;
/** Lettering is about so wide for each sign. */
const signWidth = 7.6;

/** Rows for words that would run into each other: each takes the lowest row in which it is clear of those before. */
const rowsOf = (spans: readonly (readonly [number, number])[]): readonly number[] => {
  const ends: number[] = [];
  return spans.map(([from, to]) => {
    const free = ends.findIndex((end) => end + 10 < from);
    const row = free < 0 ? ends.length : free;
    ends[row] = to;
    return row;
  });
};

export const numberLine = (drawn: NumberLine): SvgNode => {
  const stretches = drawn.stretches ?? [];
  const values = [
    ...drawn.marks.flatMap(({ at, spread = 0 }) => [at - spread, at + spread]),
    ...stretches.flatMap(({ from, to }) => [from, to]),
  ];
  const low = Math.min(...values);
  const high = Math.max(...values);
  const room = Math.max((high - low) * 0.12, Math.abs(high) * 1e-6, 1e-9);
  const [from, to] = [low - room, high + room];
  const x = (value: number) => left + ((value - from) / (to - from)) * (right - left);
  const marks = drawn.marks.toSorted((a, b) => a.at - b.at);
  const placed = marks.map(({ at, words }) => {
    const half = (words.length * signWidth) / 2 + 4;
    const middle = Math.min(right + 20 - half, Math.max(left - 20 + half, x(at)));
    return [middle - half, middle + half] as const;
  });
  const rows = rowsOf(placed);
  const depth = Math.max(0, ...rows) + 1;
  const base = 34 + depth * rowHeight;
  const bandHeight = 40;
  const below = rowsOf(
    stretches.map(({ from: start, to: end, words }) => {
      const half = (words.length * signWidth) / 2;
      const middle = Math.min(right - half, Math.max(left + half, x((start + end) / 2)));
      return [middle - half, middle + half] as const;
    }),
  );
  const foot = base + bandHeight;
  const height = foot + 30 + (Math.max(-1, ...below) + 1) * 24 + 12;
  return sheetOf(
    { width, height },
    { title: drawn.title, description: drawn.description },
    ...stretches.flatMap(({ from: start, to: end, words, hatch }, index) => {
      const box = {
        x: x(Math.min(start, end)),
        y: base,
        width: Math.abs(x(end) - x(start)),
        height: bandHeight,
      };
      const half = (words.length * signWidth) / 2;
      const middle = Math.min(right - half, Math.max(left + half, box.x + box.width / 2));
      return [
        boxed(box, { fill: pens.paper, stroke: pens.ink, 'stroke-width': hatch === 'close' ? 1.6 : 1 }),
        ...(hatch === 'none'
          ? []
          : [hatched(box, hatch === 'close' ? 6 : 16, hatch === 'close' ? 'falling' : 'rising', pens.faint)]),
        lettering(words, middle, foot + 44 + (below[index] ?? 0) * 24, {
          'text-anchor': 'middle',
          'font-size': 13,
        }),
      ];
    }),
    line(left, foot, right, foot, { 'stroke-width': 1.6 }),
    ...ticksOf(from, to).flatMap(({ at, text }) => [
      line(x(at), foot, x(at), foot + 6),
      lettering(text, x(at), foot + 20, { 'text-anchor': 'middle', 'font-size': 12, fill: pens.faint }),
    ]),
    ...marks.flatMap(({ at, words, strong = false, spread = 0 }, index) => {
      const colour = strong ? pens.accent : pens.ink;
      const [start, end] = placed[index] ?? [0, 0];
      const y = 24 + (depth - 1 - (rows[index] ?? 0)) * rowHeight;
      return [
        line(x(at), y + 6, x(at), foot, { stroke: colour, 'stroke-width': strong ? 2.6 : 1.4 }),
        ...(spread > 0
          ? [
              line(x(at - spread), base + bandHeight / 2, x(at + spread), base + bandHeight / 2, {
                stroke: colour,
                'stroke-width': 3,
              }),
              arrowHead(x(at - spread), base + bandHeight / 2, 'left', colour),
              arrowHead(x(at + spread), base + bandHeight / 2, 'right', colour),
            ]
          : []),
        lettering(words, (start + end) / 2, y, {
          'text-anchor': 'middle',
          'font-weight': strong ? 700 : 400,
          stroke: pens.paper,
          'stroke-width': 3,
          'paint-order': 'stroke',
        }),
      ];
    }),
    lettering(drawn.unit, right + 20, foot + 20, { 'text-anchor': 'end', 'font-size': 13, fill: pens.faint }),
  );
};

/** A figure for a mark: at most so many decimals, none that say nothing. */
export const figure = (value: number, places = 4): string => String(Number(formatFigure(value, places)));
