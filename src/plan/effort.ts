/** @module How much is done for an answer, who is told how far it is, and who may stop it. */
import type { Stopped } from './plan-model.ts';

export interface Effort {
  /** Told from time to time which share is done, 0 to 1. */
  readonly progress?: (share: number) => void;
  /** Asked from time to time; true ends the work without an answer. */
  readonly stop?: () => boolean;
  /** States that the sweep may hold at once before the general solver is asked; 0 leaves everything to that. */
  readonly widest?: number;
}

export const stoppedAt = (where: string): Stopped => ({
  kind: 'stopped',
  what: 'the plan was not proved in the time allowed',
  where,
  remedy: 'fix an option or two by hand, or ask for fewer offers, and plan again',
});
