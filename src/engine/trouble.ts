/** @module What is wrong in an engine type file, with the line and column where it stands. */
import type { Refusal } from '../quantity/refusal.ts';

export interface Trouble extends Refusal {
  /** An error must be mended before the type can be used; a warning wants a second look. */
  readonly weight: 'error' | 'warning';
  /** 1 and up. */
  readonly line: number;
  readonly column: number;
}
