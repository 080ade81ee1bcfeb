/** @module Orders: what the engine needs from each supplier and why, placed with a number and a day, and printed. */
import { type FormEvent, useState } from 'react';
import { Button } from 'react-aria-components';
import type { OpenJob } from '../../job/job.ts';
import { type ListedLine, orderListOf, type SupplierList } from '../../job/order/order-list.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import { orderPage } from '../../record/order-page.ts';
import { amount, money } from '../decide/plan-words.ts';
import { useAct, useJob } from '../journal/use-desk.tsx';
import { announce } from '../shell/announce.ts';
import { Field } from '../shell/field.tsx';
import { Refused } from '../shell/refused.tsx';
import { ThreeAnswers } from '../shell/three-answers.tsx';
import { placeIt } from './order-actions.ts';
import { PaperShown } from './paper-shown.tsx';

const dayIn = (days: number): string => {
  const day = new Date();
  day.setDate(day.getDate() + Math.ceil(days));
  return `${day.getFullYear()}-${String(day.getMonth() + 1).padStart(2, '0')}-${String(day.getDate()).padStart(2, '0')}`;
};

/** The next free number of this job: `J-3/1`. */
const nextNumber = ({ booked, orders }: OpenJob): string => {
  let at = orders.size + 1;
  while (orders.has(`${booked.number}/${at}`)) at += 1;
  return `${booked.number}/${at}`;
};

const OneLine = ({ line }: { readonly line: ListedLine }) => (
  <tr>
    <th scope="row">
      {line.says}
      <span className="hint" style={{ display: 'block', fontWeight: 400 }}>
        {line.why.join('; ')}
      </span>
    </th>
    <td className="figure">{line.count}</td>
    <td className="figure">{line.left === 0 ? '✓ ordered' : line.left}</td>
    <td className="figure">{line.left === 0 ? '' : line.days}</td>
    <td className="figure">{line.left === 0 ? '' : amount(line.leftCents)}</td>
  </tr>
);

const PlaceForm = ({ list }: { readonly list: SupplierList }) => {
  const job = useJob();
  const act = useAct();
  const [typed, setOrder] = useState<string>();
  const order = typed ?? nextNumber(job);
  const [due, setDue] = useState(() => dayIn(list.days));
  const [note, setNote] = useState('');
  const [refusal, setRefusal] = useState<Refusal>();
  const place = (event: FormEvent) => {
    event.preventDefault();
    const refused = act(placeIt, { list, order, due, note });
    setRefusal(refused);
    if (!refused) announce(`Order ${order} placed with ${list.supplier}.`);
  };
  return (
    <>
      <form className="row" onSubmit={place} aria-label={`Order with ${list.supplier}`}>
        <Field label="Our number for it" value={order} onChange={setOrder} required />
        <Field label="Here by, as 2026-03-09" value={due} onChange={setDue} required />
        <Field className="grow" label="Note" value={note} onChange={setNote} />
        <Button type="submit" className="first" isDisabled={!placeIt.enabled(job)}>
          {placeIt.label}
        </Button>
      </form>
      {placeIt.enabled(job) || job.handedOver ? null : (
        <p className="faint">Nothing is ordered before the owner has agreed to the plan.</p>
      )}
      <Refused refusal={refusal} />
    </>
  );
};

const OneSupplier = ({ list }: { readonly list: SupplierList }) => {
  const job = useJob();
  const { currency } = job.booked;
  const left = list.lines.filter((line) => line.left > 0);
  const placed = [...job.orders.values()].filter(({ supplier }) => supplier === list.supplier);
  const paper = {
    ...list,
    lines: left.map((line) => ({ ...line, count: line.left, cents: line.leftCents })),
  };
  return (
    <section className="part" aria-label={list.supplier}>
      <h2>{list.supplier}</h2>
      {left.length === 0 ? (
        <p>✓ All is ordered from here.</p>
      ) : (
        <p className="total">
          <span className="figure">{money(list.cents, currency)}</span>, {list.days} days
        </p>
      )}
      {placed.map(({ order, due, at, by }) => (
        <p key={order} data-order={order}>
          <strong>✓ {order} placed</strong>, due {due}{' '}
          <span className="faint">
            ({by}, {at.slice(0, 10)})
          </span>
        </p>
      ))}
      <section className="scroll" aria-label={`Lines for ${list.supplier}`}>
        <table>
          <thead>
            <tr>
              <th scope="col">What, and why</th>
              <th scope="col">Needed</th>
              <th scope="col">To order</th>
              <th scope="col">Days</th>
              <th scope="col">Price, {currency}</th>
            </tr>
          </thead>
          <tbody>
            {list.lines.map((line) => (
              <OneLine key={line.line} line={line} />
            ))}
            {list.charges.map(({ says, cents }) => (
              <tr key={says}>
                <th scope="row">{says}, paid once</th>
                <td />
                <td />
                <td />
                <td className="figure">{amount(cents)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {left.length === 0 ? null : <PlaceForm key={placed.length} list={list} />}
      <PaperShown
        title={`Order to ${list.supplier}`}
        html={orderPage(job, left.length > 0 ? [...placed, paper] : placed)}
      />
    </section>
  );
};

export const OrdersSheet = () => {
  const job = useJob();
  const lists = orderListOf(job);
  const left = lists.filter(({ lines }) => lines.some((line) => line.left > 0));
  const cents = left.reduce((sum, list) => sum + list.cents, 0);
  const [next] = left;
  return (
    <>
      <ThreeAnswers
        where="ordering, supplier by supplier"
        now={
          job.plan === undefined
            ? 'choose a plan first'
            : next === undefined
              ? 'receive and check what comes'
              : job.agreed === undefined
                ? 'have the owner agree first'
                : `place the order with ${next.supplier}`
        }
        right={
          next === undefined
            ? `${job.orders.size} orders placed`
            : `${money(cents, job.booked.currency)} to order from ${left.length} suppliers`
        }
      />
      {lists.length === 0 ? (
        <p>{job.plan === undefined ? 'No plan is chosen yet.' : 'The plan needs nothing from anybody.'}</p>
      ) : null}
      {lists.map((list) => (
        <OneSupplier key={list.supplier} list={list} />
      ))}
    </>
  );
};
