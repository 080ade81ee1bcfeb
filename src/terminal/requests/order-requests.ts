/** @module What can be asked about orders in the terminal: placed, received, certified, sent back, taken as it is. */
import type { OpenJob } from '../../job/job.ts';
import { awaitedOf } from '../../job/order/here.ts';
import { orderListOf, placeOrder } from '../../job/order/order-list.ts';
import { number, optional, text } from './keys.ts';
import type { JobRequest } from './typed-request.ts';
import { given, together, type Values, word } from './values.ts';

/** A line is named by its number in the order, as it is printed, or by its id. */
export const lineNamed = (job: OpenJob, order: string, typed: string): string =>
  (/^\d{1,4}$/.test(typed) ? job.orders.get(order)?.lines[Number(typed) - 1]?.line : undefined) ?? typed;

const place = (values: Values, job: OpenJob): Values => {
  const supplier = word(values.supplier);
  const asked = { order: word(values.order), due: word(values.due), note: word(values.note) };
  const list = orderListOf(job).find((one) => one.supplier === supplier);
  if (list === undefined) return { ...asked, supplier, lines: [], charges: [] };
  const { kind: _, ...body } = placeOrder(list, asked);
  return body;
};

/** One line with its count, or everything that is awaited. */
const receive = (values: Values, job: OpenJob): Values => {
  const order = word(values.order);
  const placed = job.orders.get(order);
  const awaited = placed === undefined ? [] : awaitedOf(placed);
  const line = lineNamed(job, order, word(values.line));
  const count = values.count ?? awaited.find((one) => one.line === line)?.count ?? 1;
  return { order, lines: line === '' ? awaited : [{ line, count }], note: word(values.note) };
};

const line = text('line', '2');

export const orderRequests: readonly JobRequest[] = [
  {
    name: 'place-order',
    kind: 'place order',
    keys: [
      text('order', 'O-117'),
      text('supplier', '"Grindle & Wick"'),
      text('due', '2026-03-12'),
      optional(text('note', '"collect on Thursday"')),
    ],
    body: place,
  },
  {
    name: 'receive-delivery',
    kind: 'receive delivery',
    keys: [
      text('order', 'O-117'),
      optional(line),
      optional(number('count', '2')),
      optional(text('note', '"box crushed"')),
    ],
    body: receive,
  },
  {
    name: 'note-certificate',
    kind: 'note certificate',
    keys: [
      text('order', 'O-117'),
      line,
      text('certificate', '"GW 3318"'),
      optional(text('crack-test', '"magnetic particles"')),
      optional(text('crack-test-showed', '"no crack"')),
    ],
    body: (values, job) => ({
      order: values.order,
      line: lineNamed(job, word(values.order), word(values.line)),
      certificate: values.certificate,
      ...together('crackTest', given(values, { 'crack-test': 'by', 'crack-test-showed': 'showed' })),
    }),
  },
  {
    name: 'send-back',
    kind: 'send back',
    keys: [
      text('order', 'O-117'),
      line,
      optional(number('count', '1')),
      optional(text('places', '"piston.2, piston.3"')),
      text('why', '"ground under its size"'),
    ],
    body: (values, job) => {
      const named = lineNamed(job, word(values.order), word(values.line));
      const all = job.orders.get(word(values.order))?.lines.find((one) => one.line === named)?.places ?? [];
      const places = word(values.places)
        .split(',')
        .map((one) => one.trim())
        .filter((one) => one !== '');
      return {
        order: values.order,
        line: named,
        count: values.count ?? 1,
        places: places.length === 0 ? all : places,
        why: values.why,
      };
    },
  },
  {
    name: 'accept-line',
    kind: 'accept line',
    keys: [text('order', 'O-117'), line, text('why', '"shells chosen to suit"')],
    body: (values, job) => ({
      order: values.order,
      line: lineNamed(job, word(values.order), word(values.line)),
      why: values.why,
    }),
  },
];
