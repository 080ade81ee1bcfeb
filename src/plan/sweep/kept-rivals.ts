/** @module What must be kept in mind of things that exclude one another: which of those that may still come are ruled out. */
import type { Kept } from './kept.ts';
import type { Mark, Rivals } from './problem.ts';

const nothing: Mark = { takes: 0n, bars: 0n };

/** @param before  what may be ruled out so far: one entry a digit */
export const keptRivals =
  (rivals: Rivals, before: readonly bigint[] = [0n]): Kept =>
  (slot, later) => {
    const marksOf = (each: number): readonly Mark[] =>
      (rivals.from.get(each) ?? []).map((mark) => rivals.marks[mark] ?? nothing);
    const own = marksOf(slot);
    const toCome = later.flatMap(marksOf).reduce((all, { takes }) => all | takes, 0n);
    const at = new Map<bigint, number>();
    const next: number[] = [];
    for (const barred of before)
      for (const { takes, bars } of own) {
        if ((takes & (barred | bars)) !== 0n) {
          next.push(-1);
          continue;
        }
        // Two ways that rule out the same of what is to come are alike, whatever they took.
        const left = (barred | bars) & toCome;
        const digit = at.get(left) ?? at.size;
        at.set(left, digit);
        next.push(digit);
      }
    const cents = new Array<number>(next.length).fill(0);
    return { radix: at.size, next, cents, kept: keptRivals(rivals, [...at.keys()]) };
  };
