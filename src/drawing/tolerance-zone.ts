/** @module A size on its tolerance zone: limits as made, limits for going back, the value measured and its spread. */
import type { Bounds, Limits } from '../engine/engine-type.ts';
import {
  bareFigure,
  bareSpread,
  figureText,
  inMillimetres,
  type ShownIn,
  shownStep,
} from '../engine/shown-in.ts';
import type { Verdict } from '../measure/verdict-model.ts';
import { arrowHead, type Box, boxed, dimension, hatched, lettering, line, pens } from './ink.ts';
import { round, type SvgNode, sheetOf, svg } from './svg.ts';

export interface Zone {
  readonly title: string;
  readonly limits: Limits;
  /** In the core's unit, as the limits are: mm for a length. */
  readonly value?: number;
  /** Half width of the 95 % interval. */
  readonly expanded?: number;
  readonly verdict: Verdict;
  /** What the zone is called where nothing may wear; `as made, and to go back` where it is left out. */
  readonly called?: string;
  /** Millimetres where it is left out. */
  readonly shown?: ShownIn;
}

const width = 640;
const height = 214;
const left = 24;
const right = width - 24;
const bandTop = 84;
const bandHeight = 44;

const finite = (...values: readonly (number | undefined)[]): readonly number[] =>
  values.filter((value) => value !== undefined);

/** The stretch of sizes drawn: the limits with as much room again, and the value unless it is far beyond them. */
const stretch = ({ limits, value, expanded = 0, shown = inMillimetres }: Zone): readonly [number, number] => {
  const bounds = finite(
    limits.new.least,
    limits.new.greatest,
    limits.goesBack.least,
    limits.goesBack.greatest,
  );
  const low = Math.min(...bounds);
  const high = Math.max(...bounds);
  const span = Math.max(high - low, expanded * 4, 4 * shownStep(shown));
  const near = value !== undefined && value > low - 2 * span && value < high + 2 * span;
  const from = Math.min(low, near ? value - expanded : low);
  const to = Math.max(high, near ? value + expanded : high);
  const room = Math.max(to - from, span) * 0.28;
  return [from - room, to + room];
};

/** Words for a screen reader and for the foot of the drawing. */
const boundsWords = (bounds: Bounds, shown: ShownIn): string => {
  const { least, greatest } = bounds;
  if (least !== undefined && greatest !== undefined) {
    return `${bareFigure(least, shown)} to ${figureText(greatest, shown)}`;
  }
  if (least !== undefined) return `at least ${figureText(least, shown)}`;
  return greatest !== undefined ? `at most ${figureText(greatest, shown)}` : 'not given';
};

const placedAt = (x: number): SvgNode['attributes'] => ({
  'text-anchor': x < left + 70 ? 'start' : x > right - 70 ? 'end' : 'middle',
});

/** Two letterings that would run into each other are pushed apart. */
const apart = (xs: readonly number[], room: number): readonly number[] => {
  const moved = [...xs];
  for (let at = 1; at < moved.length; at += 1) {
    const before = moved[at - 1] ?? 0;
    const own = moved[at] ?? 0;
    if (own - before < room) moved[at] = before + room;
  }
  const over = Math.max(0, (moved.at(-1) ?? 0) - (right - 30));
  return moved.map((x) => x - over);
};

const bandLabels = (
  words: string,
  bounds: Bounds,
  at: (size: number) => number,
  y: number,
  shown: ShownIn,
): readonly SvgNode[] => {
  const ends = finite(bounds.least, bounds.greatest);
  const xs = apart(ends.map(at), 64);
  const from = bounds.least === undefined ? left : at(bounds.least);
  const to = bounds.greatest === undefined ? right : at(bounds.greatest);
  const labelled = ends.map((end, index) =>
    lettering(bareFigure(end, shown), xs[index] ?? 0, y, {
      'font-size': 14,
      'font-weight': 600,
      ...placedAt(xs[index] ?? 0),
    }),
  );
  const middle = Math.min(right - 50, Math.max(left + 50, (from + to) / 2));
  return [
    line(from, y + 8, to, y + 8),
    ...(bounds.least === undefined ? [] : [arrowHead(from, y + 8, 'left')]),
    ...(bounds.greatest === undefined ? [] : [arrowHead(to, y + 8, 'right')]),
    ...labelled,
    lettering(words, middle, y - 17, { 'font-size': 13, fill: pens.faint, 'text-anchor': 'middle' }),
  ];
};

/** A limit is drawn where there is one: a zone open to one side has no edge there. */
const limitLines = (bounds: Bounds, box: Box, weight: number): readonly SvgNode[] => {
  const foot = box.y + box.height;
  const upright = (x: number) => line(x, box.y, x, foot, { 'stroke-width': weight });
  return [
    line(box.x, box.y, box.x + box.width, box.y, { 'stroke-width': weight }),
    line(box.x, foot, box.x + box.width, foot, { 'stroke-width': weight }),
    ...(bounds.least === undefined ? [] : [upright(box.x)]),
    ...(bounds.greatest === undefined ? [] : [upright(box.x + box.width)]),
  ];
};

