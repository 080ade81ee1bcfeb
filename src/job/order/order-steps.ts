/** @module What is left to order and to receive, as steps of deciding. */
import type { OpenJob } from '../job.ts';
import { openLines } from './open-lines.ts';
import { orderListOf } from './order-list.ts';

/** What a shop orders by other ways is not asked for once it builds. */
const toPlace = (job: OpenJob): readonly string[] => {
  const building = [...job.sheet.engine.operations.values()].some(
    ({ name, phase }) => phase !== 'strip' && job.done.has(name),
  );
  if (job.agreed === undefined || building || job.handedOver !== undefined) return [];
  return orderListOf(job)
    .filter(({ lines }) => lines.some(({ left }) => left > 0))
    .map(({ supplier }) => `place the order with ${supplier}`);
};

export const orderSteps = (job: OpenJob): { readonly of: number; readonly left: readonly string[] } => {
  const open = openLines(job);
  const place = toPlace(job);
  const receive = [...job.orders.values()]
    .filter((order) => open.some((line) => line.order === order))
    .map(({ order, supplier }) => `receive and check order ${order} from ${supplier}`);
  return { of: place.length + job.orders.size, left: [...place, ...receive] };
};
