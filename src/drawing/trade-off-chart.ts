/** @module The trade-off drawn: cost across, hours up, days by the form of each point; each plan with a numbered tag to point at. */
import { fallsShort } from '../plan/falls-short.ts';
import type { Demands, Plan } from '../plan/plan-model.ts';
import { formatFigure } from '../quantity/figure.ts';
import { chartField } from './chart-field.ts';
import { type Form, formed, formsOf } from './form.ts';
import { boxed, lettering, line, pens } from './ink.ts';
import { round, type SvgNode, sheetOf, svg } from './svg.ts';

type Figures = Pick<Plan, 'cents' | 'days' | 'hours'>;

export interface TradeOffDrawn {
  /** In the order of the trade-off, cheapest first; at least one. */
  readonly plans: readonly Figures[];
  readonly currency: string;
  /** What is asked: drawn as lines, and tags of plans that do not keep it are dashed. */
  readonly asked: Pick<Demands, 'cents' | 'days' | 'hours'>;
  /** Index of the plan that is being looked at. */
  readonly shown?: number | undefined;
}

const width = 720;
/** A tag is as large as a finger needs, so that plans whose points lie close can still be told apart. */
const tag = { width: 44, height: 46, gap: 6 };
const left = 72;
const across = width - left - 24;
const tagsInRow = Math.floor((across - tag.width) / (tag.width + 1));

/** Words over leaders and lines stand out from them. */
const aside = { 'font-size': 13, stroke: pens.paper, 'stroke-width': 4, 'paint-order': 'stroke' };

const daysText = (days: number): string => formatFigure(days, Number.isInteger(days) ? 0 : 1);

/** The plan's figures in one line: `plan 3: 1475.50 EUR, 6 days, lasts 4500 h`. */
const planWords = ({ cents, days, hours }: Figures, index: number, currency: string): string =>
  `plan ${index + 1}: ${formatFigure(cents / 100, 2)} ${currency}, ${daysText(days)} days, lasts ${formatFigure(hours, 0)} h`;

/** Where the tags stand: side by side in the plans' order; by turns in several rows where one is too short. */
const tagsOf = (count: number): readonly { readonly x: number; readonly y: number }[] => {
  const rows = Math.ceil(count / tagsInRow);
  return Array.from({ length: count }, (_, index) => ({
    x: left + ((across - tag.width) * (index + 0.5)) / count,
    y: 8 + (index % rows) * (tag.height + tag.gap),
  }));
};

/** Round the point that is being looked at. */
const ring = ({ x, y }: { readonly x: number; readonly y: number }): SvgNode =>
  svg('circle', {
    cx: round(x),
    cy: round(y),
    r: 14,
    fill: 'none',
    stroke: pens.accent,
    'stroke-width': 2.4,
  });

/** Room beyond the outermost values, and none where they would fall below nothing. */
const axisOver = (words: string, values: readonly number[]) => {
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const room = (most - least) * 0.06;
  return { words, from: Math.max(0, least - room), to: most + room };
};

const legend = (
  forms: readonly { readonly form: Form; readonly words: string }[],
  y: number,
): readonly SvgNode[] =>
  forms.flatMap(({ form, words }, at) => {
    const x = left + 10 + (across / Math.max(forms.length, 4)) * at;
    return [formed(form, x, y - 5, 7, false), lettering(words, x + 14, y)];
  });

/**
 * Each plan is a group that carries `data-place` with its index, and its figures in words, so that a screen can make
 * it a button.
 */
