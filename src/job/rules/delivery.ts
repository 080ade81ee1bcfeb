/** @module May this delivery be taken, this certificate noted, this line be sent back or taken as it is? */
import { chooseName } from '../../engine/nearest-name.ts';
import { blank, type Trouble, trouble } from '../../journal/trouble.ts';
import type { RequestOf } from '../command.ts';
import type { OrderedLine } from '../event.ts';
import type { OpenJob, Order } from '../job.ts';
import { hereOf } from '../order/here.ts';
import { orderedLines } from '../order/standing.ts';

type Found =
  | { readonly kind: 'found'; readonly order: Order; readonly line: OrderedLine }
  | { readonly kind: 'not found'; readonly why: Trouble };

const noOrder = (job: OpenJob, name: string): Trouble =>
  trouble(
    `there is no order ${name}`,
    'order',
    job.orders.size === 0 ? 'place the order first' : chooseName(name, job.orders.keys()),
  );

const lineIn = (job: OpenJob, asked: { readonly order: string; readonly line: string }): Found => {
  const order = job.orders.get(asked.order);
  if (order === undefined) return { kind: 'not found', why: noOrder(job, asked.order) };
  const line = order.lines.find((one) => one.line === asked.line);
  if (line !== undefined) return { kind: 'found', order, line };
  const names = order.lines.map((one) => one.line);
  return {
    kind: 'not found',
    why: trouble(`order ${asked.order} has no line “${asked.line}”`, 'order', chooseName(asked.line, names)),
  };
};

/** The line where some of it is here. */
const lineHere = (job: OpenJob, asked: { readonly order: string; readonly line: string }): Found => {
  const found = lineIn(job, asked);
  if (found.kind === 'not found' || hereOf(found.order, asked.line) > 0) return found;
  return {
    kind: 'not found',
    why: trouble('none of it is here', found.line.says, 'note the delivery first'),
  };
};

export const receiveDeliveryTrouble = (job: OpenJob, asked: RequestOf<'receive delivery'>): Trouble => {
  if (!job.orders.has(asked.order)) return noOrder(job, asked.order);
  if (asked.lines.length === 0)
    return trouble('nothing was received', `order ${asked.order}`, 'count what came, line by line');
  const seen = new Set<string>();
  for (const { line, count } of asked.lines) {
    const found = lineIn(job, { order: asked.order, line });
    if (found.kind === 'not found') return found.why;
    if (seen.has(line)) return trouble('it is counted twice', found.line.says, 'add the two counts');
    seen.add(line);
    const awaited = found.line.count - hereOf(found.order, line);
    if (count < 1) return trouble('none of it came', found.line.says, 'leave the line out: it stays due');
    if (count > awaited)
      return trouble(
        awaited === 0 ? 'all of it is here already' : `${count} came and ${awaited} were awaited`,
        found.line.says,
        'count again; what was not ordered goes back with the carrier',
      );
  }
  return undefined;
};

export const noteCertificateTrouble = (job: OpenJob, asked: RequestOf<'note certificate'>): Trouble => {
  const found = lineHere(job, asked);
  if (found.kind === 'not found') return found.why;
  return blank(asked.certificate, found.line.says, 'write its number, or what the paper says');
};

export const sendBackTrouble = (job: OpenJob, asked: RequestOf<'send back'>): Trouble => {
  const found = lineHere(job, asked);
  if (found.kind === 'not found') return found.why;
  const { order, line } = found;
  const here = hereOf(order, asked.line);
  if (asked.count < 1 || asked.count > here)
    return trouble(`${asked.count} go back and ${here} are here`, line.says, 'say how many go back');
  const strange = asked.places.find((place) => !line.places.includes(place));
  if (strange !== undefined)
    return trouble(`it was not ordered for “${strange}”`, line.says, chooseName(strange, line.places));
  return blank(asked.why, line.says, 'write why it goes back');
};

export const acceptLineTrouble = (job: OpenJob, asked: RequestOf<'accept line'>): Trouble => {
  const found = lineHere(job, asked);
  if (found.kind === 'not found') return found.why;
  const at = orderedLines(job).find(
    ({ order, line }) => order.order === asked.order && line.line === asked.line,
  );
  const { line } = found;
  if (at?.standing.kind === 'failed' && at.standing.cracked)
    return trouble('a cracked part is never taken in', line.says, 'plan again, or send it back');
  if (at?.standing.kind === 'taken in')
    return trouble('it is taken in already', line.says, 'nothing is left to do');
  if (at !== undefined && at.left > 0)
    return trouble(`${at.left} of ${line.count} are still to come`, line.says, 'wait for the rest');
  return blank(asked.why, line.says, 'write why it is taken as it is');
};
