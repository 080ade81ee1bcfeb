/**
 * @module A sum held against a figure from outside the project, and noted for the published table of reckonings.
 *
 * Only checks that come out the same on every run belong here: what is noted is printed in docs/reckonings.md, and a
 * run that notes something else fails.
 */
import { expect, TestRunner } from 'vitest';

export interface OutsideCheck {
  /** The sum's name in the list. */
  readonly reckoning: string;
  /** A standard, handbook example, reference program; or `common practice, no source`, `from memory`. */
  readonly source: string;
  /** How far the sum lay off the figure at most, in `unit`. */
  readonly deviation: number;
  readonly allowed: number;
  readonly unit: string;
}

declare module 'vitest' {
  interface TaskMeta {
    outsideChecks?: OutsideCheck[];
  }
}

/**
 * Holds a sum's figure against a published one.
 *
 * @param reckoning  the sum's name in the list
 * @param source     where the figure comes from
 * @param unit       of all figures; `%` compares in parts of the published figure
 * @param allowed    how far off it may be: what the rounding of the published figure, or its chart, leaves open
 */
export const outsideCheck =
  (reckoning: string, source: string, unit: string, allowed: number) =>
  (got: number, published: number): void => {
    const off = Math.abs(got - published);
    const deviation = unit === '%' ? (100 * off) / Math.abs(published) : off;
    const test = TestRunner.getCurrentTest();
    if (test) {
      test.meta.outsideChecks ??= [];
      test.meta.outsideChecks.push({ reckoning, source, deviation, allowed, unit });
    }
    expect(deviation, `${reckoning}: ${got} against ${published}, ${source}`).toBeLessThanOrEqual(allowed);
  };