export const tradeOffChart = ({ plans, currency, asked, shown }: TradeOffDrawn): SvgNode => {
  const tags = tagsOf(plans.length);
  const tagsEnd = Math.max(...tags.map(({ y }) => y)) + tag.height;
  const box = { x: left, y: tagsEnd + 44, width: across, height: 290 };
  const ends = (value: number | undefined) => (value === undefined ? [] : [value]);
  const field = chartField(box, {
    x: axisOver(
      `cost, ${currency}`,
      plans.map(({ cents }) => cents / 100),
    ),
    y: axisOver('hours that each part is good for, h', [
      ...plans.map(({ hours }) => hours),
      ...ends(asked.hours),
    ]),
  });
  const forms = formsOf(plans.map(({ days }) => days));
  const points = plans.map(({ cents, hours }) => ({
    x: field.across(cents / 100),
    y: field.up(hours),
  }));
  const edge = { stroke: pens.ink, 'stroke-width': 1.4, 'stroke-dasharray': '9 4' };
  const wanted = [
    ...(asked.hours === undefined
      ? []
      : [
          line(box.x, field.up(asked.hours), box.x + box.width, field.up(asked.hours), edge),
          lettering(`${formatFigure(asked.hours, 0)} h asked`, box.x + 8, field.up(asked.hours) - 6, {
            ...aside,
          }),
        ]),
    ...(asked.cents === undefined || field.inside(asked.cents / 100, field.x) !== asked.cents / 100
      ? []
      : [
          line(field.across(asked.cents / 100), box.y, field.across(asked.cents / 100), field.foot, edge),
          lettering('cost at most', field.across(asked.cents / 100) - 6, field.foot - 8, {
            ...aside,
            'text-anchor': 'end',
          }),
        ]),
  ];
  const leaders = plans.flatMap((_, index) => {
    const [from, to] = [tags[index], points[index]];
    if (!from || !to) return [];
    const middle = from.x + tag.width / 2;
    const pen =
      index === shown
        ? { stroke: pens.accent, 'stroke-width': 2 }
        : { stroke: pens.faint, 'stroke-width': 0.8 };
    return [
      line(middle, from.y + tag.height, middle, tagsEnd + 6, pen),
      line(middle, tagsEnd + 6, to.x, to.y, pen),
    ];
  });
  const drawn = plans.flatMap((plan, index) => {
    const [at, point] = [tags[index], points[index]];
    const form = forms.of(plan.days);
    if (!at || !point) return [];
    const chosen = index === shown;
    const short = fallsShort(plan, asked);
    const words = `${planWords(plan, index, currency)}${short.length > 0 ? `; not as asked: ${short.join(', ')}` : ''}`;
    const ink = { 'text-anchor': 'middle', fill: chosen ? pens.paper : pens.ink };
    return [
      svg(
        'g',
        { 'data-place': String(index), role: 'img', 'aria-label': words },
        boxed(
          { ...at, width: tag.width, height: tag.height },
          {
            fill: chosen ? pens.ink : pens.paper,
            stroke: pens.ink,
            'stroke-width': chosen ? 3 : 1.6,
            ...(short.length > 0 ? { 'stroke-dasharray': '4 3' } : {}),
          },
        ),
        svg('title', {}, words),
        lettering(String(index + 1), at.x + tag.width / 2, at.y + 20, {
          ...ink,
          'font-size': 17,
          'font-weight': 700,
        }),
        formed(form, point.x, point.y, 7, chosen),
        ...(chosen ? [ring(point)] : []),
      ),
      // No part of what the button is called: a touch goes through it to the tag.
      lettering(`${daysText(plan.days)} d`, at.x + tag.width / 2, at.y + 38, {
        ...ink,
        'pointer-events': 'none',
      }),
    ];
  });
  const least = Math.min(...plans.map(({ hours }) => hours));
  const most = Math.max(...plans.map(({ hours }) => hours));
  const dashed = plans.some((plan) => fallsShort(plan, asked).length > 0);
  return sheetOf(
    { width, height: field.foot + (dashed ? 108 : 86) },
    {
      title: 'Trade-off of cost, days and hours',
      description: `${plans.length} plans, none beaten by another in cost, days and hours together; from ${planWords(plans[0] ?? { cents: 0, days: 0, hours: 0 }, 0, currency)} to the dearest; they last from ${formatFigure(least, 0)} to ${formatFigure(most, 0)} h.`,
    },
    ...field.grid,
    ...leaders,
    ...wanted,
    ...field.axes,
    lettering('plan', 8, 28, { fill: pens.faint }),
    lettering('days', 8, 46, { fill: pens.faint }),
    ...drawn,
    ...legend(forms.legend, field.foot + 76),
    ...(dashed
      ? [
          lettering('A tag with a broken line: not as asked.', left + 2, field.foot + 100, {
            fill: pens.faint,
          }),
        ]
      : []),
  );
};
