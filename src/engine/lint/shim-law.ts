/** @module Rule: rate, sign and place of the shims agree with one another and with the cam. */
import { type Radians, toDegrees } from '../../quantity/brand.ts';
import { formatFigure } from '../../quantity/figure.ts';
import { camRate } from '../cam-law.ts';
import type { EngineType } from '../engine-type.ts';
import { doubtful, type Finding, wrong } from '../finding.ts';
import type { PumpTiming } from '../pump-timing.ts';

/** A rate in a manual has two or three digits, a table of lifts its hundredths: common practice, no source. */
const furthest = 0.05;

const rateText = (rate: Radians): string => `${formatFigure(toDegrees(rate), 2)} deg/mm`;

const byTheCam = ({ cam, rateGiven }: PumpTiming): readonly Finding[] => {
  if (cam === undefined) return [];
  const rated = camRate(cam);
  if (rated.kind === 'refused')
    return [wrong(['pump-timing', 'cam'], rated.refusal.what, rated.refusal.remedy)];
  if (rateGiven === undefined || Math.abs(rateGiven / rated.value.rate - 1) <= furthest) return [];
  const turned = [2, 0.5].some((factor) => Math.abs((rateGiven * factor) / rated.value.rate - 1) <= furthest);
  const told =
    cam.crankPerAngle === 2
      ? 'one degree of the camshaft counted as two of the crank'
      : 'one degree of its angles counted as one of the crank';
  return [
    wrong(
      ['pump-timing', 'rate'],
      `a rate of ${rateText(rateGiven)} is given, and the cam comes to ${rateText(rated.value.rate)}, ${told}`,
      turned
        ? 'the two differ twofold: look whether rate and angles are of the crank or of a camshaft at half its speed'
        : 'compare rate, table and timing point with the manual, and delete the one that is wrong',
    ),
  ];
};

const usualSign = {
  'under the pump flange': 'retards',
  'on the pad': 'retards',
  'under the tappet button': 'advances',
} as const;
const because = {
  'under the pump flange':
    'shims there lift the pump away from its tappet, so that the plunger closes its port later',
  'on the pad': 'shims there lift the pump away from its tappet, so that the plunger closes its port later',
  'under the tappet button': 'a thicker button lifts the plunger, so that it closes its port earlier',
} as const;

const signAndPlace = ({ shimsSit, addingShims }: PumpTiming): readonly Finding[] =>
  usualSign[shimsSit] === addingShims
    ? []
    : [
        doubtful(
          ['pump-timing', 'adding-shims'],
          `adding shims is said to ${addingShims === 'retards' ? 'retard' : 'advance'} the pump, and they sit ${shimsSit}: ${because[shimsSit]}`,
          'compare sign and place with the manual; if it says so, fit a second pack and see by a second spill which way it goes',
        ),
      ];

const usualPack = {
  'under the pump flange': 'datum less depth',
  'on the pad': 'datum less depth',
  'under the tappet button': 'depth less datum',
} as const;

const packAndPlace = ({ shimsSit, packIs }: PumpTiming): readonly Finding[] => {
  const wanted = usualPack[shimsSit];
  if ((packIs ?? 'datum less depth') === wanted) return [];
  return [
    doubtful(
      ['pump-timing', packIs === undefined ? 'shims-sit' : 'pack-is'],
      `${packIs === undefined ? 'it is not said how the pack follows from the depth, and' : `the pack is said to be ${packIs}, and shims sit ${shimsSit}:`} ${
        wanted === 'depth less datum'
          ? 'shims under the button make up for a tappet that stands too deep'
          : 'shims under the pump take up what the tappet stands too high'
      }`,
      `write \`pack-is: ${wanted}\` unless the manual's datum is counted another way`,
    ),
  ];
};

export const shimLaw = ({ pumpTiming }: EngineType): readonly Finding[] =>
  pumpTiming === undefined
    ? []
    : [...byTheCam(pumpTiming), ...signAndPlace(pumpTiming), ...packAndPlace(pumpTiming)];
