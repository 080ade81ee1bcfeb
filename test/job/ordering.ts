/** @module An engine whose journals are ground to order, on the bench until the owner has agreed. All invented. */
import type { Request } from '../../src/job/command.ts';
import { type ListedLine, orderListOf, placeOrder } from '../../src/job/order/order-list.ts';
import { type LineAt, orderedLines } from '../../src/job/order/standing.ts';
import { Bench, booking, depthGauge, micrometer } from './bench.ts';
import { sparrowbill } from './sparrowbill.ts';

/** With a second step, what the grinder is told, and parts that are used but once. */
const ordering = sparrowbill
  .replace(
    '    life: 8000 h\n    sizes:',
    `    life: 8000 h
    machining:
      finish: { greatest: 0.4 µm }
      fillet: { least: 2.0 mm, greatest: 2.4 mm }
      marks: the undersize on the front web
      crack-test: { before: magnetic particles, after: magnetic particles }
      source: invented, page 9
    sizes:`,
  )
  .replace(
    'wear: { least: 49.690 mm } }',
    `wear: { least: 49.690 mm } }
        - name: '0.50'
          limits: { new: { least: 49.475 mm, greatest: 49.490 mm }, wear: { least: 49.440 mm } }`,
  )
  .replace(
    'couplings:',
    `  - { component: mains, does: machine, size: '0.50', supplier: Ashlar Grinding, price: '200.00', per: set, days: 4 }
one-use:
  main-lock-tabs:
    title: lock tabs of the main caps
    at: main
    each: 2
    supplier: Ashlar Parts
    price: '0.75'
    days: 1
    disturbed-by: [lift-crankshaft]
  pump-gaskets:
    title: pump gaskets
    at: pump
    each: 1
    supplier: Ashlar Fuel
    price: '1.20'
    days: 2
    renewed-with: [pumps]
couplings:`,
  )
  .replace('    after: [lift-crankshaft]\n', '    after: [lift-crankshaft]\n    renews: [main-lock-tabs]\n')
  .replace('    after: [lay-crankshaft]\n', '    after: [lay-crankshaft]\n    renews: [pump-gaskets]\n');

export const lines = {
  mains: 'mains:machine:0.25:Ashlar Grinding',
  shells: 'main-shells:replace:standard:Ashlar Parts',
  pumps: 'pumps:replace:standard:Ashlar Fuel',
  tabs: 'one-use:main-lock-tabs',
  gaskets: 'one-use:pump-gaskets',
} as const;

const cells = ['main.1', 'main.2'].flatMap((place) =>
  ['vertical', 'horizontal'].map((axis) => [place, axis] as const),
);

/** Reads every journal, one figure after the other. */
export const readJournals = (bench: Bench, figures: readonly string[]): void => {
  for (const [at, [place, axis]] of cells.entries()) bench.read(place, figures[at] ?? '', axis);
};

/** Worn journals ground to 0.25, new shells, the second pump renewed, and the owner has agreed. */
export const toOrder = (): Bench => {
  const bench = new Bench();
  bench.done({ ...booking, engineType: ordering });
  bench.done({ kind: 'bring instrument', instrument: micrometer });
  bench.done({ kind: 'bring instrument', instrument: depthGauge });
  readJournals(bench, ['49.930', '49.920', '49.900', '49.910']);
  bench.done({ kind: 'do operation', operation: 'lift-crankshaft', note: '' });
  bench.done({
    kind: 'choose plan',
    choices: [
      {
        slot: 'mains',
        option: 'mains:machine:0.25:Ashlar Grinding',
        says: 'machine to 0.25, by Ashlar Grinding: cleans up',
        cents: 18_000,
      },
      {
        slot: 'main-shells',
        option: 'main-shells:replace:standard:Ashlar Parts',
        says: 'replace, standard, by Ashlar Parts: new',
        cents: 4000,
      },
      { slot: 'pumps@pump.1', option: 'pumps@pump.1:put back:standard:', says: 'put back', cents: 0 },
      {
        slot: 'pumps@pump.2',
        option: 'pumps@pump.2:replace:standard:Ashlar Fuel',
        says: 'replace, standard, by Ashlar Fuel: new',
        cents: 9500,
      },
    ],
    cents: 32_100,
    days: 4,
    hours: 6000,
  });
  bench.done({ kind: 'note agreement', name: 'W. Heron', how: 'by telephone' });
  return bench;
};

/** The order of all that is left of a supplier's list. */
export const orderFrom = (
  bench: Bench,
  supplier: string,
  order: string,
): Extract<Request, { kind: 'place order' }> => {
  const list = orderListOf(bench.open).find((one) => one.supplier === supplier);
  if (list === undefined) throw new Error(`nothing is needed from ${supplier}`);
  return placeOrder(list, { order, due: '2026-03-12', note: '' });
};

export const listed = (bench: Bench, line: string): ListedLine => {
  const found = orderListOf(bench.open)
    .flatMap((list) => list.lines)
    .find((one) => one.line === line);
  if (found === undefined) throw new Error(`no line ${line}`);
  return found;
};

export const lineAt = (bench: Bench, order: string, line: string): LineAt => {
  const found = orderedLines(bench.open).find((at) => at.order.order === order && at.line.line === line);
  if (found === undefined) throw new Error(`no line ${line} in ${order}`);
  return found;
};

/** With the crankshaft back from the grinder. */
export const groundBack = (): Bench => {
  const bench = toOrder();
  bench.done(orderFrom(bench, 'Ashlar Grinding', 'O-1'));
  bench.done({ kind: 'receive delivery', order: 'O-1', lines: [{ line: lines.mains, count: 1 }], note: '' });
  return bench;
};

export const noCrack: Extract<Request, { kind: 'note certificate' }> = {
  kind: 'note certificate',
  order: 'O-1',
  line: lines.mains,
  certificate: 'AG 3318',
  crackTest: { by: 'magnetic particles', showed: 'no crack' },
};
