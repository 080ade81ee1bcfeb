/** @module Work of which it is not said how long it takes cannot be shared out by time. */
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import type { Precedence } from './precedence.ts';

/** Refuses where operations have no minutes, and names them. */
export const untold = ({ operations }: Precedence, where: string): Answer<undefined> => {
  const names = operations.flatMap(({ name, minutes }) => (minutes === undefined ? [name] : []));
  if (names.length === 0) return answer(undefined);
  return refuse(
    `it is not said how long ${names.length === 1 ? 'this takes' : `these ${names.length} take`}: ${names
      .slice(0, 5)
      .join(', ')}${names.length > 5 ? ' …' : ''}`,
    where,
    'give each operation its `minutes` in the engine type',
  );
};
