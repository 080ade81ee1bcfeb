/** @module The order list: what is still to be ordered, supplier by supplier, with prices, days and why each is there. */
import { eachOf } from '../../engine/price.ts';
import type { RequestOf } from '../command.ts';
import type { Charge } from '../event.ts';
import type { OpenJob } from '../job.ts';
import { type NeededLine, neededLines } from './needed.ts';
import { orderedCount, orderedPlaces } from './ordered.ts';

export interface ListedLine extends NeededLine {
  /** How many were ordered already. */
  readonly ordered: number;
  /** How many are to be ordered, and what these cost. */
  readonly left: number;
  readonly leftPlaces: readonly string[];
  readonly leftCents: number;
}

export interface SupplierList {
  readonly supplier: string;
  /** All that the engine needs from here, ordered or not. */
  readonly lines: readonly ListedLine[];
  /** Paid once, beside the lines that are left. */
  readonly charges: readonly Charge[];
  /** What is left to order comes to. */
  readonly cents: number;
  /** Of the slowest line that is left. */
  readonly days: number;
}

/** What orders are listed from. */
type Ordering = Pick<OpenJob, 'sheet' | 'plan' | 'done' | 'orders' | 'scopes'>;

/** Which places, and how many pieces, the first so many orders leave over. */
const leftAfter = (job: Ordering, needed: NeededLine, before: number) => {
  const { line, places, count, component } = needed;
  if (component === undefined || count !== places.length)
    return { places, count: Math.max(0, count - orderedCount(job, line, before)) };
  const had = orderedPlaces(job, line, before);
  const left = places.filter((place) => !had.has(place));
  return { places: left, count: left.length };
};

/** What was ordered before the plan was chosen is paid, and counts for no quantity of it. */
const listed = (job: Ordering, needed: NeededLine): ListedLine => {
  const { count } = leftAfter(job, needed, job.plan?.ordersBefore ?? 0);
  const left = leftAfter(job, needed, job.orders.size);
  return {
    ...needed,
    ordered: needed.count - left.count,
    left: left.count,
    leftPlaces: left.places,
    leftCents: eachOf(needed.price, count) * left.count,
  };
};

/** Set-ups that the lines left to order share; one that was ordered since the plan was chosen is paid already. */
const chargesOf = (
  job: Ordering,
  lines: readonly ListedLine[],
  others: ReadonlySet<string>,
): readonly Charge[] => {
  const sincePlan = [...job.orders.values()].slice(job.plan?.ordersBefore ?? 0);
  const paid = new Set(sincePlan.flatMap(({ charges }) => charges.map(({ says }) => says)));
  const shared = lines.filter(({ left }) => left > 0).flatMap(({ setUps }) => setUps);
  return [...new Map(shared.map((charge) => [charge.says, charge])).values()].filter(
    ({ says }) => !paid.has(says) && !others.has(says),
  );
};

/** Suppliers in the order in which the engine first needs something from them; none where no plan is chosen. */
export const orderListOf = (job: Ordering): readonly SupplierList[] => {
  const needed = neededLines(job).map((line) => listed(job, line));
  /** A set-up by one name is paid once, as the plan has it. */
  const others = new Set<string>();
  return [...Map.groupBy(needed, ({ supplier }) => supplier)].map(([supplier, lines]) => {
    const charges = chargesOf(job, lines, others);
    for (const { says } of charges) others.add(says);
    const left = lines.filter((line) => line.left > 0);
    return {
      supplier,
      lines,
      charges,
      cents: [...left.map(({ leftCents }) => leftCents), ...charges.map(({ cents }) => cents)].reduce(
        (sum, cents) => sum + cents,
        0,
      ),
      days: Math.max(0, ...left.map(({ days }) => days)),
    };
  });
};

/** What is asked of the job to order all that is left of one supplier's list. */
export const placeOrder = (
  list: SupplierList,
  { order, due, note }: { readonly order: string; readonly due: string; readonly note: string },
): RequestOf<'place order'> => ({
  kind: 'place order',
  order,
  supplier: list.supplier,
  lines: list.lines
    .filter(({ left }) => left > 0)
    .map(({ line, says, does, component, size, leftPlaces, left, leftCents }) => ({
      line,
      says,
      ...(does === undefined ? {} : { does }),
      ...(component === undefined ? {} : { component }),
      ...(size === undefined ? {} : { size }),
      places: leftPlaces,
      count: left,
      cents: leftCents,
    })),
  charges: list.charges,
  due,
  note,
});
