/** @module Two-point sizes over planes and axes, drawn as a bar for each: how far each stands above the least. */
import { boxed, hatched, lettering, line, pens } from '../ink.ts';
import { sheetOf } from '../svg.ts';
import { lettered, type Picture, tableIn } from './picture.ts';

const width = 560;
const left = 96;
const barHeight = 26;

export const formPicture: Picture = (given, reckoned) => {
  const sizes = tableIn(given, 'sizes');
  const least = Math.min(...sizes.flat());
  const span = Math.max(...sizes.flat()) - least || 1e-3;
  const room = width - left - 120;
  const axes = sizes[0]?.length ?? 0;
  const height = 40 + sizes.length * (axes * barHeight + 22) + 34;
  return sheetOf(
    { width, height },
    {
      title: 'Sizes over planes and axes',
      description: `Ovality ${lettered(reckoned, 'ovality') || 'not known'}, taper ${lettered(reckoned, 'taper') || 'not known'}.`,
    },
    lettering(`above the least, ${Number(least.toFixed(4))} mm`, left, 22, {
      fill: pens.faint,
      'font-size': 13,
    }),
    line(left, 30, left, height - 36),
    ...sizes.flatMap((row, plane) => {
      const y = 40 + plane * (axes * barHeight + 22);
      return [
        lettering(`plane ${plane + 1}`, 10, y + (axes * barHeight) / 2 + 5, { 'font-weight': 700 }),
        ...row.flatMap((size, axis) => {
          const box = {
            x: left,
            y: y + axis * barHeight,
            width: Math.max(2, ((size - least) / span) * room),
            height: barHeight - 4,
          };
          return [
            boxed(box, { fill: pens.paper, stroke: pens.ink }),
            hatched(box, 8, axis % 2 === 0 ? 'rising' : 'falling', pens.faint),
            lettering(`+${(size - least).toFixed(3)}  axis ${axis + 1}`, box.x + box.width + 8, box.y + 17, {
              'font-size': 13,
            }),
          ];
        }),
      ];
    }),
    lettering(
      ['ovality', 'taper']
        .flatMap((key) => (lettered(reckoned, key) ? [`${key} ${lettered(reckoned, key)}`] : []))
        .join(' · '),
      left,
      height - 12,
      { 'font-weight': 700, fill: pens.accent },
    ),
  );
};
