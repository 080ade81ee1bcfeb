/** @module A ring in its bore seen from above, its gap dimensioned in the bore where it was read and in the other. */
import { lettering, pens } from '../ink.ts';
import { figure } from '../number-line.ts';
import { sideBySide } from '../side-by-side.ts';
import { round, type SvgNode, sheetOf, svg } from '../svg.ts';
import { againstLimits } from './against-limits.ts';
import { lettered, numberIn, numberOr, type Picture } from './picture.ts';

const width = 600;
const height = 300;

/** A ring open at the top by a gap drawn many times too large. */
const ringAt = (
  cx: number,
  radius: number,
  opening: number,
  words: { readonly bore: string; readonly gap: string; readonly strong: boolean },
): readonly SvgNode[] => {
  const cy = 150;
  const half = Math.min(0.5, Math.max(0.03, opening));
  const end = (side: 1 | -1, r: number) =>
    `${round(cx + side * r * Math.sin(half))} ${round(cy - r * Math.cos(half))}`;
  return [
    svg('circle', { cx, cy, r: round(radius + 4), fill: 'none', stroke: pens.faint, 'stroke-width': 1.4 }),
    svg('path', {
      d: `M${end(1, radius)}A${radius} ${radius} 0 1 1 ${end(-1, radius)}`,
      fill: 'none',
      stroke: words.strong ? pens.accent : pens.ink,
      'stroke-width': 7,
    }),
    lettering(words.gap, cx, cy - radius - 16, { 'text-anchor': 'middle', 'font-weight': 700 }),
    lettering(words.bore, cx, cy + 6, { 'text-anchor': 'middle', 'font-size': 13 }),
  ];
};

export const ringGapFromBorePicture: Picture = ({ quantities }, reckoned) => {
  const gap = quantities.gap?.value ?? 0;
  const from = quantities.from?.value ?? 1;
  const to = quantities.to?.value ?? 1;
  const there = numberIn(reckoned, 'gap');
  return sheetOf(
    { width, height },
    {
      title: 'Ring gap in one bore and in the other',
      description: `In the bore of ${from} mm the gap is ${gap} mm; in the bore of ${to} mm it is ${lettered(reckoned, 'gap')}.`,
    },
    ...ringAt(150, 92, gap * 0.4, { bore: `bore ${from} mm`, gap: `gap ${gap} mm`, strong: false }),
    ...ringAt(440, 96, there * 0.4, {
      bore: `bore ${to} mm`,
      gap: `gap ${lettered(reckoned, 'gap')}`,
      strong: true,
    }),
    lettering('gaps not to scale', width - 12, height - 10, {
      'text-anchor': 'end',
      'font-size': 12,
      fill: pens.faint,
    }),
  );
};

/** The ring in the unworn bore, beside it where the bore is worn, and beneath both the gaps against their limits. */
export const ringGapPicture: Picture = ({ quantities }, reckoned) => {
  const gap = numberIn(reckoned, 'gap');
  const there = numberOr(reckoned, 'gap-worn');
  const words = lettered(reckoned, 'gap');
  const bore = figure(quantities.bore?.value ?? 0);
  const worn = figure(quantities.worn?.value ?? 0);
  const title = 'Ring gap in its own bore';
  const rings = sheetOf(
    { width: 640, height },
    { title, description: `In the bore of ${bore} mm the gap is ${words}.` },
    ...ringAt(there === undefined ? 320 : 160, 92, gap * 0.4, {
      bore: `unworn ${bore} mm`,
      gap: `gap ${words}`,
      strong: true,
    }),
    ...(there === undefined
      ? []
      : ringAt(470, 96, there * 0.4, {
          bore: `worn ${worn} mm`,
          gap: `gap ${lettered(reckoned, 'gap-worn')}`,
          strong: false,
        })),
    lettering('gaps not to scale', 628, height - 10, {
      'text-anchor': 'end',
      'font-size': 12,
      fill: pens.faint,
    }),
  );
  const line = againstLimits(
    `${title} against its limits`,
    quantities,
    { at: gap, words: `gap ${words}`, u: reckoned.results.gap?.u ?? 0 },
    there === undefined
      ? []
      : [
          {
            at: there,
            words: `worn ${lettered(reckoned, 'gap-worn')}`,
            u: reckoned.results['gap-worn']?.u ?? 0,
          },
        ],
  );
  return sideBySide(`${title}: ${words}`, [rings, line], 1);
};
