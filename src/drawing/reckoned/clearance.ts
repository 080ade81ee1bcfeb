/** @module A clearance: shaft in bore, drawn in section with the gap magnified, and both sizes on one line. */
import { coverageFactor } from '../../quantity/coverage.ts';
import { expanded } from '../../quantity/uncertain.ts';
import { lettering, line, pens } from '../ink.ts';
import { round, type SvgNode, sheetOf, svg } from '../svg.ts';
import { lettered, numberIn, type Picture } from './picture.ts';

const width = 520;
const height = 330;

const ring = (cx: number, cy: number, r: number, attributes: SvgNode['attributes']): SvgNode =>
  svg('circle', { cx: round(cx), cy: round(cy), r: round(r), ...attributes });

/** The shaft lies at the foot of the bore, as it does at rest: all of the clearance stands above it. */
export const clearancePicture: Picture = (given, reckoned) => {
  const bore = given.quantities.bore;
  const shaft = given.quantities.shaft;
  const gap = numberIn(reckoned, 'clearance');
  const known = coverageFactor(0.95, Infinity) * (reckoned.results.clearance?.u ?? 0);
  const outer = 120;
  // Drawn large enough to be seen whatever it is; an interference is drawn as an overlap.
  const drawnGap = gap < 0 ? -10 : Math.min(34, Math.max(6, 12000 * (gap / (shaft?.value ?? 1)) * 1.2));
  const inner = outer - drawnGap / 2;
  const cx = 170;
  const cy = height / 2 + 8;
  const shaftY = cy + drawnGap / 2;
  const sizeOf = (size: typeof bore): string =>
    size === undefined
      ? ''
      : `${size.value} mm${expanded(size, 0.95) > 0 ? ` ± ${Number(expanded(size, 0.95).toFixed(5))}` : ''}`;
  const x = 330;
  return sheetOf(
    { width, height },
    {
      title: gap < 0 ? 'Interference of shaft and bore' : 'Clearance of shaft and bore',
      description: `Bore ${sizeOf(bore)}, shaft ${sizeOf(shaft)}, ${gap < 0 ? 'interference' : 'clearance'} ${lettered(reckoned, 'clearance')}.`,
    },
    ring(cx, cy, outer + 22, { fill: 'none', stroke: pens.ink, 'stroke-width': 1.4 }),
    ring(cx, cy, outer, { fill: pens.paper, stroke: pens.ink, 'stroke-width': 2 }),
    ring(cx, shaftY, inner, { fill: 'none', stroke: pens.accent, 'stroke-width': 2.4 }),
    line(cx - outer - 30, cy, cx + outer + 30, cy, { stroke: pens.faint, 'stroke-dasharray': '14 4 3 4' }),
    line(cx, cy - outer - 30, cx, cy + outer + 30, { stroke: pens.faint, 'stroke-dasharray': '14 4 3 4' }),
    line(cx, cy - outer + drawnGap / 2, x - 10, 78, { stroke: pens.accent }),
    lettering(gap < 0 ? 'interference' : 'clearance', x, 64, { fill: pens.faint }),
    lettering(lettered(reckoned, 'clearance'), x, 90, { 'font-size': 22, 'font-weight': 700 }),
    ...(known > 0
      ? [lettering(`± ${Number(known.toFixed(5))} mm, 95 times in 100`, x, 112, { 'font-size': 13 })]
      : []),
    lettering('bore', x, 168, { fill: pens.faint }),
    lettering(sizeOf(bore), x, 190, { 'font-weight': 700 }),
    lettering('shaft', x, 224, { fill: pens.faint }),
    lettering(sizeOf(shaft), x, 246, { 'font-weight': 700 }),
    lettering('gap not to scale', x, height - 16, { 'font-size': 12, fill: pens.faint }),
  );
};
