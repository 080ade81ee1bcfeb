/** @module Points told apart by their form, never by colour alone: a form for each value, or for each range where there are many. */
import { formatFigure } from '../quantity/figure.ts';
import { pens } from './ink.ts';
import { round, type SvgNode, svg } from './svg.ts';

/** From the least value to the greatest. */
const order = ['triangle', 'square', 'circle', 'diamond', 'cross'] as const;

export type Form = (typeof order)[number];

/** Corners about the middle, in radii. */
const corners: Readonly<Record<Exclude<Form, 'circle'>, readonly (readonly [number, number])[]>> = {
  triangle: [
    [0, -1.15],
    [1.05, 0.75],
    [-1.05, 0.75],
  ],
  square: [
    [-0.85, -0.85],
    [0.85, -0.85],
    [0.85, 0.85],
    [-0.85, 0.85],
  ],
  diamond: [
    [0, -1.25],
    [1, 0],
    [0, 1.25],
    [-1, 0],
  ],
  cross: [
    [-0.35, -1.1],
    [0.35, -1.1],
    [0.35, -0.35],
    [1.1, -0.35],
    [1.1, 0.35],
    [0.35, 0.35],
    [0.35, 1.1],
    [-0.35, 1.1],
    [-0.35, 0.35],
    [-1.1, 0.35],
    [-1.1, -0.35],
    [-0.35, -0.35],
  ],
};

export const formed = (form: Form, x: number, y: number, size: number, filled: boolean): SvgNode => {
  const ink = {
    'data-form': form,
    fill: filled ? pens.accent : pens.paper,
    stroke: filled ? pens.accent : pens.ink,
    'stroke-width': 2,
  };
  if (form === 'circle') return svg('circle', { cx: round(x), cy: round(y), r: size, ...ink });
  const path = corners[form].map(([dx, dy]) => `${round(x + dx * size)} ${round(y + dy * size)}`).join('L');
  return svg('path', { d: `M${path}Z`, ...ink });
};

const text = (days: number): string => formatFigure(days, Number.isInteger(days) ? 0 : 1);

/** Which form stands for how many days, and what the legend says of each. */
export const formsOf = (
  days: readonly number[],
): {
  readonly of: (days: number) => Form;
  readonly legend: readonly { readonly form: Form; readonly words: string }[];
} => {
  const all = [...new Set(days)].sort((a, b) => a - b);
  const many = Math.max(all.length, order.length);
  const groups = Map.groupBy(all, (_, index) => order[Math.floor((index * order.length) / many)] ?? 'circle');
  const byDays = new Map([...groups].flatMap(([form, own]) => own.map((each) => [each, form] as const)));
  return {
    of: (each) => byDays.get(each) ?? 'circle',
    legend: [...groups].map(([form, own]) => {
      const [first = 0, last = first] = [own[0], own.at(-1)];
      const unit = last === 1 ? 'day' : 'days';
      return {
        form,
        words: first === last ? `${text(first)} ${unit}` : `${text(first)} to ${text(last)} ${unit}`,
      };
    }),
  };
};
