/** @module The record's orders: what was ordered from whom, what came, how it measured, and what was taken as it was. */
import type { OpenJob } from '../../job/job.ts';
import { type LineAt, orderedLines } from '../../job/order/standing.ts';
import { standingWords } from '../../job/order/standing-words.ts';
import { moneyText, timeText } from '../figure-text.ts';
import type { Line, RecordRow, RecordSection } from '../record-model.ts';

/** What happened to a line, oldest first. */
const historyOf = ({ order, line }: LineAt): string =>
  order.since
    .flatMap((one): readonly string[] => {
      const when = `${timeText(one.at)}, ${one.by}`;
      switch (one.kind) {
        case 'delivery received': {
          const came = one.lines.find((each) => each.line === line.line);
          return came === undefined
            ? []
            : [`${came.count} came (${when})${one.note === '' ? '' : `: ${one.note}`}`];
        }
        case 'certificate noted': {
          const { crackTest: test } = one;
          const showed = test === undefined ? '' : `, crack test by ${test.by}: ${test.showed}`;
          return one.line === line.line ? [`certificate ${one.certificate}${showed} (${when})`] : [];
        }
        case 'line sent back':
          return one.line === line.line ? [`${one.count} sent back (${when}): ${one.why}`] : [];
        case 'line accepted':
          return one.line === line.line ? [`taken in as it is (${when}): ${one.why}`] : [];
        default:
          return one satisfies never;
      }
    })
    .join('; ');

const rowOf = (job: OpenJob, at: LineAt): RecordRow => ({
  of: `${at.order.order} ${at.line.line}`,
  cells: [
    `${at.order.order}, ${at.order.supplier}`,
    at.line.says,
    String(at.line.count),
    moneyText(at.line.cents, job.booked.currency),
    `${timeText(at.order.at)}, ${at.order.by}; due ${at.order.due}`,
    historyOf(at),
    standingWords(at.standing),
  ],
  ...(at.standing.kind === 'taken in' && at.standing.accepted === undefined ? {} : { marked: true as const }),
});

/** None where nothing was ordered by this job. */
export const orderSections = (job: OpenJob): readonly RecordSection[] =>
  job.orders.size === 0
    ? []
    : [
        {
          name: 'orders',
          title: 'Orders, and what came',
          says: ['What came is judged by the limits as made of the size that was ordered.'],
          table: {
            heads: ['Order', 'What', 'Count', 'Price', 'Placed', 'What came of it', 'Standing'],
            rows: orderedLines(job).map((at) => rowOf(job, at)),
          },
          derived: false,
        },
      ];

/** What was ordered and is not here as it was ordered. */
export const orderDeviations = (job: OpenJob): readonly Line[] =>
  orderedLines(job).flatMap(({ order, line, standing }) =>
    standing.kind === 'given up' || (standing.kind === 'taken in' && standing.accepted === undefined)
      ? []
      : [{ name: `${line.says}, order ${order.order}`, says: standingWords(standing) }],
  );
