/** @module Valve gear and timing: events as they are and as a tooth out leaves them, valves by position, lobes of a cam. */
import { eventsDriven } from '../../reckon/tooth-shift.ts';
import { readFiringOrder, valvePositions } from '../../reckon/valve-clearance-order.ts';
import { chart } from '../chart.ts';
import { boxed, hatched, lettering, line, pens } from '../ink.ts';
import { sheetOf } from '../svg.ts';
import { lettered, numberIn, type Picture, tableIn } from './picture.ts';

const width = 620;

export const toothShiftPicture: Picture = (given, reckoned) => {
  const events = eventsDriven(given);
  const list = events.kind === 'refused' ? [] : events.value;
  const shift = numberIn(reckoned, 'shift');
  const angles = list.flatMap(({ at }) => [at, at - shift]);
  const [from, to] = [Math.min(...angles), Math.max(...angles)];
  const x = (angle: number) => 170 + ((angle - from) / Math.max(1, to - from)) * 400;
  return sheetOf(
    { width, height: 60 + list.length * 40 },
    {
      title: 'Each event as it should be, and as it then is',
      description: list
        .map(({ name, at }) => `${name}: ${at} degrees, then ${Number((at - shift).toFixed(2))}`)
        .join('; '),
    },
    lettering(`all by ${lettered(reckoned, 'shift')} of crank`, 170, 24, { 'font-weight': 700 }),
    ...list.flatMap(({ name, at }, index) => {
      const y = 58 + index * 40;
      return [
        lettering(name.replaceAll('-', ' '), 158, y + 5, { 'text-anchor': 'end' }),
        line(170, y, 570, y, { stroke: pens.faint, 'stroke-width': 0.6 }),
        line(x(at), y - 11, x(at), y + 11, { 'stroke-width': 3 }),
        line(x(at - shift), y - 11, x(at - shift), y + 11, {
          'stroke-width': 3,
          stroke: pens.accent,
          'stroke-dasharray': '4 3',
        }),
        line(x(at), y, x(at - shift), y, { stroke: pens.accent, 'stroke-width': 2 }),
      ];
    }),
  );
};

export const valveClearancePicture: Picture = (given) => {
  const positions = valvePositions(given);
  const order = readFiringOrder(given.texts['firing-order'] ?? '');
  if (positions.kind === 'refused' || order.kind === 'refused') throw new Error('no positions to draw');
  const cylinders = order.value.toSorted((a, b) => a - b);
  const cell = Math.min(90, 480 / cylinders.length);
  const x = (cylinder: number) => 110 + (cylinder - 1) * cell;
  return sheetOf(
    { width: Math.max(width, 130 + cylinders.length * cell), height: 70 + positions.value.length * 70 },
    {
      title: 'Valves to set at each position',
      description: positions.value
        .map(({ cylinder, valves }) => `cylinder ${cylinder} at its firing top: ${valves.join(', ')}`)
        .join('; '),
    },
    ...cylinders.map((cylinder) =>
      lettering(String(cylinder), x(cylinder) + cell / 2, 28, {
        'text-anchor': 'middle',
        'font-weight': 700,
      }),
    ),
    lettering('cylinder', 98, 28, { 'text-anchor': 'end', fill: pens.faint }),
    ...positions.value.flatMap(({ cylinder: at, valves }, row) => {
      const y = 44 + row * 70;
      return [
        lettering(`${at} at its top`, 98, y + 34, { 'text-anchor': 'end' }),
        ...cylinders.flatMap((cylinder) =>
          (['inlet', 'exhaust'] as const).flatMap((valve, side) => {
            const box = { x: x(cylinder) + 3 + (side * cell) / 2, y, width: cell / 2 - 6, height: 56 };
            const here = valves.includes(`${cylinder} ${valve}`);
            return [
              boxed(box, {
                fill: pens.paper,
                stroke: here ? pens.accent : pens.faint,
                'stroke-width': here ? 2.6 : 1,
              }),
              ...(here ? [hatched(box, 7, valve === 'inlet' ? 'rising' : 'falling')] : []),
              lettering(valve === 'inlet' ? 'in' : 'ex', box.x + box.width / 2, y + 34, {
                'text-anchor': 'middle',
                'font-size': 12,
                stroke: pens.paper,
                'stroke-width': 3,
                'paint-order': 'stroke',
              }),
            ];
          }),
        ),
      ];
    }),
    lettering('hatched: set here', 110, 64 + positions.value.length * 70, {
      'font-size': 12,
      fill: pens.faint,
    }),
  );
};

export const camLiftPicture: Picture = (given, reckoned) => {
  const lobes = tableIn(given, 'lifts');
  const degrees = (key: string) => ((given.quantities[key]?.value ?? 0) * 180) / Math.PI;
  const [from, step] = [degrees('from'), degrees('step')];
  const longest = Math.max(...lobes.map((lifts) => lifts.length));
  return chart({
    title: 'Lift of each lobe',
    description: lobes
      .map((_, at) => {
        const behind = reckoned.results[`lobe.${at + 1}.behind`]?.value;
        const lift = `lobe ${at + 1}: ${lettered(reckoned, `lobe.${at + 1}.lift`)}`;
        return behind === undefined ? lift : `${lift}, behind ${behind}`;
      })
      .join(', '),
    x: { words: 'angle, degrees', from, to: from + step * (longest - 1) },
    y: { words: 'lift, mm', from: 0, to: 1.1 * Math.max(...lobes.flat()) },
    curves: lobes.map((lifts, at) => ({
      points: lifts.map((lift, index) => [from + index * step, lift] as const),
      stroke: at === 0 ? ('plain' as const) : at % 2 === 1 ? ('accent' as const) : ('dashed' as const),
    })),
    marks: lobes.flatMap((lifts, at) => {
      const of = (key: string) => numberIn(reckoned, `lobe.${at + 1}.${key}`);
      const { value: behind = 'nowhere' } = reckoned.results[`lobe.${at + 1}.behind`] ?? {};
      const top = { at: [of('middle'), of('lift')] as const, words: String(at + 1) };
      if (behind === 'nowhere') return [top];
      const surest = of('surest-at');
      const lift = lifts[Math.round((surest - from) / step)] ?? 0;
      return [
        top,
        {
          at: [surest, lift] as const,
          words: `${at + 1} behind by ${lettered(reckoned, `lobe.${at + 1}.surest-fall`)}`,
        },
      ];
    }),
  });
};
