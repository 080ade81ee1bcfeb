/** @module Receiving: what came is counted, measured against what was ordered, and taken in, sent back or planned anew. */
import { useCallback, useMemo, useState } from 'react';
import { Link } from 'wouter';
import { cellTitle } from '../../job/cell-title.ts';
import type { OpenJob, Order } from '../../job/job.ts';
import { arrivalSheet, cellsToCheck, type LineAt, orderedLines } from '../../job/order/standing.ts';
import { type Cell, cellKey } from '../../measure/reading.ts';
import { cellAfter } from '../../measure/scheme.ts';
import { useJob, useKeeper } from '../journal/use-desk.tsx';
import { Entry } from '../measure/entry.tsx';
import { VerdictShown, verdictLine, verdictShort } from '../measure/verdict-shown.tsx';
import { announce } from '../shell/announce.ts';
import { addressOf } from '../shell/phases.ts';
import { ThreeAnswers } from '../shell/three-answers.tsx';
import { DeliveryForm } from './delivery-form.tsx';
import { LineShown } from './line-shown.tsx';

/** The job as what comes is measured in it: by the limits as made of the size ordered. */
const asOrdered = (job: OpenJob): OpenJob => ({ ...job, sheet: arrivalSheet(job) });

const Check = ({
  job,
  cells,
  read,
  onRead,
}: {
  readonly job: OpenJob;
  readonly cells: readonly Cell[];
  readonly read: Cell | undefined;
  readonly onRead: (cell: Cell) => void;
}) => {
  const keeper = useKeeper();
  const arrived = useMemo(() => asOrdered(job), [job]);
  const [{ at, turn }, stand] = useState<{ readonly at?: Cell; readonly turn: number }>({ turn: 0 });
  const unread = cells.find((cell) => !arrived.sheet.readings.has(cellKey(cell)));
  const known = at && cells.some((cell) => cellKey(cell) === cellKey(at)) ? at : undefined;
  const cell = known ?? unread ?? cells[0];
  const taken = useCallback(
    (one: Cell) => {
      const now = keeper.desk().job;
      if (now.kind !== 'open') return;
      const next = cellAfter(cells, one, now.sheet);
      onRead(one);
      stand((before) => ({ ...(next && { at: next }), turn: before.turn + 1 }));
      announce(
        `${verdictLine(asOrdered(now), one)}.${next ? ` Next: ${cellTitle(now.sheet.engine, next)}.` : ''}`,
      );
    },
    [cells, keeper, onRead],
  );
  if (!cell) return null;
  return (
    <section className="part" aria-label="Measured on arrival">
      <h2>Measured on arrival</h2>
      <label className="field">
        Size to read
        <select
          value={cellKey(cell)}
          onChange={(event) => {
            const chosen = cells.find((one) => cellKey(one) === event.target.value);
            if (chosen) stand((before) => ({ at: chosen, turn: before.turn + 1 }));
          }}
        >
          {cells.map((one) => (
            <option key={cellKey(one)} value={cellKey(one)}>
              {cellTitle(job.sheet.engine, one)}
              {arrived.sheet.readings.has(cellKey(one)) ? `, ${verdictShort(arrived, one)}` : ''}
            </option>
          ))}
        </select>
      </label>
      <Entry job={arrived} cell={cell} turn={turn} onTaken={taken} />
      <VerdictShown job={arrived} cell={read ?? cell} />
    </section>
  );
};

const rightWords = (lines: readonly LineAt[]): string => {
  const failed = lines.filter(({ standing }) => standing.kind === 'failed').length;
  const open = lines.filter(({ standing }) => standing.kind === 'awaited' || standing.kind === 'to check');
  if (lines.length === 0) return 'nothing is ordered yet';
  if (failed > 0) return `${failed} not as ordered`;
  return open.length > 0 ? `${open.length} of ${lines.length} lines not taken in yet` : 'all is taken in';
};

const nowWords = (job: OpenJob, lines: readonly LineAt[], cells: readonly Cell[]): string => {
  const unread = cells.find((cell) => !job.sheet.readings.has(cellKey(cell)));
  if (unread) return `read ${cellTitle(job.sheet.engine, unread)}`;
  if (lines.some(({ standing }) => standing.kind === 'failed')) return 'send it back, or plan again';
  const awaited = lines.find(({ left, standing }) => left > 0 && standing.kind !== 'given up');
  if (awaited) return `wait for order ${awaited.order.order} from ${awaited.order.supplier}`;
  return lines.length === 0 ? 'place the orders first' : 'go on to Build';
};

export const ReceivingSheet = () => {
  const job = useJob();
  const lines = useMemo(() => orderedLines(job), [job]);
  const cells = useMemo(() => cellsToCheck(lines), [lines]);
  const [read, setRead] = useState<Cell>();
  const failed = lines.filter(({ standing }) => standing.kind === 'failed');
  const byOrder: ReadonlyMap<Order, readonly LineAt[]> = Map.groupBy(lines, ({ order }) => order);
  return (
    <>
      <ThreeAnswers
        where="what comes, against what was ordered"
        now={job.handedOver ? 'nothing: the journal is closed' : nowWords(job, lines, cells)}
        right={rightWords(lines)}
      />
      {failed.length > 0 && !job.handedOver ? (
        <p className="note" data-failed={failed.length}>
          What is not as ordered is not taken in.{' '}
          <Link href={addressOf(job.head.event?.job ?? '', 'decide')}>Plan again</Link>: the plan takes it
          into account. Or send it back below.
        </p>
      ) : null}
      {job.handedOver || cells.length === 0 ? null : (
        <Check job={job} cells={cells} read={read} onRead={setRead} />
      )}
      {[...byOrder].map(([order, own]) => (
        <section key={order.order} className="part" aria-label={`Order ${order.order}`}>
          <h2>
            {order.order}, {order.supplier}
          </h2>
          <p className="faint">
            placed {order.at.slice(0, 10)} by {order.by}, due {order.due}
            {order.note === '' ? '' : `; ${order.note}`}
          </p>
          <ul className="steps">
            {own.map((at) => (
              <LineShown key={at.line.line} at={at} />
            ))}
          </ul>
          {job.handedOver ? null : <DeliveryForm key={order.since.length} order={order} />}
        </section>
      ))}
    </>
  );
};
