/** @module The order of work: every operation after what must come before it, and otherwise as the engine type lists them. */
import type { Operation } from '../engine/engine-type.ts';
import { leastFirst } from './least.ts';
import type { Precedence } from './precedence.ts';

/**
 * One order in which the operations can be worked, the same every time: of those that are free, the first in the
 * engine type.
 *
 * @returns every operation once; fewer where they go round in a circle
 */
export const orderOf = ({ operations, before, after }: Precedence): readonly Operation[] => {
  const lacking = before.map(({ length }) => length);
  const free = leastFirst<number>((a, b) => a - b);
  for (const [at, count] of lacking.entries()) if (count === 0) free.put(at);
  const order: Operation[] = [];
  for (let at = free.take(); at !== undefined; at = free.take()) {
    const operation = operations[at];
    if (operation) order.push(operation);
    for (const later of after[at] ?? []) {
      const left = (lacking[later] ?? 0) - 1;
      lacking[later] = left;
      if (left === 0) free.put(later);
    }
  }
  return order;
};
