/** @module A hub for its shaft: the temperatures on one line, the seconds as it cools, the joint in section when cold. */
import { gripping } from '../../reckon/grip-time.ts';
import { chart } from '../chart.ts';
import { boxed, hatched, lettering, line, pens } from '../ink.ts';
import { figure, numberLine } from '../number-line.ts';
import { sheetOf } from '../svg.ts';
import { lettered, numberIn, numberOr, type Picture } from './picture.ts';

export const shrinkFitPicture: Picture = (_, reckoned) => {
  const needed = numberIn(reckoned, 'slips-on-at');
  const heatTo = numberIn(reckoned, 'heat-to');
  const limit = numberOr(reckoned, 'hottest-allowed');
  return numberLine({
    title: 'Temperatures of the hub',
    description: `Slips on at ${lettered(reckoned, 'slips-on-at')}; heat it to ${lettered(reckoned, 'heat-to')}${limit === undefined ? '' : `; at most ${limit} °C allowed`}.`,
    unit: '°C',
    stretches: [
      { from: 20, to: needed, words: 'too cold to slip on', hatch: 'none' },
      { from: needed, to: heatTo, words: 'uncertain', hatch: 'wide' },
      ...(limit === undefined
        ? []
        : [{ from: limit, to: Math.max(limit, heatTo) + 40, words: 'softens', hatch: 'close' } as const]),
    ],
    marks: [
      { at: 20, words: '20' },
      { at: needed, words: `slips on ${figure(needed, 0)}` },
      { at: heatTo, words: `heat to ${figure(heatTo, 0)}`, strong: true },
      ...(limit === undefined ? [] : [{ at: limit, words: `hottest allowed ${figure(limit, 0)}` }]),
    ],
  });
};

export const gripTimePicture: Picture = (given, reckoned) => {
  const found = gripping(given);
  if (found.kind === 'refused') throw new Error(found.refusal.what);
  const { carried, on, gripsAt } = found.value;
  const [slow, quick] = [carried.at(-1)?.seconds ?? 0, on.at(-1)?.seconds ?? 0];
  const from = carried[0]?.celsius ?? gripsAt;
  // Carried, a hub may last many times longer than on its shaft: what decides is shown.
  const to = Math.min(slow, Math.max(4 * quick, 10));
  const points = (curve: typeof carried) =>
    curve.filter(({ seconds }) => seconds <= to).map(({ seconds, celsius }) => [seconds, celsius] as const);
  return chart({
    title: 'The hub as it cools',
    description: `On the shaft it grips after ${lettered(reckoned, 'seconds-on-shaft')}; carried, after ${lettered(reckoned, 'seconds-carried')}.`,
    x: { words: 'seconds', from: 0, to },
    y: { words: 'hub, °C', from: Math.min(gripsAt, 20), to: from },
    curves: [
      { points: points(carried), words: `carried: ${lettered(reckoned, 'seconds-carried')}` },
      { points: points(on), stroke: 'accent' },
    ],
    bands: [{ along: 'y', from: Math.min(gripsAt, 20), to: gripsAt, words: 'grips' }],
    marks: [
      { at: [quick, gripsAt], words: `on the shaft: ${lettered(reckoned, 'seconds-on-shaft')}`, led: true },
    ],
  });
};

const width = 560;
const height = 330;

export const fitPressurePicture: Picture = ({ quantities }, reckoned) => {
  const [shaft, outside, hole, length] = ['shaft', 'outside', 'hole', 'length'].map(
    (key) => quantities[key]?.value ?? 0,
  ) as [number, number, number, number];
  const scale = Math.min(230 / outside, 170 / length);
  const [cy, left] = [height / 2, 120];
  const [d, o, h, l] = [shaft * scale, outside * scale, hole * scale, length * scale];
  const halves = [-1, 1].map((side) => ({
    hub: { x: left, y: side < 0 ? cy - o / 2 : cy + d / 2, width: l, height: (o - d) / 2 },
    shaft: { x: left - 50, y: side < 0 ? cy - d / 2 : cy + h / 2, width: l + 100, height: (d - h) / 2 },
  }));
  const x = left + l + 70;
  return sheetOf(
    { width, height },
    {
      title: 'The joint in section, cold',
      description: `Pressure ${lettered(reckoned, 'pressure')}; stress around the hub's bore ${lettered(reckoned, 'hub-stress')}; holds ${lettered(reckoned, 'torque')}.`,
    },
    ...halves.flatMap((half) => [
      hatched(half.hub, 8, 'rising'),
      boxed(half.hub, { fill: 'none', stroke: pens.ink, 'stroke-width': 1.8 }),
      hatched(half.shaft, 8, 'falling', pens.faint),
      boxed(half.shaft, { fill: 'none', stroke: pens.ink, 'stroke-width': 1.4 }),
      line(
        half.hub.x,
        half.hub.y + (half.hub.y < cy ? half.hub.height : 0),
        half.hub.x + l,
        half.hub.y + (half.hub.y < cy ? half.hub.height : 0),
        {
          stroke: pens.accent,
          'stroke-width': 3.4,
        },
      ),
    ]),
    line(left - 70, cy, left + l + 60, cy, { stroke: pens.faint, 'stroke-dasharray': '14 4 3 4' }),
    ...(
      [
        ['pressure in the joint', 'pressure'],
        ["around the hub's bore", 'hub-stress'],
        ['holds a torque of', 'torque'],
        ['pushed off by', 'push-off'],
      ] as const
    ).flatMap(([words, key], at) => [
      lettering(words, x, 54 + at * 64, { fill: pens.faint, 'font-size': 13 }),
      lettering(lettered(reckoned, key), x, 78 + at * 64, { 'font-weight': 700, 'font-size': 18 }),
    ]),
  );
};
