/** @module Sleeve and thimble of any micrometer, drawn as a textbook draws them. */
import { lettering, line, pens } from './ink.ts';
import { round, type SvgNode, svg } from './svg.ts';

/** A line across the sleeve. */
export interface SleeveLine {
  /** Along the sleeve, in its own lines from 0. */
  readonly at: number;
  readonly side: 'above' | 'below';
  readonly length: number;
  readonly words?: string;
}

export interface Barrel {
  /** Where the thimble's edge stands, in the sleeve's lines. */
  readonly edge: number;
  /** The stretch of the sleeve that is drawn: its first line, and how many from there. */
  readonly from: number;
  readonly length: number;
  readonly lines: readonly SleeveLine[];
  /** Divisions round the thimble. */
  readonly divisions: number;
  /** Every so many of them carry a number. */
  readonly numbered: number;
  /** The thimble's division, with its fraction, that stands at the line along the sleeve. */
  readonly atLine: number;
  readonly vernier: boolean;
}

/** The room that a barrel takes. */
export const barrelSize = { width: 310, height: 176 };

const left = 10;
const sleeve = 205;
const thimble = 85;
const middle = 86;
const half = 68;
const bevel = 10;
/** Thimble and vernier are drawn unrolled, so that lines which meet are seen to meet. */
const spacing = 6;
const seenDivisions = 10.5;

const sleeveX = ({ from, length }: Barrel, at: number): number => left + ((at - from) / length) * sleeve;

/** Where a line stands that is so many divisions of the thimble above the line along the sleeve. */
const unrolled = (divisions: number): number => middle - spacing * divisions;

const seenSleeve = (barrel: Barrel): readonly SvgNode[] => {
  const edge = sleeveX(barrel, barrel.edge);
  return barrel.lines
    .filter(({ at }) => at >= barrel.from && at <= barrel.edge + 1e-9)
    .flatMap(({ at, side, length, words }) => {
      const x = sleeveX(barrel, at);
      const far = middle + (side === 'above' ? -length : length);
      // A number half under the thimble, or among the lines of the vernier, is not drawn; its line is what counts.
      const room = barrel.vernier && side === 'above' ? 44 : 0;
      const clear = words !== undefined && x + 4 * words.length < edge - room;
      return [
        line(x, middle, x, far, { 'stroke-width': 1.2, 'data-sleeve': at }),
        ...(clear
          ? [
              lettering(words, x, side === 'above' ? far - 3 : far + 12, {
                'font-size': 13,
                'font-weight': 600,
                'text-anchor': 'middle',
              }),
            ]
          : []),
      ];
    });
};

const seenThimble = (barrel: Barrel): readonly SvgNode[] => {
  const { divisions, numbered, atLine } = barrel;
  const edge = sleeveX(barrel, barrel.edge);
  return Array.from({ length: divisions }, (_, division) => {
    // Turning it to open brings higher numbers down to the line.
    const above = (((division - atLine) % divisions) + 1.5 * divisions) % divisions;
    return { division, above: above - divisions / 2 };
  })
    .filter(({ above }) => Math.abs(above) <= seenDivisions)
    .flatMap(({ division, above }) => {
      const y = unrolled(above);
      const number = division % numbered === 0;
      return [
        line(edge, y, edge + (number ? 22 : 12), y, { 'stroke-width': 1.2, 'data-thimble': division }),
        ...(number
          ? [lettering(String(division), edge + 27, y + 4.5, { 'font-size': 13, 'font-weight': 600 })]
          : []),
      ];
    });
};

/** Ten lines along the sleeve over nine divisions: the one that meets a line of the thimble gives the last digit. */
const vernierLines = (barrel: Barrel): readonly SvgNode[] => {
  if (!barrel.vernier) return [];
  const edge = sleeveX(barrel, barrel.edge);
  const meets = Math.round((barrel.atLine % 1) * 10) % 10;
  return Array.from({ length: 10 }, (_, digit) => digit).flatMap((digit) => {
    const y = unrolled(0.9 * digit);
    const colour = digit === meets ? pens.accent : pens.faint;
    return [
      line(edge - (digit === meets ? 24 : 14), y, edge, y, {
        'stroke-width': digit === meets ? 2 : 1,
        stroke: colour,
        'data-vernier': digit,
      }),
      ...(digit === meets
        ? [
            lettering(String(digit), edge - 32, y + 4.5, {
              'font-size': 13,
              'font-weight': 700,
              fill: colour,
            }),
          ]
        : []),
    ];
  });
};

/** Draws it in a group of its own, from (0, 0) to its size. */
export const barrelAt = (barrel: Barrel): SvgNode => {
  const edge = sleeveX(barrel, barrel.edge);
  const outline = { fill: pens.paper, stroke: pens.ink, 'stroke-width': 1.4 };
  const right = edge + thimble;
  return svg(
    'g',
    {},
    svg('rect', {
      x: left - 6,
      y: middle - half,
      width: round(edge - left + 6),
      height: 2 * half,
      ...outline,
    }),
    line(left - 6, middle, edge, middle, { 'stroke-width': 1.4 }),
    ...seenSleeve(barrel),
    ...vernierLines(barrel),
    svg('path', {
      d: `M${round(edge)} ${middle - half}L${round(right)} ${middle - half - bevel}L${round(right)} ${middle + half + bevel}L${round(edge)} ${middle + half}Z`,
      ...outline,
    }),
    ...seenThimble(barrel),
  );
};