const curve = (at: (size: number) => number, value: number, expanded: number): SvgNode => {
  const base = bandTop + bandHeight / 2 + 18;
  const points = Array.from({ length: 33 }, (_, index) => {
    const across = (index - 16) / 16;
    const size = value + across * 1.5 * expanded;
    // The 95 % half width is 1.96 standard deviations.
    return `${round(at(size))} ${round(base - 36 * Math.exp(-0.5 * (across * 1.5 * 1.96) ** 2))}`;
  });
  return svg('path', {
    d: `M${points.join('L')}Z`,
    fill: pens.paper,
    stroke: pens.accent,
    'stroke-width': 1.6,
  });
};

const measured = (zone: Zone, at: (size: number) => number, from: number, to: number): readonly SvgNode[] => {
  const { value, expanded, shown = inMillimetres } = zone;
  if (value === undefined) return [];
  const y = bandTop + bandHeight + 54;
  if (value < from || value > to) {
    const low = value < from;
    const x = low ? left : right;
    return [
      arrowHead(x, bandTop + bandHeight / 2, low ? 'left' : 'right', pens.accent),
      lettering(`${figureText(value, shown)}: far ${low ? 'below' : 'above'}, off this drawing`, x, y, {
        'font-size': 15,
        'font-weight': 700,
        'text-anchor': low ? 'start' : 'end',
      }),
    ];
  }
  const x = at(value);
  const spread =
    expanded === undefined || expanded === 0
      ? []
      : [
          curve(at, value, expanded),
          ...dimension(at(value - expanded), at(value + expanded), bandTop + bandHeight + 26, pens.accent),
        ];
  const words = `${bareFigure(value, shown)}${expanded === undefined ? '' : ` ± ${bareSpread(expanded, shown)}`} ${shown.unit}: ${zone.verdict}`;
  return [
    ...spread,
    line(x, bandTop - 6, x, bandTop + bandHeight + 36, { stroke: pens.accent, 'stroke-width': 2.6 }),
    lettering(words, Math.min(right - 120, Math.max(left + 120, x)), y, {
      'font-size': 15,
      'font-weight': 700,
      'text-anchor': 'middle',
    }),
  ];
};

export const toleranceZone = (zone: Zone): SvgNode => {
  const [from, to] = stretch(zone);
  const at = (size: number) => left + ((size - from) / (to - from)) * (right - left);
  const { limits, value, expanded, verdict, shown = inMillimetres } = zone;
  const band = (bounds: Bounds) => {
    const start = bounds.least === undefined ? left : at(bounds.least);
    const end = bounds.greatest === undefined ? right : at(bounds.greatest);
    return { x: start, y: bandTop, width: end - start, height: bandHeight };
  };
  const given = (bounds: Bounds) => bounds.least !== undefined || bounds.greatest !== undefined;
  const back = band(limits.goesBack);
  // Where wear is not allowed at all, one zone says both.
  const alike =
    limits.goesBack.least === limits.new.least && limits.goesBack.greatest === limits.new.greatest;
  const made = band(limits.new);
  const size =
    value === undefined
      ? 'Nothing measured yet.'
      : `Measured ${figureText(value, shown)}${expanded === undefined ? '' : `, give or take ${bareSpread(expanded, shown)} ${shown.unit}`}: ${verdict}.`;
  return sheetOf(
    { width, height },
    {
      title: `${zone.title} on its tolerance zone`,
      description: `As made ${boundsWords(limits.new, shown)}. May go back ${boundsWords(limits.goesBack, shown)}. ${size}`,
    },
    line(left, bandTop + bandHeight, right, bandTop + bandHeight, { stroke: pens.faint, 'stroke-width': 1 }),
    ...(given(limits.goesBack) && !alike
      ? [
          ...limitLines(limits.goesBack, back, 2),
          hatched(back, 16, 'rising', pens.faint),
          ...bandLabels('may go back', limits.goesBack, at, 30, shown),
        ]
      : []),
    ...(given(limits.new)
      ? [
          boxed(made, { fill: pens.paper }),
          ...limitLines(limits.new, made, 1.2),
          hatched(made, 6, 'falling', pens.ink),
          ...bandLabels(
            alike ? (zone.called ?? 'as made, and to go back') : 'as made',
            limits.new,
            at,
            70,
            shown,
          ),
        ]
      : []),
    ...measured(zone, at, from, to),
    lettering(
      `as made: close hatching · ${alike ? '' : 'may go back: wide hatching · '}measured: line with its spread`,
      left,
      height - 8,
      {
        'font-size': 13,
        fill: pens.faint,
      },
    ),
  );
};
