/** @module Masses of parts or assemblies over the lightest, with what comes off hatched. */
import { quantityOf } from '../../reckon/reckoning.ts';
import { hatched, lettering, line, pens } from '../ink.ts';
import { figure } from '../number-line.ts';
import { round, sheetOf, svg } from '../svg.ts';
import { lettered, numberIn, numberOr, type Picture } from './picture.ts';

const [left, right, top, row] = [210, 560, 70, 34] as const;

export const balanceMassesPicture: Picture = (given, reckoned) => {
  const limit = quantityOf(given, 'limit').value * 1000;
  const parts = Object.keys(reckoned.results).flatMap((key) => {
    const name = key.slice(0, -'.mass'.length);
    return key.endsWith('.mass')
      ? [{ name, mass: numberIn(reckoned, key), off: numberOr(reckoned, `${name}.off`) ?? 0 }]
      : [];
  });
  const least = Math.min(...parts.map(({ mass }) => mass));
  const span = Math.max(limit, ...parts.map(({ mass }) => mass - least)) || 1;
  const x = (over: number) => left + (over / span) * (right - left);
  const foot = top + row * parts.length;
  return sheetOf(
    { width: 660, height: foot + 60 },
    {
      title: 'Masses over the lightest',
      description: `Spread ${lettered(reckoned, 'spread')}, ${lettered(reckoned, 'verdict')}; ${lettered(reckoned, 'total-off')} to come off in all.`,
    },
    lettering(
      `spread ${lettered(reckoned, 'spread')}, ${lettered(reckoned, 'verdict')} · off in all ${lettered(reckoned, 'total-off')}`,
      20,
      28,
      { 'font-weight': 700 },
    ),
    ...parts.flatMap(({ name, mass, off }, index) => {
      const y = top + row * index;
      const [end, kept] = [x(mass - least), x(mass - least - off)];
      return [
        lettering(name, left - 12, y + 17, { 'text-anchor': 'end', 'font-size': 14 }),
        svg('rect', {
          x: left,
          y,
          width: round(Math.max(1.5, end - left)),
          height: 22,
          fill: pens.paper,
          stroke: off > 0 ? pens.accent : pens.ink,
          'stroke-width': off > 0 ? 2.6 : 1.6,
        }),
        ...(off > 0
          ? [hatched({ x: kept, y, width: end - kept, height: 22 }, 6, 'rising', pens.accent)]
          : []),
        lettering(off > 0 ? `${figure(mass, 2)} − ${figure(off, 2)}` : figure(mass, 2), end + 8, y + 17, {
          'font-size': 13,
        }),
      ];
    }),
    line(left, top - 8, left, foot, { 'stroke-width': 1.6 }),
    line(x(limit), top - 8, x(limit), foot, { stroke: pens.accent, 'stroke-dasharray': '6 4' }),
    lettering(`lightest ${figure(least, 2)} g`, left, foot + 20, {
      'text-anchor': 'middle',
      'font-size': 13,
    }),
    lettering(`limit + ${figure(limit, 2)} g`, x(limit), top - 14, {
      'text-anchor': 'middle',
      'font-size': 13,
    }),
    lettering('hatched: comes off', 20, foot + 46, { 'font-size': 12, fill: pens.faint }),
  );
};
