/** @module Tightening: the joint with its bolts numbered in order, the tension between its limits, the wrench with its adapter. */
import { orderGiven } from '../../reckon/tighten-order.ts';
import { lettering, line, pens } from '../ink.ts';
import { figure, numberLine } from '../number-line.ts';
import { round, sheetOf, svg } from '../svg.ts';
import { lettered, numberIn, type Picture } from './picture.ts';

const width = 600;

export const tightenOrderPicture: Picture = (given, reckoned) => {
  const order = orderGiven(given);
  if (order.kind === 'refused') throw new Error(order.refusal.what);
  const [xs, ys] = [order.value.map(({ x }) => x), order.value.map(({ y }) => y)];
  const [left, right, low, high] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const scale = Math.min(480 / Math.max(right - left, 1), 300 / Math.max(high - low, 1));
  const height = (high - low) * scale + 130;
  const x = (at: number) => 60 + (480 - (right - left) * scale) / 2 + (at - left) * scale;
  const y = (at: number) => height - 65 - (at - low) * scale;
  const path = order.value.map((bolt) => `${round(x(bolt.x))} ${round(y(bolt.y))}`).join('L');
  return sheetOf(
    { width, height },
    {
      title: 'The bolts in the order in which they are tightened',
      description: lettered(reckoned, 'tighten'),
    },
    svg('path', { d: `M${path}`, fill: 'none', stroke: pens.faint, 'stroke-dasharray': '5 4' }),
    ...order.value.flatMap((bolt, at) => [
      svg('circle', {
        cx: round(x(bolt.x)),
        cy: round(y(bolt.y)),
        r: 19,
        fill: pens.paper,
        stroke: at === 0 ? pens.accent : pens.ink,
        'stroke-width': at === 0 ? 4 : 2,
      }),
      lettering(String(at + 1), x(bolt.x), y(bolt.y) + 6, {
        'text-anchor': 'middle',
        'font-weight': 700,
        'font-size': 17,
      }),
      lettering(bolt.name, x(bolt.x) + 22, y(bolt.y) + 24, { 'font-size': 12, fill: pens.faint }),
    ]),
    lettering('large: turn in the order · small: name of the bolt', 12, height - 8, {
      'font-size': 12,
      fill: pens.faint,
    }),
  );
};

export const preloadPicture: Picture = (_, reckoned) => {
  const [least, greatest, proof, bears] = ['least', 'greatest', 'proof-load', 'bears-with-twist'].map((key) =>
    numberIn(reckoned, key),
  ) as [number, number, number, number];
  return numberLine({
    title: 'Tension in the bolt against what it bears',
    description: `From ${lettered(reckoned, 'least')} to ${lettered(reckoned, 'greatest')}; proof load ${lettered(reckoned, 'proof-load')}.`,
    unit: 'kN',
    stretches: [
      { from: least, to: greatest, words: 'tension that this torque may leave', hatch: 'wide' },
      { from: proof, to: Math.max(proof, greatest) * 1.08, words: 'stretches for good', hatch: 'close' },
    ],
    marks: [
      { at: 0, words: '0' },
      { at: least, words: `least ${figure(least, 1)}`, strong: true },
      { at: greatest, words: `greatest ${figure(greatest, 1)}`, strong: true },
      { at: proof, words: `proof load ${figure(proof, 1)}` },
      { at: bears, words: `nine tenths of yield ${figure(bears, 1)}` },
    ],
  });
};

export const torqueAdapterPicture: Picture = ({ quantities }, reckoned) => {
  const [wrench, adapter, angle] = ['wrench', 'adapter', 'angle'].map(
    (key) => quantities[key]?.value ?? 0,
  ) as [number, number, number];
  const scale = 360 / (wrench + adapter);
  const [squareX, y] = [150, 150];
  const boltX = squareX - adapter * scale * Math.cos(angle);
  const boltY = y - adapter * scale * Math.sin(angle);
  const hand = squareX + wrench * scale;
  return sheetOf(
    { width, height: 260 },
    {
      title: 'The wrench with its adapter',
      description: `Set it to ${lettered(reckoned, 'setting')}.`,
    },
    line(squareX, y, hand, y, { 'stroke-width': 12 }),
    line(squareX, y, boltX, boltY, { 'stroke-width': 9, stroke: pens.faint }),
    svg('circle', {
      cx: round(boltX),
      cy: round(boltY),
      r: 16,
      fill: pens.paper,
      stroke: pens.accent,
      'stroke-width': 4,
    }),
    svg('rect', {
      x: squareX - 8,
      y: y - 8,
      width: 16,
      height: 16,
      fill: pens.paper,
      stroke: pens.ink,
      'stroke-width': 2,
    }),
    line(hand, y, hand, y + 60, { stroke: pens.accent, 'stroke-width': 3 }),
    lettering('pull', hand + 8, y + 58, { 'font-size': 13 }),
    lettering(`wrench ${figure(wrench, 1)} mm`, (squareX + hand) / 2, y + 34, { 'text-anchor': 'middle' }),
    lettering(`adapter ${figure(adapter, 1)} mm`, Math.max(70, (squareX + boltX) / 2), y + 34, {
      'text-anchor': 'middle',
    }),
    lettering(`set to ${lettered(reckoned, 'setting')}`, width / 2, 40, {
      'text-anchor': 'middle',
      'font-weight': 700,
      'font-size': 20,
    }),
    lettering(`without the sum the bolt would get ${lettered(reckoned, 'if-forgotten')}`, width / 2, 240, {
      'text-anchor': 'middle',
      fill: pens.faint,
    }),
  );
};
