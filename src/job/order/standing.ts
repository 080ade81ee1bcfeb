/** @module How each line that was ordered stands: awaited, here and to be checked, taken in, or not as ordered. */
import type { EngineType } from '../../engine/engine-type.ts';
import { printedBounds } from '../../engine/printed-bounds.ts';
import { figureText, shownIn, spreadText } from '../../engine/shown-in.ts';
import { judge } from '../../measure/judge.ts';
import { type Cell, cellKey } from '../../measure/reading.ts';
import type { Sheet } from '../../measure/sheet.ts';
import type { Judged } from '../../measure/verdict-model.ts';
import type { OrderedLine } from '../event.ts';
import type { OpenJob, Order } from '../job.ts';
import { arrivalCells, arrivalOf, placesIn } from './arrival.ts';
import { showedCrack, testsLacking } from './crack-test.ts';
import { hereOf } from './here.ts';

/** What standings are worked out from. */
type Ordered = Pick<OpenJob, 'sheet' | 'orders'>;

export type LineStanding =
  /** None of it is here. */
  | { readonly kind: 'awaited' }
  /** Here as far as it came, and something is lacking: pieces, readings, a certificate. Never empty. */
  | { readonly kind: 'to check'; readonly lacking: readonly string[] }
  /** Not as ordered, in words. Never empty. */
  | { readonly kind: 'failed'; readonly says: readonly string[]; readonly cracked: boolean }
  /** All of it is here and as ordered; or taken as it is, and why. */
  | { readonly kind: 'taken in'; readonly accepted?: string }
  /** The same places were ordered again otherwise, and that has come. */
  | { readonly kind: 'given up' };

export interface LineAt {
  readonly order: Order;
  readonly line: OrderedLine;
  readonly here: number;
  /** Pieces still to come. */
  readonly left: number;
  readonly standing: LineStanding;
  /** What is measured of it on arrival, judged by the limits as made of the size ordered. */
  readonly judged: readonly Judged[];
  /** Cells to read, read or not. */
  readonly cells: readonly Cell[];
}

const sheets = new WeakMap<Sheet, Sheet>();

/** The sheet as arrivals are judged on it: by the limits as made. Readings of what was there before are off it. */
export const arrivalSheet = ({ sheet }: Pick<OpenJob, 'sheet'>): Sheet => {
  const kept = sheets.get(sheet);
  if (kept) return kept;
  const made: Sheet = { ...sheet, against: 'as made' };
  sheets.set(sheet, made);
  return made;
};

const judgedOf = (job: Ordered, line: OrderedLine): readonly Judged[] => {
  const { engine } = job.sheet;
  const component = engine.components.get(line.component ?? '');
  if (component === undefined) return [];
  return arrivalOf(engine, component).flatMap((characteristic) =>
    placesIn(engine, component, characteristic, line.places).map((place) =>
      judge(arrivalSheet(job), characteristic.name, place),
    ),
  );
};

const named = (engine: EngineType, { characteristic, place }: Judged): string =>
  `${engine.characteristics.get(characteristic)?.title ?? characteristic} at ${
    engine.places.get(place)?.title ?? place
  }`;

/** `main journal diameter at main bearing 2 is 54.712 mm ± 0.004 mm, ordered 54.720 mm to 54.740 mm`. */
const outsideWords = (engine: EngineType, judged: Judged): string => {
  const shown = shownIn(engine.characteristics.get(judged.characteristic));
  const value = judged.value === undefined ? '' : figureText(judged.value.value, shown);
  const spread = judged.expanded === undefined ? '' : ` ${spreadText(judged.expanded, shown)}`;
  return `${named(engine, judged)} is ${value}${spread}, ordered ${printedBounds(judged.limits, 'new')}`;
};

const failuresOf = (job: Ordered, order: Order, line: OrderedLine, judged: readonly Judged[]) => [
  ...(showedCrack(order, line) ? [`the crack test of ${line.says} showed a crack`] : []),
  ...judged.filter(({ verdict }) => verdict === 'outside').map((one) => outsideWords(job.sheet.engine, one)),
];

