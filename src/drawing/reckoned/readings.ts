/** @module Readings as points: repeats of one size with its interval, repeats of several sizes about their means. */
import { chart } from '../chart.ts';
import { figure, numberLine } from '../number-line.ts';
import { lettered, numberIn, type Picture, tableIn } from './picture.ts';

export const sizePicture: Picture = (given, reckoned) => {
  const readings = tableIn(given, 'readings').flat();
  const size = numberIn(reckoned, 'size');
  return numberLine({
    title: 'The size and the readings that it comes from',
    description: `${readings.length} readings come to ${lettered(reckoned, 'size')}, known to ${lettered(reckoned, 'known-to')} 95 times in 100.`,
    unit: 'mm',
    marks: [
      ...[...new Set(readings)].map((at) => ({ at, words: figure(at) })),
      {
        at: size,
        words: `size ${lettered(reckoned, 'size')}`,
        strong: true,
        spread: numberIn(reckoned, 'known-to'),
      },
    ],
  });
};

export const pooledPicture: Picture = (given, reckoned) => {
  const groups = tableIn(given, 'readings').map((row) => {
    const mean = row.reduce((sum, each) => sum + each, 0) / Math.max(1, row.length);
    return row.map((each) => (each - mean) * 1000);
  });
  const deviation = numberIn(reckoned, 'repeatability') * 1000;
  const reach = 1.15 * Math.max(2 * deviation, ...groups.flat().map(Math.abs));
  return chart({
    title: 'Repeats about the mean of their size',
    description: `Standard deviation ${lettered(reckoned, 'repeatability')} from ${lettered(reckoned, 'freedom')} degrees of freedom.`,
    x: { words: 'size, in the order given', from: 0, to: groups.length + 1 },
    y: { words: 'off the mean, µm', from: -reach, to: reach },
    bands: [
      {
        along: 'y',
        from: -deviation,
        to: deviation,
        words: `± ${figure(deviation, 2)} µm, one standard deviation`,
      },
    ],
    curves: groups.flatMap((group, at) =>
      group.map((off) => ({
        points: [
          [at + 0.75, off],
          [at + 1.25, off],
        ] as const,
        stroke: 'accent' as const,
      })),
    ),
  });
};
