/** @module How far a place has been proved, and how that is drawn: by hatching and a sign, never by colour alone. */
import type { Judged } from '../measure/verdict-model.ts';
import { type Box, boxed, hatched, lettering, pens } from './ink.ts';
import { type SvgNode, svg } from './svg.ts';

export type Mark = 'not opened' | 'nothing yet' | 'read in part' | 'within' | 'unsure' | 'outside';

/** From what is left alone and nothing known to the worst known, as the legend lists them. */
export const marks: readonly Mark[] = [
  'not opened',
  'nothing yet',
  'read in part',
  'within',
  'unsure',
  'outside',
];

/** The mark of a place from everything judged there: the worst verdict shows; within only when nothing is missing. */
export const markOf = (judged: readonly Judged[]): Mark => {
  const limited = judged.filter((one) => one.limits !== undefined || one.cells.length > 0);
  const has = (verdict: Judged['verdict']) =>
    limited.some((one) => one.verdict === verdict || one.cells.some((cell) => cell.verdict === verdict));
  if (has('outside')) return 'outside';
  if (has('unsure')) return 'unsure';
  const read = limited.some((one) => one.value !== undefined || one.cells.some(({ reading }) => reading));
  if (!read) return 'nothing yet';
  return limited.every((one) => one.missing.length === 0) ? 'within' : 'read in part';
};

const sign = (box: Box, words: string, colour: string): readonly SvgNode[] => {
  const size = Math.min(22, Math.max(14, Math.min(box.width, box.height) * 0.6));
  const x = box.x + box.width / 2;
  const y = box.y + box.height / 2;
  return [
    svg('circle', { cx: x, cy: y, r: size * 0.6, fill: pens.paper, stroke: colour, 'stroke-width': 1 }),
    lettering(words, x, y + size * 0.34, {
      'font-size': size,
      'font-weight': 700,
      'text-anchor': 'middle',
      fill: colour,
    }),
  ];
};

/** Fills a box as its mark asks. */
export const marked = (box: Box, mark: Mark): readonly SvgNode[] => {
  const outline = { fill: pens.paper, stroke: pens.ink, 'stroke-width': 1.6 };
  switch (mark) {
    case 'not opened':
      return [boxed(box, { fill: pens.paper, stroke: pens.faint, 'stroke-width': 0.8 })];
    case 'nothing yet':
      return [boxed(box, { ...outline, 'stroke-width': 1.2, 'stroke-dasharray': '5 3' })];
    case 'read in part':
      return [boxed(box, outline), hatched(box, 12, 'rising', pens.faint)];
    case 'within':
      return [boxed(box, outline), hatched(box, 6, 'rising', pens.ink), ...sign(box, '✓', pens.ink)];
    case 'unsure':
      return [
        boxed(box, outline),
        hatched(box, 9, 'rising', pens.faint),
        hatched(box, 9, 'falling', pens.faint),
        ...sign(box, '?', pens.ink),
      ];
    case 'outside':
      return [
        boxed(box, { fill: pens.accent, stroke: pens.ink, 'stroke-width': 1.6 }),
        ...sign(box, '✕', pens.accent),
      ];
    default:
      return mark satisfies never;
  }
};
