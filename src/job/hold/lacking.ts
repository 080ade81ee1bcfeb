/** @module What an operation lacks: in words, what to do about it, where that is done, and whether anybody may go on without it. */
import type { Cell } from '../../measure/reading.ts';

/** Where what is lacking is put right. */
export type GoTo =
  | { readonly kind: 'cell'; readonly cell: Cell }
  | { readonly kind: 'operation'; readonly operation: string }
  | { readonly kind: 'phase'; readonly phase: 'measure' | 'decide' | 'strip' | 'build' | 'run' }
  | { readonly kind: 'orders' };

export interface Lacking {
  readonly says: string;
  readonly remedy: string;
  /** Proof is never overruled; the order of work, and a part's own place, may be, by a named person with a reason. */
  readonly overrule: 'by a named person' | 'never';
  /** Left out where it is put right at the operation itself. */
  readonly goTo?: GoTo;
}

export const lacking = (says: string, remedy: string, goTo?: GoTo): Lacking => ({
  says,
  remedy,
  overrule: 'never',
  ...(goTo && { goTo }),
});

/** What is lacking of what a named person may answer for, as the order of work is. */
export const outOfOrder = (...said: Parameters<typeof lacking>): Lacking => ({
  ...lacking(...said),
  overrule: 'by a named person',
});
