/** @module How many of an order's line are here: delivered, less what was sent back. */
import type { Order } from '../job.ts';

/** Pieces here now. */
export const hereOf = ({ since }: Pick<Order, 'since'>, line: string): number =>
  since.reduce((here, one) => {
    if (one.kind === 'delivery received')
      return one.lines.reduce((sum, came) => sum + (came.line === line ? came.count : 0), here);
    return one.kind === 'line sent back' && one.line === line ? Math.max(0, here - one.count) : here;
  }, 0);

/** What is still to come of an order, line by line. */
export const awaitedOf = (order: Order): readonly { readonly line: string; readonly count: number }[] =>
  order.lines
    .map(({ line, count }) => ({ line, count: count - hereOf(order, line) }))
    .filter(({ count }) => count > 0);
