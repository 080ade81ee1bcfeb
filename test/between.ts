/** @module Numbers for properties, spread evenly: doubles as they are stored would nearly all be tiny. */
import fc from 'fast-check';

/** Some number from one to the other, ends included, in a million steps. */
export const between = (least: number, greatest: number): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: 1_000_000 }).map((n) => least + ((greatest - least) * n) / 1_000_000);
