/** @module Governed speed over load: the droop found and wanted, the class's room, the swing at one load. */
import { quantityOf } from '../../reckon/reckoning.ts';
import { chart } from '../chart.ts';
import { figure } from '../number-line.ts';
import { lettered, numberIn, numberOr, type Picture } from './picture.ts';

/** What would be written beside the end of a line would lie on it: it stands below the axis. */
const load = (fullLoad: number, set?: number) => ({
  words: `load, %; at full load ${figure(fullLoad, 1)} rpm${set === undefined ? '' : `; dashed: ${figure(set, 1)} rpm set without load`}`,
  from: 0,
  to: 110,
});

/** Speeds with room about them, for an axis. */
const around = (speeds: readonly number[]) => {
  const [low, high] = [Math.min(...speeds), Math.max(...speeds)];
  const room = Math.max(0.01 * high, 0.3 * (high - low));
  return { words: 'speed, rpm', from: low - room, to: high + room };
};

export const droopPicture: Picture = (given, reckoned) => {
  const [noLoad, fullLoad] = [quantityOf(given, 'no-load').value, quantityOf(given, 'full-load').value];
  const wanted = numberOr(reckoned, 'no-load-for-wanted');
  return chart({
    title: 'Speed over load',
    description: `From ${figure(noLoad, 1)} rpm without load to ${figure(fullLoad, 1)} rpm at full load: droop ${lettered(reckoned, 'droop')}.`,
    x: load(fullLoad, wanted),
    y: around([noLoad, fullLoad, ...(wanted === undefined ? [] : [wanted])]),
    curves: [
      ...(wanted === undefined
        ? []
        : [
            {
              points: [
                [0, wanted],
                [100, fullLoad],
              ] as const,
              stroke: 'dashed' as const,
            },
          ]),
      {
        points: [
          [0, noLoad],
          [100, fullLoad],
        ],
        stroke: 'accent',
      },
    ],
    marks: [
      { at: [0, noLoad], words: `no load ${figure(noLoad, 1)} rpm` },
      { at: [100, fullLoad], words: '', led: true },
    ],
  });
};

export const governorBandPicture: Picture = (given, reckoned) => {
  const [rated, noLoad, fullLoad, highest, lowest] = [
    'rated',
    'no-load',
    'full-load',
    'highest',
    'lowest',
  ].map((key) => quantityOf(given, key).value) as [number, number, number, number, number];
  const toSet = numberIn(reckoned, 'no-load-to-set');
  const allowed = rated * (1 + numberIn(reckoned, 'droop-allowed') / 100);
  // The load at which the swing was watched is not asked for: it is drawn where its middle lies on the line found.
  const share = noLoad === fullLoad ? 0.5 : (noLoad - (highest + lowest) / 2) / (noLoad - fullLoad);
  const at = 100 * Math.min(0.9, Math.max(0.1, share));
  return chart({
    title: 'Speed over load, and the room that the class leaves',
    description: `Droop ${lettered(reckoned, 'droop')}, ${lettered(reckoned, 'droop-verdict')}; band ${lettered(reckoned, 'band')}, ${lettered(reckoned, 'band-verdict')}.`,
    x: load(fullLoad, Math.abs(toSet - noLoad) > 1e-6 ? toSet : undefined),
    y: around([rated, noLoad, fullLoad, highest, lowest, allowed, toSet]),
    bands: [{ along: 'y', from: rated, to: allowed, words: 'droop that the class allows' }],
    curves: [
      {
        points: [
          [0, toSet],
          [100, rated],
        ],
        stroke: 'dashed',
      },
      {
        points: [
          [0, noLoad],
          [100, fullLoad],
        ],
        stroke: 'accent',
      },
      {
        points: [
          [at, lowest],
          [at, highest],
        ],
        stroke: 'plain',
      },
    ],
    marks: [
      { at: [0, noLoad], words: `found ${figure(noLoad, 1)} rpm` },
      { at: [100, fullLoad], words: '', led: true },
      { at: [at, highest], words: `swing ${lettered(reckoned, 'band')}` },
    ],
  });
};
