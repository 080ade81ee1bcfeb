/** @module The drawing office's pens: colours, line weights, hatching, arrows, lettering. */
import { round, type SvgNode, svg } from './svg.ts';

/** All pairs that carry words differ by at least 4.5 to 1 (WCAG 2.2, 1.4.3). */
export const pens = {
  paper: '#f8f5ec',
  ink: '#1b2a3a',
  faint: '#566271',
  accent: '#a32f0d',
} as const;

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export const boxed = ({ x, y, width, height }: Box, attributes: SvgNode['attributes'] = {}): SvgNode =>
  svg('rect', {
    x: round(x),
    y: round(y),
    width: round(Math.max(0, width)),
    height: round(Math.max(0, height)),
    ...attributes,
  });

/**
 * Section lines at 45 degrees inside a box, rising to the right or falling.
 * Drawn as one path rather than as a fill pattern, so that drawings share no names within a page.
 */
export const hatched = (
  box: Box,
  spacing: number,
  lean: 'rising' | 'falling',
  colour: string = pens.ink,
): SvgNode => {
  const { width, height } = box;
  const strokes: string[] = [];
  for (let start = -height + spacing / 2; start < width; start += spacing) {
    const left = Math.max(0, start);
    const right = Math.min(width, start + height);
    if (right <= left) continue;
    const down = (across: number) => (lean === 'falling' ? across - start : height - (across - start));
    strokes.push(
      `M${round(box.x + left)} ${round(box.y + down(left))}L${round(box.x + right)} ${round(box.y + down(right))}`,
    );
  }
  return svg('path', { d: strokes.join(''), stroke: colour, 'stroke-width': 1, fill: 'none' });
};

export const line = (
  x1: number,
  y1: number,
  x2: number,
  y2: number,
  attributes: SvgNode['attributes'] = {},
): SvgNode =>
  svg('line', {
    x1: round(x1),
    y1: round(y1),
    x2: round(x2),
    y2: round(y2),
    stroke: pens.ink,
    'stroke-width': 1.2,
    ...attributes,
  });

export const lettering = (
  words: string,
  x: number,
  y: number,
  attributes: SvgNode['attributes'] = {},
): SvgNode =>
  svg('text', { x: round(x), y: round(y), 'font-size': 14, fill: pens.ink, ...attributes }, words);

/** A slim arrow head whose point stands at (x, y). */
export const arrowHead = (
  x: number,
  y: number,
  points: 'left' | 'right' | 'up' | 'down',
  colour: string = pens.ink,
): SvgNode => {
  const long = 10;
  const half = 3;
  const [dx, dy] = { left: [1, 0], right: [-1, 0], up: [0, 1], down: [0, -1] }[points] as [number, number];
  const corner = (side: 1 | -1) =>
    `${round(x + dx * long + dy * half * side)} ${round(y + dy * long + dx * half * side)}`;
  return svg('path', { d: `M${round(x)} ${round(y)}L${corner(1)}L${corner(-1)}Z`, fill: colour });
};

/** A horizontal dimension line with an arrow at each end. */
export const dimension = (
  x1: number,
  x2: number,
  y: number,
  colour: string = pens.ink,
): readonly SvgNode[] => [
  line(x1, y, x2, y, { stroke: colour }),
  arrowHead(x1, y, 'left', colour),
  arrowHead(x2, y, 'right', colour),
];
