/** @module What an event about loose parts does to the stock and to what is to go where. */
import type { Signed } from '../journal/event.ts';
import { fittedSize, withReceived } from '../measure/fitted-size.ts';
import type { Fact } from './event.ts';
import type { OpenJob } from './job.ts';
import { ownCells } from './order/arrival.ts';
import { setAside } from './set-aside.ts';

type StockFact = Extract<Fact, { kind: 'part measured' | 'part set aside' | 'parts assigned' }>;

/** A part of another size than was there is another part: what was read of the old one says nothing of it. */
const withSizesOf = (job: OpenJob, fact: Extract<Fact, { kind: 'parts assigned' }>): OpenJob => {
  const component = job.sheet.engine.components.get(fact.component);
  if (component === undefined) return job;
  let now = job;
  for (const { place, parts } of fact.places) {
    const size = now.stock.get(component.name)?.get(parts[0] ?? '')?.size;
    if (size === undefined || size === fittedSize(now.sheet, component.name, place)) continue;
    const sheet = withReceived(now.sheet, component.name, [place], size);
    now = setAside({ ...now, sheet }, ownCells(sheet.engine, component, [place]));
  }
  return now;
};

export const stockAfter = (job: OpenJob, fact: StockFact, id: string, signed: Signed): OpenJob => {
  const parts = new Map(job.stock.get(fact.component));
  const places = new Map(job.assigned.get(fact.component));
  switch (fact.kind) {
    case 'part measured': {
      const { kind: _, component: __, part, ...told } = fact;
      parts.set(part, { ...told, id, ...signed });
      break;
    }
    case 'part set aside':
      parts.delete(fact.part);
      // Its place is to be served anew.
      for (const [place, at] of places) if (at.parts.includes(fact.part)) places.delete(place);
      break;
    case 'parts assigned':
      for (const { place, parts: taken } of fact.places) places.set(place, { parts: taken, ...signed });
      break;
    default:
      fact satisfies never;
  }
  return {
    ...(fact.kind === 'parts assigned' ? withSizesOf(job, fact) : job),
    stock: new Map(job.stock).set(fact.component, parts),
    assigned: new Map(job.assigned).set(fact.component, places),
  };
};