const lackingOf = (
  job: Ordered,
  order: Order,
  line: OrderedLine,
  judged: readonly Judged[],
  left: number,
) => {
  const { engine } = job.sheet;
  const unread = judged.filter(({ verdict }) => verdict === 'not yet known');
  const unsure = judged.filter(({ verdict }) => verdict === 'unsure');
  const test = testsLacking(job, order, line);
  const [first] = unread;
  return [
    ...(left > 0 ? [`${left} of ${line.count} still to come`] : []),
    ...(first === undefined
      ? []
      : [
          `${named(engine, first)} is not measured${unread.length > 1 ? `, and ${unread.length - 1} more` : ''}`,
        ]),
    ...unsure.map((one) => `${named(engine, one)} is too near its limit for how it was measured`),
    ...(test === undefined ? [] : [`no certificate of a crack test by ${test} is noted`]),
  ];
};

/** Why it was taken as it is, where somebody said so since it last came or went. */
const acceptedOf = ({ since }: Order, line: string): string | undefined => {
  const last = since.findLast(
    (one) =>
      (one.kind === 'line accepted' && one.line === line) ||
      (one.kind === 'line sent back' && one.line === line) ||
      (one.kind === 'delivery received' && one.lines.some((came) => came.line === line)),
  );
  return last?.kind === 'line accepted' ? last.why : undefined;
};

/** Whether something else has come since for the same part: the size was changed, or another supplier's is here. */
const replacedLater = (orders: readonly Order[], order: Order, line: OrderedLine): boolean =>
  orders
    .slice(orders.indexOf(order) + 1)
    .some((later) =>
      later.lines.some(
        (other) =>
          other.component === line.component &&
          line.component !== undefined &&
          other.line !== line.line &&
          line.places.every((place) => other.places.includes(place)) &&
          hereOf(later, other.line) > 0,
      ),
    );

const standingOf = (
  job: Ordered,
  orders: readonly Order[],
  order: Order,
  line: OrderedLine,
  judged: readonly Judged[],
): LineStanding => {
  if (replacedLater(orders, order, line)) return { kind: 'given up' };
  const here = hereOf(order, line.line);
  if (here === 0) return { kind: 'awaited' };
  const accepted = acceptedOf(order, line.line);
  const failures = failuresOf(job, order, line, judged);
  const cracked = showedCrack(order, line);
  if (failures.length > 0 && (accepted === undefined || cracked))
    return { kind: 'failed', says: failures, cracked };
  const lacking = lackingOf(job, order, line, judged, line.count - here);
  if (here < line.count) return { kind: 'to check', lacking };
  if (accepted !== undefined) return { kind: 'taken in', accepted };
  return lacking.length > 0 ? { kind: 'to check', lacking } : { kind: 'taken in' };
};

/** Every line of every order, oldest first, with how it stands. */
export const orderedLines = (job: Ordered): readonly LineAt[] => {
  const orders = [...job.orders.values()];
  return orders.flatMap((order) =>
    order.lines.map((line): LineAt => {
      const here = hereOf(order, line.line);
      const component = job.sheet.engine.components.get(line.component ?? '');
      const judged = here === 0 ? [] : judgedOf(job, line);
      return {
        order,
        line,
        here,
        left: Math.max(0, line.count - here),
        standing: standingOf(job, orders, order, line, judged),
        judged,
        cells: component === undefined ? [] : arrivalCells(job.sheet.engine, component, line.places),
      };
    }),
  );
};

/** Cells to be read of what has come and is not settled, in the order in which it came. */
export const cellsToCheck = (lines: readonly LineAt[]): readonly Cell[] => {
  const open = lines.filter(
    ({ here, standing }) => here > 0 && (standing.kind === 'to check' || standing.kind === 'failed'),
  );
  return [...new Map(open.flatMap(({ cells }) => cells).map((cell) => [cellKey(cell), cell])).values()];
};
