/** @module One part within another in section, lying against one side, the gap at the other magnified. */
import { boxed, dimension, hatched, lettering, line, pens } from '../ink.ts';
import { type SvgNode, sheetOf } from '../svg.ts';

interface Section {
  readonly title: string;
  readonly outer: string;
  readonly inner: string;
  readonly gap: string;
  /** Drawn as shut where there is none. */
  readonly open: boolean;
  /** How much of the outer size the inner one is drawn as; the rest is magnified gap. */
  readonly slim: boolean;
}

const width = 640;

/** The inner part lies against one side of the outer, so that all of the gap stands at the other. */
export const section = ({ title, outer, inner, gap, open, slim }: Section): SvgNode => {
  const [left, right] = slim ? [235, 405] : [150, 490];
  const wall = 56;
  const [top, tall] = [56, 120];
  const wide = open ? 30 : 0;
  const body = { x: left, y: top - 14, width: right - left - wide, height: tall + 28 };
  const walls = [left - wall, right].map((x) => ({ x, y: top, width: wall, height: tall }));
  return sheetOf(
    { width, height: 250 },
    { title, description: `${inner} in ${outer}, gap ${gap}` },
    ...walls.flatMap((box) => [
      hatched(box, 10, 'rising', pens.faint),
      boxed(box, { fill: 'none', stroke: pens.ink, 'stroke-width': 1.6 }),
    ]),
    boxed(body, { fill: pens.paper, stroke: pens.accent, 'stroke-width': 2.2 }),
    lettering(inner, body.x + body.width / 2, top + tall / 2 + 5, {
      'text-anchor': 'middle',
      'font-size': 13,
    }),
    line(right - wide, top - 30, right - wide, top, { stroke: pens.faint }),
    line(right, top - 30, right, top, { stroke: pens.faint }),
    lettering(gap, right - wide / 2, top - 36, { 'text-anchor': 'middle', 'font-weight': 700 }),
    ...dimension(left, right, top + tall + 34),
    lettering(outer, (left + right) / 2, top + tall + 54, { 'text-anchor': 'middle', 'font-size': 13 }),
    lettering('gap not to scale', width - 12, 244, {
      'text-anchor': 'end',
      'font-size': 12,
      fill: pens.faint,
    }),
  );
};
