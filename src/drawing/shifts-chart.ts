/** @module Fitters side by side as bars along the hours: a row a fitter, a bar an operation. */
import { durationText } from '../quantity/moment.ts';
import type { Shift } from '../work/side-by-side.ts';
import { boxed, lettering, line, pens } from './ink.ts';
import { round, type SvgNode, sheetOf } from './svg.ts';

const width = 720;
const left = 70;
const rowHeight = 46;
const top = 16;
/** Hours between two lines of the scale, so that a long job has no more of them than a short one. */
const everyHours = (minutes: number): number => Math.max(1, Math.ceil(minutes / 60 / 12));

/** @param minutes  when all is done */
export const shiftsChart = (shifts: readonly Shift[], fitters: number, minutes: number): SvgNode => {
  const across = (at: number): number => left + ((width - left - 16) * at) / Math.max(1, minutes);
  const foot = top + fitters * rowHeight;
  const rows = Array.from({ length: fitters }, (_, at) => at + 1);
  const every = everyHours(minutes) * 60;
  const hours = Array.from({ length: Math.floor(minutes / every) + 1 }, (_, at) => at * every);
  const numbers = new Map(shifts.map((shift, at) => [shift, at + 1]));
  return sheetOf(
    { width, height: foot + 34 },
    {
      title: `Who does what when: ${fitters} fitters, done after ${durationText(minutes)}`,
      description: shifts
        .map(
          ({ operation, from, to, fitters: who }) =>
            `${durationText(from)} to ${durationText(to)}, fitter ${who.join(' and ')}: ${operation.title}`,
        )
        .join('; '),
    },
    ...hours.flatMap((at) => [
      line(across(at), top, across(at), foot, { stroke: pens.faint, 'stroke-width': 0.8 }),
      lettering(`${at / 60} h`, across(at), foot + 22, { 'text-anchor': 'middle', 'font-size': 14 }),
    ]),
    ...rows.map((fitter) =>
      lettering(`fitter ${fitter}`, 4, top + (fitter - 0.5) * rowHeight + 5, { 'font-size': 14 }),
    ),
    ...shifts.flatMap((shift) =>
      shift.fitters.flatMap((fitter) => {
        const box = {
          x: across(shift.from),
          y: top + (fitter - 1) * rowHeight + 5,
          width: across(shift.to) - across(shift.from),
          height: rowHeight - 10,
        };
        return [
          boxed(box, { fill: pens.paper, stroke: pens.ink, 'stroke-width': 1.6 }),
          lettering(String(numbers.get(shift) ?? ''), round(box.x + box.width / 2), box.y + 23, {
            'text-anchor': 'middle',
            'font-size': 14,
          }),
        ];
      }),
    ),
  );
};
