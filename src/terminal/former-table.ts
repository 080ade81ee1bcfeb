/** @module How an engine was left by its former overhaul and what it has worn since, in the terminal. */
import type { OpenJob } from '../job/job.ts';
import { formerWords } from '../measure/former.ts';
import { wearTold } from '../record/sections/former.ts';
import { plain } from './plain.ts';
import { table } from './table.ts';

/** Nothing where it was not here before. */
export const formerText = (job: OpenJob): string =>
  job.sheet.former
    ? `\n${plain(`Since the former overhaul, ${formerWords(job.sheet.former)}`)}\n${wearTable(job)}`
    : '';

const wearTable = (job: OpenJob): string =>
  table(
    [
      { head: 'Place' },
      { head: 'Characteristic' },
      { head: 'Left at', right: true },
      { head: 'Now', right: true },
      { head: 'Worn', right: true },
      { head: 'By 1000 h', right: true },
    ],
    wearTold(job).map(({ cell, left, now, wear, rate }) => [
      cell.place,
      [cell.characteristic, cell.plane, cell.axis].filter((word) => word !== '').join(' '),
      left,
      now,
      wear,
      rate,
    ]),
  );
