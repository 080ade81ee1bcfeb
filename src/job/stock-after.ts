/** @module What an event about loose parts does to the stock and to what is to go where. */
import type { Signed } from '../journal/event.ts';
import type { Fact } from './event.ts';
import type { OpenJob } from './job.ts';

type StockFact = Extract<Fact, { kind: 'part measured' | 'part set aside' | 'parts assigned' }>;

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
    ...job,
    stock: new Map(job.stock).set(fact.component, parts),
    assigned: new Map(job.assigned).set(fact.component, places),
  };
};
