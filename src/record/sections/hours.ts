/** @module The record's hours: time by operation, by the clock and of all hands, who was at it and what interrupted them. */
import type { OpenJob } from '../../job/job.ts';
import { type OperationTime, timesOf, workTimeOf } from '../../job/time.ts';
import { durationText } from '../../quantity/moment.ts';
import { timeText } from '../figure-text.ts';
import type { RecordRow, RecordSection } from '../record-model.ts';
import { operationTitle } from './named.ts';

const rowOf = (job: OpenJob, name: string, time: OperationTime): RecordRow => ({
  of: name,
  cells: [
    operationTitle(job.sheet.engine, name),
    durationText(time.minutes),
    durationText(time.personMinutes),
    time.people.map(({ by, minutes }) => `${by}, ${durationText(minutes)}`).join('; '),
    time.interruptions.map(({ by, at, why }) => `${timeText(at)}, ${by}: ${why}`).join('; '),
  ],
});

/** None where nobody's time was noted; what still runs is not counted. */
export const hoursSection = (job: OpenJob): readonly RecordSection[] => {
  const times = timesOf(job);
  if (times.size === 0) return [];
  const { spent } = workTimeOf(job, ['strip', 'build', 'set', 'run']);
  return [
    {
      name: 'hours',
      title: 'Hours by operation',
      says: [
        `In all ${durationText(spent.minutes)} at the operations, ${durationText(spent.personMinutes)} of all hands together. Only time that was noted is counted.`,
      ],
      table: {
        heads: ['Operation', 'By the clock', 'Of all hands', 'Who', 'Interrupted'],
        rows: [...job.sheet.engine.operations.keys()].flatMap((name) => {
          const time = times.get(name);
          return time === undefined ? [] : [rowOf(job, name, time)];
        }),
      },
      derived: true,
    },
  ];
};
