/** @module The record's run log: each step of running in with what was read from the gauges. */
import type { OpenJob } from '../../job/job.ts';
import { typedText } from '../../quantity/typed.ts';
import { timeText } from '../figure-text.ts';
import type { RecordSection } from '../record-model.ts';

export const runSection = (job: OpenJob): RecordSection => ({
  name: 'run',
  title: 'Run log',
  says: job.runLog.length === 0 ? ['No running is noted.'] : [],
  table: {
    heads: ['When, who', 'Minutes', 'Speed', 'Load', 'Oil pressure', 'Water', 'Note'],
    rows: job.runLog.map((step, at) => ({
      of: `step ${at + 1}`,
      cells: [
        `${timeText(step.at)}, ${step.by}`,
        String(step.minutes),
        typedText(step.speed),
        typedText(step.load),
        step.oilPressure === undefined ? '' : typedText(step.oilPressure),
        step.waterTemperature === undefined ? '' : typedText(step.waterTemperature),
        step.note,
      ],
    })),
  },
  derived: false,
});
