/** @module Pictures of a running engine's checks: pumps beside one another, oil pressure over its floor. */
import { fewestChanges, pumpsGiven } from '../../reckon/pump-balance.ts';
import { quantityOf } from '../../reckon/reckoning.ts';
import { lettering, line, pens } from '../ink.ts';
import { figure, numberLine } from '../number-line.ts';
import { round, sheetOf, svg } from '../svg.ts';
import { lettered, numberIn, numberOr, type Picture } from './picture.ts';

/** Bars stand on a level below the least of them, so that a few parts in a hundred show. */
export const pumpBalancePicture: Picture = (given, reckoned) => {
  const pumps = pumpsGiven(given);
  if (pumps.kind === 'refused') throw new Error(pumps.refusal.what);
  const figures = pumps.value.map(({ size }) => size.value / 1000);
  const wanted = given.quantities.wanted?.value;
  const allowed =
    quantityOf(given, 'allowed').value * (wanted === undefined ? numberIn(reckoned, 'mean') : wanted / 1000);
  const { change } = fewestChanges(figures, allowed, wanted === undefined ? undefined : wanted / 1000);
  const to = numberIn(reckoned, 'bring-to');
  const [least, most] = [Math.min(...figures, to), Math.max(...figures, to)];
  const foot = least - Math.max((most - least) * 0.6, most * 1e-3);
  const [top, base, left] = [60, 280, 60];
  const step = Math.min(90, 520 / figures.length);
  const width = Math.max(420, left + step * figures.length + 40);
  const y = (value: number) => base - ((value - foot) / (most - foot)) * (base - top);
  return sheetOf(
    { width, height: 350 },
    {
      title: 'What each pump delivers',
      description: `Spread ${lettered(reckoned, 'spread')} of the mean, ${lettered(reckoned, 'verdict')}; to touch: ${lettered(reckoned, 'touch')}.`,
    },
    ...pumps.value.flatMap(({ name }, index) => {
      const value = figures[index] ?? 0;
      const touched = change.includes(index);
      const x = left + step * index;
      const bar = step * 0.56;
      const by = numberOr(reckoned, `${name}.change`) ?? 0;
      return [
        svg('rect', {
          x: round(x),
          y: round(y(value)),
          width: round(bar),
          height: round(base - y(value)),
          fill: pens.paper,
          stroke: touched ? pens.accent : pens.ink,
          'stroke-width': touched ? 3.4 : 1.8,
        }),
        lettering(figure(value, 3), x + bar / 2, base - 10, { 'text-anchor': 'middle', 'font-size': 13 }),
        lettering(name, x + bar / 2, base + 20, { 'text-anchor': 'middle', 'font-weight': 700 }),
        ...(touched
          ? [
              lettering(by > 0 ? 'more' : 'less', x + bar / 2, base + 40, {
                'text-anchor': 'middle',
                'font-size': 13,
              }),
            ]
          : []),
      ];
    }),
    line(left - 14, base, width - 20, base, { 'stroke-width': 1.6 }),
    line(left - 14, y(to), width - 20, y(to), { stroke: pens.accent, 'stroke-dasharray': '6 4' }),
    lettering(`spread ${lettered(reckoned, 'spread')}, ${lettered(reckoned, 'verdict')}`, left - 14, 24, {
      'font-weight': 700,
    }),
    lettering(`dashed: bring to ${figure(to, 3)} cm³ · bars do not start at 0`, left - 14, 338, {
      'font-size': 12,
      fill: pens.faint,
    }),
  );
};

export const oilPressureCheckPicture: Picture = (_, reckoned) => {
  const [pressure, floor] = [numberIn(reckoned, 'pressure'), numberIn(reckoned, 'rough-floor')];
  const least = numberOr(reckoned, 'least');
  return numberLine({
    title: 'Oil pressure, engine hot',
    description: `Read ${lettered(reckoned, 'pressure')}${least === undefined ? '' : `, least ${lettered(reckoned, 'least')}: ${lettered(reckoned, 'verdict')}`}; rough floor ${lettered(reckoned, 'rough-floor')}.`,
    unit: 'bar',
    stretches: [
      least === undefined
        ? { from: 0, to: floor, words: 'below the rough floor', hatch: 'wide' }
        : { from: 0, to: least, words: 'below the manual’s least', hatch: 'close' },
    ],
    marks: [
      { at: floor, words: `rough floor ${figure(floor, 2)}` },
      ...(least === undefined ? [] : [{ at: least, words: `least ${figure(least, 2)}` }]),
      {
        at: pressure,
        words: `read ${figure(pressure, 2)}`,
        strong: true,
        spread: 1.96 * (reckoned.results.pressure?.u ?? 0),
      },
    ],
  });
};
