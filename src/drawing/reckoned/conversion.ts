/** @module A figure on two scales side by side, one in each unit. */
import { unitGiven } from '../../reckon/given.ts';
import { ticksOf } from '../chart-field.ts';
import { lettering, line, pens } from '../ink.ts';
import { sheetOf } from '../svg.ts';
import { lettered, numberIn, type Picture } from './picture.ts';

const width = 560;
const left = 40;
const right = width - 40;

export const conversionPicture: Picture = ({ texts }, reckoned) => {
  const typed = texts.value ?? '';
  const unit = unitGiven(typed);
  const there = numberIn(reckoned, 'value');
  const here = Number.parseFloat(typed.replace(',', '.'));
  const end = Math.abs(there) * 1.25 || 1;
  // A scale through nought on both sides needs no law of the units: it is drawn where one is a multiple of the other.
  const proportional = Number.isFinite(here) && here !== 0 && !/[CF]$/.test(unit) && there !== 0;
  const x = (value: number) => left + (Math.abs(value) / end) * (right - left);
  const factor = proportional ? Math.abs(there / here) : 1;
  return sheetOf(
    { width, height: 190 },
    { title: 'The same amount in both units', description: `${typed} is ${lettered(reckoned, 'value')}.` },
    lettering(typed, x(there), 34, { 'text-anchor': 'middle', 'font-weight': 700, 'font-size': 18 }),
    lettering(lettered(reckoned, 'value'), x(there), 168, {
      'text-anchor': 'middle',
      'font-weight': 700,
      'font-size': 18,
      fill: pens.accent,
    }),
    line(x(there), 44, x(there), 146, { stroke: pens.accent, 'stroke-width': 2.4 }),
    ...(proportional
      ? [
          line(left, 94, right, 94, { 'stroke-width': 1.6 }),
          ...ticksOf(0, end / factor).flatMap(({ at, text }) => [
            line(x(at * factor), 94, x(at * factor), 82),
            lettering(text, x(at * factor), 74, { 'text-anchor': 'middle', 'font-size': 12 }),
          ]),
          ...ticksOf(0, end).flatMap(({ at, text }) => [
            line(x(at), 94, x(at), 106),
            lettering(text, x(at), 122, { 'text-anchor': 'middle', 'font-size': 12 }),
          ]),
        ]
      : []),
  );
};
