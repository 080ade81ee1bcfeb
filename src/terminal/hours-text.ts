/** @module Hours of a job in the terminal: by operation, in all, what runs and what remains. */
import type { OpenJob } from '../job/job.ts';
import { timesOf, type WorkTime, workTimeOf } from '../job/time.ts';
import { durationText } from '../quantity/moment.ts';
import { counted } from './counted.ts';
import { plain } from './plain.ts';
import { table } from './table.ts';

const everything = ['strip', 'build', 'set', 'run'] as const;

const leftText = ({ remaining: { minutes, operations, untold } }: WorkTime): string =>
  operations === 0
    ? 'nothing'
    : `${durationText(minutes)} for ${counted(operations, 'operation')}${untold === 0 ? '' : `, not said of ${untold} of them`}`;

/** @param now  until when what runs is counted */
export const hoursText = (job: OpenJob, now: string): string => {
  const times = timesOf(job, now);
  const time = workTimeOf(job, everything, now);
  const rows = [...times].map(([name, { minutes, personMinutes, people, running, interruptions }]) => [
    name,
    durationText(minutes),
    durationText(personMinutes),
    people.map(({ by }) => by).join(', '),
    running.length > 0
      ? `runs: ${running.map(({ by }) => by).join(', ')}`
      : interruptions.map(({ why }) => why).join('; '),
  ]);
  const heads = [
    { head: 'Operation' },
    { head: 'By the clock', right: true },
    { head: 'Of all hands', right: true },
    { head: 'Who' },
    { head: 'Interrupted' },
  ];
  return `${rows.length === 0 ? '' : table(heads, rows)}${plain(
    `Spent ${durationText(time.spent.minutes)}, of all hands ${durationText(time.spent.personMinutes)}; left by the engine type: ${leftText(time)}.`,
  )}\n`;
};

export const hoursJson = (job: OpenJob, now: string) => ({
  ...workTimeOf(job, everything, now),
  operations: Object.fromEntries(timesOf(job, now)),
});
