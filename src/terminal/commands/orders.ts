/** @module `endfloat orders`: what a job needs from whom, what was ordered, and how it stands; as a table, CSV or paper. */
import type { OpenJob } from '../../job/job.ts';
import { orderListOf, type SupplierList } from '../../job/order/order-list.ts';
import { type LineAt, orderedLines } from '../../job/order/standing.ts';
import { standingWords } from '../../job/order/standing-words.ts';
import { csvField } from '../../measure/csv.ts';
import { type Answer, answer } from '../../quantity/refusal.ts';
import { moneyText } from '../../record/figure-text.ts';
import { type OrderPaper, orderPage } from '../../record/order-page.ts';
import { type Given, lastValue, type Outcome, type TerminalCommand } from '../command.ts';
import { writeWhole } from '../output-file.ts';
import { plain } from '../plain.ts';
import { table } from '../table.ts';
import { inJob, storeOptions } from '../workshop.ts';

/** What is left of a supplier's list, as it would be ordered. */
const paperOf = ({ supplier, lines, charges }: SupplierList): OrderPaper => ({
  supplier,
  charges,
  lines: lines.flatMap((line) =>
    line.left === 0 ? [] : [{ ...line, count: line.left, cents: line.leftCents }],
  ),
});

const listText = (list: SupplierList, currency: string): string => {
  const rows = [
    ...list.lines.map((line) => [
      line.says,
      line.places.join(' '),
      String(line.count),
      String(line.ordered),
      line.left === 0 ? '' : moneyText(line.leftCents, currency),
      line.left === 0 ? '' : String(line.days),
      line.why.join('; '),
    ]),
    ...list.charges.map(({ says, cents }) => [says, '', '', '', moneyText(cents, currency), '', 'paid once']),
  ];
  return `${plain(list.supplier)}: ${moneyText(list.cents, currency)} to order, ${list.days} days\n${table(
    [
      { head: 'What' },
      { head: 'For' },
      { head: 'Needed', right: true },
      { head: 'Ordered', right: true },
      { head: 'Price', right: true },
      { head: 'Days', right: true },
      { head: 'Why' },
    ],
    rows,
  )}`;
};

const placedText = (lines: readonly LineAt[]): string =>
  table(
    [
      { head: 'Order' },
      { head: 'Line', right: true },
      { head: 'What' },
      { head: 'Here', right: true },
      { head: 'Due' },
      { head: 'Stands' },
    ],
    lines.map(({ order, line, here, standing }) => [
      order.order,
      String(order.lines.indexOf(line) + 1),
      line.says,
      `${here} of ${line.count}`,
      order.due,
      standingWords(standing),
    ]),
  );

const csvOf = (lists: readonly SupplierList[]): string =>
  [
    ['supplier', 'what', 'places', 'needed', 'ordered', 'left', 'price', 'days', 'why'],
    ...lists.flatMap(({ supplier, lines, charges }) => [
      ...lines.map((line) => [
        supplier,
        line.says,
        line.places.join(' '),
        String(line.count),
        String(line.ordered),
        String(line.left),
        moneyText(line.leftCents, ''),
        String(line.days),
        line.why.join('; '),
      ]),
      ...charges.map(({ says, cents }) => [
        supplier,
        says,
        '',
        '',
        '',
        '',
        moneyText(cents, ''),
        '',
        'paid once',
      ]),
    ]),
  ]
    .map((row) => `${row.map(csvField).join(',')}\n`)
    .join('');

const shown = (job: OpenJob, lists: readonly SupplierList[], given: Given): Outcome => {
  const placed = orderedLines(job);
  const json = {
    lists,
    orders: placed.map(({ order, line, here, standing }) => ({
      order: order.order,
      supplier: order.supplier,
      due: order.due,
      ...line,
      line: order.lines.indexOf(line) + 1,
      id: line.line,
      here,
      standing,
    })),
  };
  if (given.switches.has('csv')) return { text: csvOf(lists), json };
  const text = [
    ...lists.map((list) => listText(list, job.booked.currency)),
    ...(placed.length === 0 ? [] : [`Ordered so far\n${placedText(placed)}`]),
  ].join('\n');
  return {
    text: text === '' ? 'Nothing is to be ordered: no plan is chosen, or it needs nothing.' : text,
    json,
  };
};

const written = async (
  job: OpenJob,
  lists: readonly SupplierList[],
  path: string,
  given: Given,
): Promise<Answer<Outcome>> => {
  const wanted = lastValue(given, 'supplier');
  const papers: readonly OrderPaper[] = [
    ...job.orders.values(),
    ...lists.map(paperOf).filter(({ lines }) => lines.length > 0),
  ].filter(({ supplier }) => wanted === undefined || supplier === wanted);
  const file = await writeWhole(path, orderPage(job, papers), given.world);
  if (file.kind === 'refused') return file;
  return answer({
    text: `${papers.length} orders written to ${plain(file.value)}, a sheet for each supplier.`,
    json: { file: file.value, orders: papers.map(({ supplier, order }) => ({ supplier, order })) },
  });
};

export const orders: TerminalCommand = {
  name: 'orders',
  summary: 'list what a job needs from each supplier, what was ordered and how it stands',
  usage: ['orders JOB', 'orders JOB --csv', 'orders JOB --page FILE [--supplier NAME]'],
  about:
    'An order is placed with endfloat do JOB place-order; a line of it is named by its number here. What came is checked with endfloat receive.',
  options: [
    ...storeOptions,
    { name: 'csv', says: 'the list as CSV' },
    { name: 'page', value: 'FILE', says: 'write the orders as a page to print, a sheet for each supplier' },
    { name: 'supplier', value: 'NAME', says: 'only the orders to this one, on the page' },
  ],
  words: [1, 1],
  run: (given) =>
    inJob<Outcome>(given, async ({ job }) => {
      const lists = orderListOf(job);
      const path = lastValue(given, 'page');
      return path === undefined ? answer(shown(job, lists, given)) : written(job, lists, path, given);
    }),
};
