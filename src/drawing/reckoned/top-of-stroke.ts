/** @module What lies at the top of the stroke: bump clearances against their limits, the room left, the middle of equal drop. */
import { readPairs } from '../../reckon/top-dead-centre.ts';
import { chart } from '../chart.ts';
import { boxed, hatched, lettering, line, pens } from '../ink.ts';
import { figure, numberLine } from '../number-line.ts';
import { sheetOf } from '../svg.ts';
import { lettered, numberIn, numberOr, type Picture } from './picture.ts';

const bumpsOn =
  (title: string): Picture =>
  ({ quantities }, reckoned) => {
    const bumps = Object.keys(reckoned.results).flatMap((key) => {
      const [, cylinder] = /^cylinder\.(\d+)\.bump$/.exec(key) ?? [];
      const value = numberOr(reckoned, key);
      return cylinder === undefined || value === undefined ? [] : [{ cylinder, value }];
    });
    const { least, greatest } = quantities;
    const all = bumps.map(({ value }) => value);
    return numberLine({
      title,
      description:
        bumps.map(({ cylinder, value }) => `cylinder ${cylinder} ${figure(value)} mm`).join(', ') ||
        'none fits',
      unit: 'mm',
      stretches:
        least === undefined && greatest === undefined
          ? []
          : [
              {
                from: least?.value ?? Math.min(...all, greatest?.value ?? 0),
                to: greatest?.value ?? Math.max(...all, least?.value ?? 0),
                words: 'within limits',
                hatch: 'wide',
              },
            ],
      marks: [
        { at: 0, words: 'strikes' },
        ...bumps.map(({ cylinder, value }) => ({
          at: value,
          words: `${cylinder}: ${figure(value)}`,
          strong: true,
        })),
      ],
    });
  };

export const bumpClearancePicture = bumpsOn('Bump clearance of each cylinder');
export const gasketGradePicture = bumpsOn('Bump clearance of each cylinder with this gasket');

export const compressionRatioPicture: Picture = ({ quantities }, reckoned) => {
  const [bore, stroke, bump] = ['bore', 'stroke', 'bump'].map((key) => quantities[key]?.value ?? 0) as [
    number,
    number,
    number,
  ];
  const scale = Math.min(230 / (stroke + bump), 200 / bore);
  const [left, top] = [70, 60];
  // The bump is too thin to be seen at the scale of the stroke.
  const gap = Math.max(10, bump * scale);
  const cylinder = { x: left, y: top, width: bore * scale, height: gap + stroke * scale };
  return sheetOf(
    { width: 560, height: top + cylinder.height + 50 },
    {
      title: 'The cylinder at the top and at the bottom of the stroke',
      description: `Compression ratio ${lettered(reckoned, 'ratio')}; swept ${lettered(reckoned, 'swept')}, left ${lettered(reckoned, 'left')}.`,
    },
    boxed(cylinder, { fill: pens.paper, stroke: pens.ink, 'stroke-width': 2.4 }),
    hatched({ ...cylinder, height: gap }, 6, 'falling'),
    line(left, top + gap, left + cylinder.width, top + gap, { stroke: pens.accent, 'stroke-width': 2.4 }),
    lettering('top', left - 10, top + gap + 5, { 'text-anchor': 'end', 'font-size': 13 }),
    lettering('bottom', left - 10, top + cylinder.height + 5, { 'text-anchor': 'end', 'font-size': 13 }),
    ...(
      [
        ['compression ratio', 'ratio'],
        ['swept', 'swept'],
        ['left above the piston', 'left'],
        ['of that in the bump', 'in-the-bump'],
      ] as const
    ).flatMap(([words, key], at) => [
      lettering(words, left + cylinder.width + 40, top + 14 + at * 56, { fill: pens.faint, 'font-size': 13 }),
      lettering(lettered(reckoned, key), left + cylinder.width + 40, top + 38 + at * 56, {
        'font-weight': 700,
        'font-size': 18,
      }),
    ]),
  );
};

export const topDeadCentrePicture: Picture = ({ texts }, reckoned) => {
  const top = numberIn(reckoned, 'top');
  const read = readPairs(texts.pairs ?? '');
  const pairs = read.kind === 'refused' ? [] : read.value;
  /** Degrees from the top found, the shorter way round. */
  const off = (angle: number) => ((((angle - top) % 360) + 540) % 360) - 180;
  const deepest = Math.max(...pairs.map(({ drop }) => drop));
  const reach =
    1.15 * Math.max(...pairs.flatMap(({ before, after }) => [Math.abs(off(before)), Math.abs(off(after))]));
  return chart({
    title: 'Equal drops on both sides of the top',
    description: `Top dead centre at ${lettered(reckoned, 'top')} on the protractor; the drops agree to ${lettered(reckoned, 'spread')}.`,
    x: { words: 'degrees from the top found', from: -reach, to: reach },
    y: { words: 'below the top, mm', from: 0, to: deepest * 1.1 },
    curves: pairs.map(({ drop, before, after }) => ({
      points: [
        [off(before), drop],
        [off(after), drop],
      ] as const,
      stroke: 'dashed' as const,
    })),
    marks: [
      ...pairs.flatMap(({ drop, before, after }) => [
        { at: [off(before), drop] as const, words: '' },
        { at: [off(after), drop] as const, words: '' },
      ]),
      { at: [0, 0], words: `top at ${lettered(reckoned, 'top')}` },
    ],
  });
};

export const buttonSwapPicture: Picture = ({ quantities }, reckoned) => {
  const needed = numberIn(reckoned, 'needed');
  const chosen = numberOr(reckoned, 'thickness');
  return numberLine({
    title: 'The button that is needed',
    description: `Needed ${lettered(reckoned, 'needed')}${chosen === undefined ? '' : `; nearest on offer ${lettered(reckoned, 'thickness')}`}.`,
    unit: 'mm',
    marks: [
      { at: quantities.old?.value ?? needed, words: `old ${figure(quantities.old?.value ?? 0)}` },
      { at: needed, words: `needed ${figure(needed)}`, strong: true },
      ...(chosen === undefined
        ? []
        : [{ at: chosen, words: `${reckoned.results.button?.value ?? ''}: ${figure(chosen)}` }]),
    ],
  });
};
