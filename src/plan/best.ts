/** @module What finds best plans: the least cost of what is left open, then days, new parts and a stable order. */
import type { Option, Plan } from './plan-model.ts';

/** The one best combination of what was open. */
export interface Best {
  readonly kind: 'best';
  /** In the order of the options. */
  readonly chosen: readonly Option[];
  readonly cents: number;
  readonly provedBy: Plan['provedBy'];
}

/** Which options are open; all slots, couplings and demands of the model hold besides. */
export type Open = (option: Option) => boolean;

/**
 * Finds the best combination of the options that are open: least cost, then fewest days, then fewest new parts, then
 * the first in the order of the slots and their options. What it gives is proved.
 *
 * @returns 'no plan' where none keeps the rules; 'stopped' where it was not proved in the time allowed
 */
export type FindBest = (open: Open) => Promise<Best | 'no plan' | 'stopped'>;

export const everything: Open = () => true;
