/** @module A bolted joint as it is tightened: each bolt with its turn in the order, those done filled, the next one large with its way to turn. */
import type { Fastener } from '../engine/fastener.ts';
import { type Radians, toDegrees } from '../quantity/brand.ts';
import { lettering, line, pens } from './ink.ts';
import { round, type SvgNode, sheetOf, svg } from './svg.ts';

export interface JointDrawn {
  readonly title: string;
  /** mm: along to the right, across downwards. */
  readonly bolts: readonly { readonly name: string; readonly x: number; readonly y: number }[];
  /** Every bolt once, by name. */
  readonly order: readonly string[];
  readonly done: readonly string[];
  readonly next?: string;
  readonly hand: Fastener['hand'];
  /** Where the stage turns the bolt on instead of pulling it to a torque. */
  readonly angle?: Radians;
}

const width = 720;
const margin = 84;
const tallest = 330;

interface At {
  readonly x: number;
  readonly y: number;
  /** Of a bolt that is not the next one. */
  readonly r: number;
}

/** A point on a circle, its angle taken clockwise from the top. */
const onCircle = ({ x, y }: At, r: number, angle: number): readonly [number, number] => [
  x + r * Math.sin(angle),
  y - r * Math.cos(angle),
];

/** From one angle to another along a circle, with an arrow head at its end. */
const turnArrow = (at: At, r: number, from: number, to: number): readonly SvgNode[] => {
  const [x1, y1] = onCircle(at, r, from);
  const [x2, y2] = onCircle(at, r, to);
  const way = to > from ? 1 : -1;
  const far = Math.abs(to - from) > Math.PI ? 1 : 0;
  const back = to - way * (16 / r);
  const corner = (off: number) =>
    onCircle(at, r + off, back)
      .map(round)
      .join(' ');
  return [
    svg('path', {
      d: `M${round(x1)} ${round(y1)}A${round(r)} ${round(r)} 0 ${far} ${way > 0 ? 1 : 0} ${round(x2)} ${round(y2)}`,
      fill: 'none',
      stroke: pens.accent,
      'stroke-width': 4,
    }),
    svg('path', { d: `M${round(x2)} ${round(y2)}L${corner(8)}L${corner(-8)}Z`, fill: pens.accent }),
  ];
};

/** The way to turn; of an angle stage the angle itself, from the line where it begins. */
const turn = (at: At, large: number, { hand, angle }: JointDrawn): readonly SvgNode[] => {
  const way = hand === 'left' ? -1 : 1;
  const r = large + 13;
  if (angle === undefined) return turnArrow(at, r, -1.9 * way, 1.9 * way);
  // A whole turn would end where it begins, and be no arc.
  const to = way * Math.min(angle, 2 * Math.PI - 0.05);
  const ray = (to_: number) => {
    const [x1, y1] = onCircle(at, large, to_);
    const [x2, y2] = onCircle(at, r + 14, to_);
    return line(x1, y1, x2, y2, { stroke: pens.accent, 'stroke-width': 2 });
  };
  return [ray(0), ray(to), ...turnArrow(at, r, 0, to)];
};

const plain = (at: At, no: string, done: boolean): readonly SvgNode[] => [
  svg('circle', {
    cx: round(at.x),
    cy: round(at.y),
    r: round(at.r),
    fill: done ? pens.ink : pens.paper,
    stroke: pens.ink,
    'stroke-width': 2,
  }),
  lettering(no, at.x, at.y + at.r * 0.32, {
    'text-anchor': 'middle',
    'font-weight': 700,
    'font-size': round(at.r * 0.9),
    fill: done ? pens.paper : pens.ink,
  }),
  ...(done
    ? [lettering('✓', at.x + at.r * 0.75, at.y - at.r * 0.8, { 'font-size': 17, 'font-weight': 700 })]
    : []),
];

const nextBolt = (at: At, no: string, name: string, joint: JointDrawn): readonly SvgNode[] => {
  const large = at.r * 1.3;
  const named = name === no ? 'next' : `next, bolt ${name}`;
  const words = joint.angle === undefined ? named : `${named}: ${Math.round(toDegrees(joint.angle))}°`;
  return [
    svg('circle', {
      cx: round(at.x),
      cy: round(at.y),
      r: round(large),
      fill: pens.paper,
      stroke: pens.accent,
      'stroke-width': 5,
    }),
    lettering(no, at.x, at.y + large * 0.34, {
      'text-anchor': 'middle',
      'font-weight': 700,
      'font-size': round(large),
    }),
    ...turn(at, large, joint),
    lettering(words, at.x, at.y + large + 34, {
      'text-anchor': 'middle',
      'font-weight': 700,
      fill: pens.accent,
      'font-size': 17,
    }),
  ];
};

/** Where each bolt is drawn, and how large, so that none touches another. */
const laidOut = (
  bolts: JointDrawn['bolts'],
): { readonly at: ReadonlyMap<string, At>; readonly height: number } => {
  const [xs, ys] = [bolts.map(({ x }) => x), bolts.map(({ y }) => y)];
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  const [wide, high] = [Math.max(...xs) - left, Math.max(...ys) - top];
  const scale = Math.min((width - 2 * margin) / Math.max(wide, 1e-9), tallest / Math.max(high, 1e-9), 4);
  const nearest = Math.min(
    ...bolts.flatMap((one, at) => bolts.slice(at + 1).map(({ x, y }) => Math.hypot(one.x - x, one.y - y))),
    Infinity,
  );
  const r = Math.min(30, Math.max(10, nearest * scale * 0.34));
  const from = (width - wide * scale) / 2;
  return {
    at: new Map(
      bolts.map(({ name, x, y }) => [
        name,
        { x: from + (x - left) * scale, y: margin + (y - top) * scale, r },
      ]),
    ),
    height: high * scale + 2 * margin + 20,
  };
};

export const jointDrawing = (joint: JointDrawn): SvgNode => {
  const { title, bolts, order, done, next } = joint;
  const { at, height } = laidOut(bolts);
  const drawn = order.flatMap((name, index) => {
    const where = at.get(name);
    if (where === undefined) return [];
    const no = String(index + 1);
    return [
      svg(
        'g',
        { 'data-bolt': name, 'data-state': name === next ? 'next' : done.includes(name) ? 'done' : 'left' },
        ...(name === next ? nextBolt(where, no, name, joint) : plain(where, no, done.includes(name))),
        ...(name === no || name === next
          ? []
          : [
              lettering(name, where.x + where.r + 3, where.y + where.r + 9, {
                'font-size': 13,
                fill: pens.faint,
              }),
            ]),
      ),
    ];
  });
  const left = order.filter((name) => !done.includes(name));
  const named = order.some((name, index) => name !== String(index + 1));
  return sheetOf(
    { width, height },
    {
      title: `${title}: ${done.length} of ${order.length} bolts done`,
      description: `Order ${order.join(', ')}. ${next === undefined ? 'None is next.' : `Bolt ${next} is next.`} Left: ${left.join(', ') || 'none'}.`,
    },
    ...drawn.filter(({ attributes }) => attributes['data-state'] !== 'next'),
    ...drawn.filter(({ attributes }) => attributes['data-state'] === 'next'),
    lettering(
      `in the ring: its turn${named ? ' · beside it: the name of the bolt' : ''} · filled, with ✓: done`,
      12,
      height - 10,
      { 'font-size': 14, fill: pens.faint },
    ),
  );
};
