/** @module The record's run-in: every step that was begun and what became of it, every reading with its verdict, every fault. */
import { type GaugeName, gauges } from '../../engine/gauge.ts';
import type { OpenJob } from '../../job/job.ts';
import { attemptWords, readingWords } from '../../job/run/attempt-words.ts';
import { type RunInStanding, runInStanding } from '../../job/run/run-in-standing.ts';
import type { TakenReading } from '../../job/run/taken-reading.ts';
import { typedText } from '../../quantity/typed.ts';
import { timeText } from '../figure-text.ts';
import type { RecordRow, RecordSection } from '../record-model.ts';
import { placeTitle } from './named.ts';
import { runSection } from './run-log.ts';

const stepSection = (job: OpenJob, { attempts, steps }: RunInStanding): RecordSection => ({
  name: 'run-in',
  title: 'Run-in',
  says: [
    `${steps.filter(({ standing }) => standing === 'passed').length} of ${steps.length} steps passed${job.sheet.engine.runIn?.source === undefined ? '' : ` (${job.sheet.engine.runIn.source})`}.`,
  ],
  table: {
    heads: ['Step', 'Speed', 'Load', 'Begun', 'Minutes proved', 'What became of it'],
    rows: [
      ...attempts.map(
        (attempt): RecordRow => ({
          of: `step ${attempt.number}`,
          cells: [
            `${attempt.number}. ${attempt.step.title}`,
            typedText(attempt.step.speed),
            typedText(attempt.step.load),
            [
              `${timeText(attempt.begun.at)}, ${attempt.begun.by}`,
              ...(attempt.begun.oilPressureAfter === undefined
                ? []
                : [`oil pressure after ${typedText(attempt.begun.oilPressureAfter)}`]),
              ...(attempt.begun.note === '' ? [] : [attempt.begun.note]),
            ].join('; '),
            `${Number(attempt.minutes.toFixed(1))} of ${attempt.step.minutes}`,
            attemptWords(attempt),
          ],
          ...(attempt.passed ? {} : { marked: true as const }),
        }),
      ),
      ...steps
        .filter(({ attempt }) => attempt === undefined)
        .map(
          ({ number, step }): RecordRow => ({
            of: `step ${number}`,
            cells: [
              `${number}. ${step.title}`,
              typedText(step.speed),
              typedText(step.load),
              '',
              `0 of ${step.minutes}`,
              'not run',
            ],
            marked: true,
          }),
        ),
    ],
  },
  derived: true,
});

const shownAs = ({ told }: TakenReading, gauge: GaugeName): string =>
  told.gauges
    .filter((one) => one.gauge === gauge)
    .map(({ cylinder, typed }) => `${cylinder === undefined ? '' : `${cylinder}: `}${typedText(typed)}`)
    .join('\n');

const readingSection = ({ attempts }: RunInStanding): RecordSection => {
  const taken = attempts.flatMap(({ number, readings }) => readings.map((one) => ({ number, one })));
  const read = gauges.filter(({ name }) =>
    taken.some(({ one }) => one.told.gauges.some(({ gauge }) => gauge === name)),
  );
  const looked = taken.some(({ one }) => one.told.smoke !== undefined || one.told.leaks !== undefined);
  return {
    name: 'run-readings',
    title: 'What the gauges showed',
    says: [],
    table: {
      heads: [
        'Step, minute',
        ...read.map(({ title }) => `${title.charAt(0).toUpperCase()}${title.slice(1)}`),
        ...(looked ? ['Smoke', 'Leaks'] : []),
        'Verdict',
        'When, who, note',
      ],
      rows: taken.map(({ number, one }) => ({
        of: `step ${number} minute ${one.told.minute}`,
        cells: [
          `${number}, ${one.told.minute} min`,
          ...read.map(({ name }) => shownAs(one, name)),
          ...(looked ? [one.told.smoke ?? '', one.told.leaks ?? ''] : []),
          readingWords(one),
          [`${timeText(one.at)}, ${one.by}`, one.told.note].filter((text) => text !== '').join('; '),
        ],
        ...(one.alarms.length > 0 || one.struckOut !== undefined ? { marked: true as const } : {}),
      })),
    },
    derived: true,
  };
};

const faultSection = (job: OpenJob, { faults }: RunInStanding): RecordSection => ({
  name: 'faults',
  title: 'Faults and what was done',
  says: [],
  table: {
    heads: ['Fault', 'Found', 'Alarms', 'What it took down', 'What was done'],
    rows: faults.map((fault, at) => ({
      of: `fault ${at + 1}`,
      cells: [
        [fault.says, ...(fault.place === undefined ? [] : [placeTitle(job.sheet.engine, fault.place)])].join(
          ', ',
        ),
        `${timeText(fault.at)}, ${fault.by}`,
        fault.alarms.map(({ says }) => says).join('; '),
        fault.stopsRun ? (job.sheet.engine.runIn?.afterFault ?? '') : 'does not bear on the run',
        fault.putRight === undefined
          ? 'not put right'
          : `${fault.putRight.done}: ${timeText(fault.putRight.at)}, ${fault.putRight.by}`,
      ],
      ...(fault.putRight === undefined ? { marked: true as const } : {}),
    })),
  },
  derived: true,
});

/** None of the run-in where the engine type has none; of the faults where none was found. */
export const runSections = (job: OpenJob): readonly RecordSection[] => {
  const standing = runInStanding(job);
  return [
    ...(standing.steps.length === 0 ? [] : [stepSection(job, standing)]),
    ...(standing.attempts.some(({ readings }) => readings.length > 0) ? [readingSection(standing)] : []),
    ...(standing.faults.length === 0 ? [] : [faultSection(job, standing)]),
    ...(standing.steps.length === 0 || job.runLog.length > 0 ? [runSection(job)] : []),
  ];
};

/** For the front of the record: what was not run, struck out, or not put right. */
export const runDeviations = (job: OpenJob): readonly { readonly of: string; readonly what: string }[] => {
  const { steps, faults, attempts } = runInStanding(job);
  const struck = attempts.flatMap(({ readings }) => readings.filter(({ struckOut }) => struckOut));
  return [
    ...(steps.length === 0 && job.runLog.length === 0 ? [{ of: 'Run', what: 'no running is noted' }] : []),
    ...steps
      .filter(({ standing }) => standing !== 'passed')
      .map(({ number, step }) => ({
        of: `Run-in, step ${number}`,
        what: `${step.title}: not passed`,
      })),
    ...(struck.length === 0 ? [] : [{ of: 'Run-in', what: `${struck.length} readings are struck out` }]),
    ...faults.map(({ says, putRight }) => ({
      of: 'Fault',
      what: `${says}: ${putRight === undefined ? 'not put right' : putRight.done}`,
    })),
  ];
};
