/** @module What a gauge showed over the run: its line, its limits step by step, the borders of the steps. */
import type { Trend, TrendStretch } from '../job/run/trends.ts';
import { chartField } from './chart-field.ts';
import { hatched, lettering, line, pens } from './ink.ts';
import { figure } from './number-line.ts';
import { round, type SvgNode, sheetOf, svg } from './svg.ts';

const width = 640;
const height = 300;
const field = { x: 70, y: 30, width: width - 70 - 20, height: height - 30 - 58 };

/** All that is shown, with room above and below. */
const span = (values: readonly number[]) => {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const room = Math.max((high - low) * 0.12, Math.abs(high) * 0.02, 1e-3);
  return { from: low - room, to: high + room };
};

const dashes = ['', '7 4', '2 3', '10 3 2 3', '1 4', '12 4'];

const described = ({ gauge, unit, lines }: Trend): string =>
  lines
    .map(({ cylinder, points }) => {
      const values = points.map(([, value]) => value);
      const of = cylinder === undefined ? gauge.title : `${gauge.title} of cylinder ${cylinder}`;
      return `${of}: ${figure(Math.min(...values), 1)} to ${figure(Math.max(...values), 1)} ${unit}, last ${figure(values.at(-1) ?? 0, 1)} ${unit}.`;
    })
    .join(' ');

/** The trend of one gauge: what lies beyond a limit is hatched, stretches that count no longer are struck through faintly. */
export const runTrend = (trend: Trend): SvgNode => {
  const { gauge, unit, lines, stretches } = trend;
  const end = stretches.at(-1)?.to ?? 1;
  const limits = stretches.flatMap(({ least, greatest }) =>
    [least, greatest].filter((one) => one !== undefined),
  );
  const values = [...lines.flatMap(({ points }) => points.map(([, value]) => value)), ...limits];
  const { x, y, foot, across, up, inside, grid, axes } = chartField(field, {
    x: { words: 'minutes of running', from: 0, to: end },
    y: { words: `${gauge.title}, ${unit}`, ...span(values) },
  });
  const bound = (
    { from, to }: TrendStretch,
    value: number,
    side: 'least' | 'greatest',
  ): readonly SvgNode[] => {
    const at = up(inside(value, y));
    const [left, right] = [across(inside(from, x)), across(inside(to, x))];
    const beyond =
      side === 'greatest'
        ? { x: left, y: field.y, width: right - left, height: at - field.y }
        : { x: left, y: at, width: right - left, height: foot - at };
    return [
      hatched(beyond, 12, 'rising', pens.faint),
      line(left, at, right, at, { stroke: pens.ink, 'stroke-width': 1.6 }),
    ];
  };
  const borders = stretches.flatMap((stretch, index) => {
    const at = across(inside(stretch.from, x));
    return [
      ...(index === 0
        ? []
        : [line(at, field.y, at, foot, { stroke: pens.faint, 'stroke-dasharray': '4 3' })]),
      lettering(`${stretch.step}${stretch.ended ? ' ✕' : ''}`, at + 5, field.y + 15, {
        'font-size': 14,
        'font-weight': 700,
        stroke: pens.paper,
        'stroke-width': 4,
        'paint-order': 'stroke',
      }),
    ];
  });
  const curves = lines.flatMap(({ cylinder, points }, index) => {
    const path = points
      .map(([px, py]) => `${round(across(inside(px, x)))} ${round(up(inside(py, y)))}`)
      .join('L');
    const [lastX, lastY] = points.at(-1) ?? [0, 0];
    const dash = dashes[index % dashes.length] ?? '';
    return [
      svg('path', {
        d: `M${path}`,
        fill: 'none',
        stroke: pens.accent,
        'stroke-width': 2.4,
        ...(dash === '' ? {} : { 'stroke-dasharray': dash }),
      }),
      ...points.map(([px, py]) =>
        svg('circle', {
          cx: round(across(inside(px, x))),
          cy: round(up(inside(py, y))),
          r: 3.5,
          fill: pens.paper,
          stroke: pens.accent,
          'stroke-width': 2,
        }),
      ),
      ...(cylinder === undefined
        ? []
        : [
            lettering(String(cylinder), across(inside(lastX, x)) - 8, up(inside(lastY, y)) - 7, {
              'text-anchor': 'end',
              'font-weight': 700,
              'font-size': 13,
            }),
          ]),
    ];
  });
  return sheetOf(
    { width, height },
    {
      title: `${gauge.title} over the run`,
      description: `${described(trend)} Hatched: beyond the limits of the step; the figures at the top are the steps.`,
    },
    ...grid,
    ...stretches.flatMap((stretch) => [
      ...(stretch.least === undefined ? [] : bound(stretch, stretch.least, 'least')),
      ...(stretch.greatest === undefined ? [] : bound(stretch, stretch.greatest, 'greatest')),
    ]),
    ...axes,
    ...borders,
    ...curves,
  );
};
