/** @module The record's valve gear: clearances as set, position by position, and the lifts of the cams compared. */
import { type CamLifts, camLiftsOf } from '../../job/cam-lifts.ts';
import type { OpenJob } from '../../job/job.ts';
import { type ValvePosition, type ValveToSet, valvesOfJob } from '../../job/valve-setting.ts';
import { formatFigure } from '../../quantity/figure.ts';
import { refusalText } from '../../quantity/refusal.ts';
import { lengthText } from '../figure-text.ts';
import type { RecordRow, RecordSection } from '../record-model.ts';

/** `cylinder 1 at its firing top, where the valves of 6 rock`. */
export const positionText = ({ cylinder, rocking }: Pick<ValvePosition, 'cylinder' | 'rocking'>): string =>
  `cylinder ${cylinder} at its firing top${rocking === undefined ? '' : `, where the valves of ${rocking} rock`}`;

/** `1 inlet`. */
export const valveText = ({ cylinder, kind }: Pick<ValveToSet, 'cylinder' | 'kind'>): string =>
  `${cylinder} ${kind}`;

const rowOf = (position: ValvePosition, valve: ValveToSet): RecordRow => ({
  of: valve.place,
  cells: [
    positionText(position),
    valveText(valve),
    valve.clearance === undefined ? '' : lengthText(valve.clearance),
    valve.verdict,
  ],
  ...(valve.verdict === 'within' ? {} : { marked: true as const }),
});

export const valveSection = (job: OpenJob): readonly RecordSection[] => {
  const valves = valvesOfJob(job);
  if (valves === undefined) return [];
  const about = { name: 'valve clearances', title: 'Valve clearances as set', derived: true } as const;
  if (valves.kind === 'refused') return [{ ...about, says: [refusalText(valves.refusal)] }];
  const { setting, positions, within, of } = valves.value;
  return [
    {
      ...about,
      says: [
        `Engine ${setting.engineIs}; the crank is turned ${setting.turn}. ${setting.order === undefined ? 'Order by firing order and valve events, in the fewest positions.' : "The maker's own order."}`,
        `${within} of ${of} valves within their limits.`,
      ],
      table: {
        heads: ['Position', 'Valve', 'Clearance', 'Verdict'],
        rows: positions.flatMap((position) => position.valves.map((valve) => rowOf(position, valve))),
      },
    },
  ];
};

/** Every kind of cam whose lift is read: of the pumps, of the valves. */
export const camLiftsOfJob = (job: OpenJob): readonly CamLifts[] => {
  const { pumpTiming, valveSetting } = job.sheet.engine;
  return [...new Set([pumpTiming?.lift, valveSetting?.lift])].flatMap((of) => {
    const lifts = of === undefined ? undefined : camLiftsOf(job, of);
    return lifts?.lifts.some(({ lift }) => lift !== undefined) ? [lifts] : [];
  });
};

export const camSection = (job: OpenJob): readonly RecordSection[] => {
  const all = camLiftsOfJob(job);
  if (all.length === 0) return [];
  return [
    {
      name: 'cam lifts',
      title: 'Lifts of the cams, compared',
      says: ['Where all lobes are worn alike, comparing them shows nothing: the lift as made decides.'],
      table: {
        heads: ['Cam', 'Lift', 'Below the highest', 'Below the least as made', 'Verdict'],
        rows: all.flatMap(({ title, lifts }) =>
          lifts.map(({ place, title: at, lift, belowHighest, belowAsMade, verdict }) => ({
            of: place,
            cells: [
              `${title}, ${at}`,
              lift === undefined ? '' : lengthText(lift),
              belowHighest === undefined ? '' : `${formatFigure(belowHighest, 3)} mm`,
              belowAsMade === undefined ? '' : `${formatFigure(belowAsMade, 3)} mm`,
              verdict,
            ],
            ...(verdict === 'within' ? {} : { marked: true as const }),
          })),
        ),
      },
      derived: true,
    },
  ];
};
