/** @module `endfloat run`: how the run-in of a job stands: steps, limits, what is passed, readings with their verdicts, alarms, faults. */
import { gauges } from '../../engine/gauge.ts';
import type { RunIn } from '../../engine/run-in.ts';
import type { OpenJob } from '../../job/job.ts';
import { limitText } from '../../job/run/judged-reading.ts';
import { type RunInStanding, runInStanding, type StepStanding } from '../../job/run/run-in-standing.ts';
import { answer } from '../../quantity/refusal.ts';
import { typedText } from '../../quantity/typed.ts';
import { runSections } from '../../record/sections/run.ts';
import type { TerminalCommand } from '../command.ts';
import { plain } from '../plain.ts';
import { table } from '../table.ts';
import { inJob, storeOptions } from '../workshop.ts';

const limitsOf = (runIn: RunIn, { step }: StepStanding): string =>
  gauges
    .flatMap((gauge) => {
      const limit = gauge.name === 'speed' || gauge.name === 'load' ? '' : limitText(runIn, step, gauge);
      return limit === '' ? [] : [`${gauge.title} ${limit}`];
    })
    .join('; ');

const stepTable = (runIn: RunIn, { steps }: RunInStanding): string =>
  table(
    [
      { head: 'Step', right: true },
      { head: 'What' },
      { head: 'Set' },
      { head: 'Minutes', right: true },
      { head: 'Standing' },
      { head: 'Limits' },
    ],
    steps.map((one) => [
      String(one.number),
      one.step.title,
      `${typedText(one.step.speed)}, ${typedText(one.step.load)}`,
      String(one.step.minutes),
      one.standing,
      limitsOf(runIn, one),
    ]),
  );

const nowText = ({ next, alarms, openFaults, inHand }: RunInStanding): string =>
  [
    ...alarms.map(({ says, remedy }) => `ALARM: ${says}. ${remedy}.`),
    ...openFaults.map(({ says }) => `Not put right: ${says}.`),
    ...(next === undefined
      ? ['Every step of the run-in is passed.']
      : [
          inHand?.number === next.number
            ? `In hand: step ${next.number}, ${next.step.title}: ${inHand.lacking.join('; ')}.`
            : `Next: step ${next.number}, ${next.step.title}.`,
        ]),
  ]
    .map((line) => `${plain(line)}\n`)
    .join('');

const sectionText = (job: OpenJob): string =>
  runSections(job)
    .filter(({ table: rows }) => rows !== undefined && rows.rows.length > 0)
    .map(
      ({ title, table: rows }) =>
        `\n${title}\n${table(
          (rows?.heads ?? []).map((head) => ({ head })),
          (rows?.rows ?? []).map(({ cells }) => cells),
        )}`,
    )
    .join('');

export const runInCommand: TerminalCommand = {
  name: 'run',
  summary: 'show how the run-in stands: steps, limits, what is passed, alarms, faults',
  usage: ['run JOB'],
  about:
    'A step is begun with endfloat do JOB begin-run-step, the gauges are read with log-run-reading, a fault is noted with note-fault and put-fault-right.',
  options: storeOptions,
  words: [1, 1],
  run: (given) =>
    inJob(given, async ({ job }) => {
      const standing = runInStanding(job);
      const { runIn } = job.sheet.engine;
      return answer({
        text:
          runIn === undefined
            ? `${plain(job.sheet.engine.title)} has no run-in steps.\n${sectionText(job)}`
            : `${stepTable(runIn, standing)}${nowText(standing)}${sectionText(job)}`,
        json: {
          steps: standing.steps.map(({ number, step, standing: stands, attempt }) => ({
            step: number,
            title: step.title,
            operation: step.operation,
            speed: step.speed,
            load: step.load,
            minutes: step.minutes,
            limits: Object.fromEntries([...step.limits].map(([gauge, { printed }]) => [gauge, printed])),
            standing: stands,
            minutesProved: attempt?.minutes ?? 0,
            minutesLeft: attempt?.left ?? step.minutes,
            lacking: attempt?.lacking ?? [],
          })),
          next: standing.next?.number,
          alarms: standing.alarms,
          attempts: standing.attempts.map(({ step, begun, ...attempt }) => ({
            ...attempt,
            title: step.title,
            begun: begun.at,
          })),
          faults: standing.faults,
        },
      });
    }),
};
