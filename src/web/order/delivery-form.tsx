/** @module What came of an order, counted line by line. */
import { type FormEvent, useState } from 'react';
import { Button } from 'react-aria-components';
import type { Order } from '../../job/job.ts';
import { awaitedOf } from '../../job/order/here.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import { useAct } from '../journal/use-desk.tsx';
import { announce } from '../shell/announce.ts';
import { Field } from '../shell/field.tsx';
import { Refused } from '../shell/refused.tsx';
import { receiveIt } from './order-actions.ts';

const whole = /^\d{1,6}$/;

/** All that is awaited stands in the fields; what did not come is set to 0. */
export const DeliveryForm = ({ order }: { readonly order: Order }) => {
  const act = useAct();
  const awaited = awaitedOf(order);
  const [counts, setCounts] = useState<Readonly<Record<string, string>>>({});
  const [note, setNote] = useState('');
  const [refusal, setRefusal] = useState<Refusal>();
  if (awaited.length === 0) return null;
  const countOf = ({ line, count }: (typeof awaited)[number]) => counts[line] ?? String(count);
  const receive = (event: FormEvent) => {
    event.preventDefault();
    const strange = awaited.find((one) => !whole.test(countOf(one).trim()));
    if (strange)
      return setRefusal({
        what: `“${countOf(strange)}” is not a count`,
        where: order.order,
        remedy: 'count what came in whole pieces; 0 where none did',
      });
    const lines = awaited
      .map((one) => ({ line: one.line, count: Number(countOf(one)) }))
      .filter(({ count }) => count > 0);
    const refused = act(receiveIt, { order: order.order, lines, note });
    setRefusal(refused);
    if (!refused) announce(`Delivery of order ${order.order} taken in.`);
  };
  return (
    <form className="column" onSubmit={receive} aria-label={`Delivery of order ${order.order}`}>
      <h3>What came</h3>
      <div className="row">
        {awaited.map((one) => (
          <Field
            key={one.line}
            label={`${order.lines.find(({ line }) => line === one.line)?.says ?? one.line}, ${one.count} awaited`}
            value={countOf(one)}
            onChange={(text) => setCounts({ ...counts, [one.line]: text })}
            numeric
          />
        ))}
        <Field className="grow" label="Note" value={note} onChange={setNote} />
        <Button type="submit" className="first">
          {receiveIt.label}
        </Button>
      </div>
      <Refused refusal={refusal} />
    </form>
  );
};
