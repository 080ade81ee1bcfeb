/** @module May this be ordered? Only what the agreed plan needs and nobody has ordered yet, at the price of the list. */
import { chooseName } from '../../engine/nearest-name.ts';
import { blank, type Trouble, trouble } from '../../journal/trouble.ts';
import type { RequestOf } from '../command.ts';
import type { OpenJob } from '../job.ts';
import { orderListOf, type SupplierList } from '../order/order-list.ts';

type Asked = RequestOf<'place order'>;

const again = 'look at the order list as it stands now, and order from that';

const lineTrouble = (list: SupplierList, { lines }: Asked): Trouble => {
  const seen = new Set<string>();
  for (const { line, says, count, cents, places } of lines) {
    const where = says === '' ? line : says;
    const wanted = list.lines.find((one) => one.line === line);
    if (wanted === undefined)
      return trouble(`“${line}” is not on the list of ${list.supplier}`, where, again);
    if (seen.has(line)) return trouble('it stands twice in the order', where, 'order it in one line');
    seen.add(line);
    if (count < 1) return trouble('none of it is ordered', where, 'leave the line out, or say how many');
    if (count > wanted.left)
      return trouble(
        wanted.left === 0 ? 'it was ordered already' : `${count} are ordered and ${wanted.left} are needed`,
        where,
        again,
      );
    if (cents !== Math.round((wanted.leftCents * count) / wanted.left))
      return trouble('it has another price', where, again);
    if (places.some((place) => !wanted.places.includes(place)))
      return trouble('it is not needed at all of these places', where, again);
  }
  return undefined;
};

const notAgreed = ({ plan, agreed }: OpenJob): Trouble => {
  if (plan === undefined)
    return trouble('no plan is chosen', 'order', 'choose a plan and have the owner agree to it');
  return agreed === undefined
    ? trouble('the owner has not agreed to the plan', 'order', 'ask the owner, and note the agreement')
    : undefined;
};

export const placeOrderTrouble = (job: OpenJob, asked: Asked): Trouble => {
  const early = notAgreed(job) ?? blank(asked.order, 'order', 'give the order a number');
  if (early !== undefined) return early;
  if (job.orders.has(asked.order))
    return trouble(`order ${asked.order} was placed already`, 'order', 'give this one another number');
  const lists = orderListOf(job);
  const list = lists.find(({ supplier }) => supplier === asked.supplier);
  if (list === undefined)
    return trouble(
      `nothing is needed from “${asked.supplier}”`,
      'order',
      chooseName(
        asked.supplier,
        lists.map(({ supplier }) => supplier),
      ),
    );
  if (asked.lines.length === 0) return trouble('nothing is ordered', asked.supplier, again);
  const strange = asked.charges.find(
    ({ says, cents }) => !list.charges.some((one) => one.says === says && one.cents === cents),
  );
  return (
    lineTrouble(list, asked) ??
    (strange && trouble(`“${strange.says}” is not to be paid with this order`, asked.supplier, again))
  );
};
