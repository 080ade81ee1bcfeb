/** @module What is awaited or not as ordered, and goes in with an operation. */
import type { Operation } from '../../engine/engine-type.ts';
import type { OpenJob } from '../job.ts';
import { openLines } from '../order/open-lines.ts';
import type { LineAt } from '../order/standing.ts';
import { standingWords } from '../order/standing-words.ts';
import { type Lacking, lacking } from './lacking.ts';

export const notTakenIn = ({ order, line, standing }: LineAt): Lacking =>
  lacking(
    `${line.says}, order ${order.order}, is not taken in: ${standingWords(standing)}`,
    'receive and check it first',
    { kind: 'orders' },
  );

export const lackingParts = (job: OpenJob, { phase, at, needs }: Operation): readonly Lacking[] => {
  if (phase === 'strip' || job.orders.size === 0) return [];
  return openLines(job)
    .filter(({ line }) => {
      const component = job.sheet.engine.components.get(line.component ?? '');
      if (component === undefined) return false;
      return component.at === at || component.judgedBy.some((name) => needs.includes(name));
    })
    .map(notTakenIn);
};
