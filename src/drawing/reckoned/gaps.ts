/** @module Gaps: one part within another in section, the gap magnified, and beneath it the gap against its limits. */
import { boxed, dimension, hatched, lettering, line, pens } from '../ink.ts';
import { figure } from '../number-line.ts';
import { sideBySide } from '../side-by-side.ts';
import { type SvgNode, sheetOf } from '../svg.ts';
import { againstLimits } from './against-limits.ts';
import { lettered, numberIn, type Picture } from './picture.ts';

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
const section = ({ title, outer, inner, gap, open, slim }: Section): SvgNode => {
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

interface PairDrawn {
  readonly title: string;
  readonly outer: readonly [key: string, words: string];
  readonly inner: readonly [key: string, words: string];
  readonly slim: boolean;
}

const pairPicture =
  ({ title, outer, inner, slim }: PairDrawn): Picture =>
  ({ quantities }, reckoned) => {
    const gap = numberIn(reckoned, 'clearance');
    const words = lettered(reckoned, 'clearance');
    const sizeOf = ([key, name]: readonly [string, string]) =>
      `${name} ${figure(quantities[key]?.value ?? 0)} mm`;
    return sideBySide(
      `${title}: ${words}`,
      [
        section({ title, outer: sizeOf(outer), inner: sizeOf(inner), gap: words, open: gap > 0, slim }),
        againstLimits(`${title} against its limits`, quantities, {
          at: gap,
          words: `clearance ${words}`,
          u: reckoned.results.clearance?.u ?? 0,
        }),
      ],
      1,
    );
  };

export const pistonClearancePicture = pairPicture({
  title: 'Clearance of the piston in its bore',
  outer: ['bore', 'bore'],
  inner: ['piston', 'piston'],
  slim: false,
});

export const stemClearancePicture = pairPicture({
  title: 'Clearance of the stem in its guide',
  outer: ['guide', 'guide'],
  inner: ['stem', 'stem'],
  slim: true,
});

export const ringSideClearancePicture = pairPicture({
  title: 'Side clearance of the ring in its groove',
  outer: ['groove', 'groove'],
  inner: ['ring', 'ring'],
  slim: true,
});
