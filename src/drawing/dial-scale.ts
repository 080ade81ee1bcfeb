/** @module The face of a dial gauge as it looks at a reading: pointer, counter of turns, and which way it went. */
import { lettering, line, pens } from './ink.ts';
import { round, type SvgNode, svg } from './svg.ts';

export interface DialFigure {
  /** The figure shown, in the dial's unit; below 0 it went against the clock. */
  readonly figure: number;
  /** What one turn of the pointer is. */
  readonly turn: number;
  /** What one division is. */
  readonly division: number;
}

const middle = { x: 155, y: 92 };
const radius = 78;
const counter = { x: 155, y: 122, radius: 17, turns: 10 };

const around = (turns: number, from: number, centre: { readonly x: number; readonly y: number } = middle) => {
  const angle = turns * 2 * Math.PI;
  return { x: round(centre.x + from * Math.sin(angle)), y: round(centre.y - from * Math.cos(angle)) };
};

const stroke = (
  turns: number,
  from: number,
  to: number,
  attributes: SvgNode['attributes'],
  centre?: { readonly x: number; readonly y: number },
): SvgNode => {
  const [inner, outer] = [around(turns, from, centre), around(turns, to, centre)];
  return line(inner.x, inner.y, outer.x, outer.y, attributes);
};

/** Whole turns and what is left of the next, in divisions; both count away from zero. */
const partsOf = ({ figure, turn, division }: DialFigure) => {
  const perTurn = Math.round(turn / division);
  const divisions = Math.round((Math.abs(figure) / division) * 10) / 10;
  const turns = Math.floor(divisions / perTurn + 1e-9);
  return { perTurn, turns, rest: Math.round((divisions - turns * perTurn) * 10) / 10 };
};

/** What a fitter reads off, in words: `1 turn and 24 divisions, plus`. */
export const dialWords = (shown: DialFigure): string => {
  const { turns, rest } = partsOf(shown);
  const way = shown.figure < 0 ? 'minus, against the clock' : 'plus, with the clock';
  return `${turns} ${turns === 1 ? 'turn' : 'turns'} and ${rest} ${rest === 1 ? 'division' : 'divisions'}, ${way}`;
};

const face = (perTurn: number): readonly SvgNode[] =>
  Array.from({ length: perTurn }, (_, at) => {
    const ten = at % 10 === 0;
    const five = at % 5 === 0;
    const turns = at / perTurn;
    const words = around(turns, radius - 24);
    return [
      stroke(turns, radius - (ten ? 13 : five ? 10 : 6), radius - 1, {
        'stroke-width': ten ? 1.4 : 0.7,
        'data-division': at,
      }),
      ...(ten
        ? [lettering(String(at), words.x, words.y + 4, { 'font-size': 11, 'text-anchor': 'middle' })]
        : []),
    ];
  }).flat();

const turnCounter = (turns: number, way: 1 | -1): readonly SvgNode[] => [
  svg('circle', {
    cx: counter.x,
    cy: counter.y,
    r: counter.radius,
    fill: pens.paper,
    stroke: pens.ink,
    'stroke-width': 1,
  }),
  ...Array.from({ length: counter.turns }, (_, at) =>
    stroke(
      at / counter.turns,
      counter.radius - 4,
      counter.radius,
      { 'stroke-width': 0.8, 'data-turn': at },
      counter,
    ),
  ),
  stroke(
    (way * turns) / counter.turns,
    0,
    counter.radius - 5,
    { 'stroke-width': 1.6, 'data-hand': 'turns' },
    counter,
  ),
];

/** An arrow outside the face for the way that the pointer went. */
const wayArrow = (way: 1 | -1): readonly SvgNode[] => {
  const from = around(0.02 * way, radius + 6);
  const to = around(0.09 * way, radius + 6);
  const tip = [around(0.075 * way, radius + 2), around(0.075 * way, radius + 10)];
  return [
    svg('path', {
      d: `M${from.x} ${from.y}A${radius + 6} ${radius + 6} 0 0 ${way === 1 ? 1 : 0} ${to.x} ${to.y}${tip.map(({ x, y }) => `M${x} ${y}L${to.x} ${to.y}`).join('')}`,
      fill: 'none',
      stroke: pens.accent,
      'stroke-width': 1.6,
    }),
    lettering(way === 1 ? '+' : '−', around(0.13 * way, radius + 8).x, around(0.13 * way, radius + 8).y + 5, {
      'font-size': 18,
      'font-weight': 700,
      'text-anchor': 'middle',
      fill: pens.accent,
    }),
  ];
};

/**
 * Face, pointer and counter of turns at a reading; the pointer goes with the clock for plus.
 *
 * @param shown  figure, with what a turn and a division are
 * @returns drawing; undefined where the face would have no divisions to read by, or the counter too few turns
 */
export const dialScale = (shown: DialFigure): SvgNode | undefined => {
  const { perTurn, turns, rest } = partsOf(shown);
  if (!(perTurn >= 10 && perTurn <= 200 && turns < counter.turns)) return undefined;
  const way = shown.figure < 0 ? -1 : 1;
  const pointer = (way * (turns + rest / perTurn)) % 1;
  return svg(
    'g',
    {},
    svg('circle', {
      cx: middle.x,
      cy: middle.y,
      r: radius,
      fill: pens.paper,
      stroke: pens.ink,
      'stroke-width': 1.8,
    }),
    ...face(perTurn),
    ...turnCounter(turns, way),
    ...wayArrow(way),
    stroke(pointer, -14, radius - 8, { 'stroke-width': 2, 'data-hand': 'pointer' }),
    svg('circle', { cx: middle.x, cy: middle.y, r: 4, fill: pens.ink }),
  );
};
