/** @module What must be kept in mind of something shared while slots that put into it are still to come. */

/** To which digit of what is kept next each choice leads; -1 where it leads nowhere. */
interface Advance {
  /** How many digits there are next; one where nothing need be kept. */
  readonly radix: number;
  /** `next[digit * choices + choice]`. */
  readonly next: readonly number[];
  /** What is paid on the way. */
  readonly cents: readonly number[];
  readonly kept: Kept;
}

/**
 * @param slot   the slot that puts in next
 * @param later  slots that put in after it
 */
export type Kept = (slot: number, later: readonly number[]) => Advance;
