/** @module The step to the neighbours, against the sum written out and against draws of chance. */
import { describe, expect, it } from 'vitest';
import type { Uncertain } from '../quantity/uncertain.ts';
import { formAtMost } from './form.ts';
import { stepAtMost } from './step.ts';

const size = (name: string, value: number, own: number, shared = 0): Uncertain => ({
  value,
  terms: [
    { name: `a ${name}`, share: own, freedom: Number.POSITIVE_INFINITY },
    { name: 'shared', share: shared, freedom: Number.POSITIVE_INFINITY },
  ],
});

/** Uniform numbers from a fixed seed (mulberry32). */
const chances = (seed: number) => {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
};

describe('the step to the neighbours', () => {
  it('to one neighbour is as likely within a limit as their range is', () => {
    const [a, b] = [size('a', 0.1, 0.01, 0.05), size('b', 0.13, 0.012, 0.05)];
    for (const limit of [0.01, 0.03, 0.06])
      expect(stepAtMost(a, [b], limit)).toBeCloseTo(formAtMost([[a, b]], limit), 4);
  });

  it.each([
    [0.03, -0.03],
    [0.03, 0.03],
    [0.04, 0],
  ])('to two, %f and %f away, is as likely as it is among draws', (one, other) => {
    const here = size('here', 0, 0.01, 0.2);
    const next = [size('one', one, 0.01, 0.2), size('other', other, 0.015, 0.2)];
    const draw = chances(7);
    // source: Box and Muller, Annals of Mathematical Statistics 29 (1958) 610, for normal draws
    const normal = () => Math.sqrt(-2 * Math.log(1 - draw())) * Math.cos(2 * Math.PI * draw());
    const draws = 400_000;
    let within = 0;
    for (let count = 0; count < draws; count += 1) {
      const middle = 0.01 * normal();
      const a = one + 0.01 * normal();
      const b = other + 0.015 * normal();
      if (Math.max(Math.abs(a - middle), Math.abs(b - middle)) <= 0.04) within += 1;
    }
    // Draws stray by 0.0008 at the most of one standard deviation.
    expect(Math.abs(stepAtMost(here, next, 0.04) - within / draws)).toBeLessThan(0.004);
  });

  it('without a neighbour there is none, and below nothing there is no room', () => {
    expect(stepAtMost(size('a', 1, 0.1), [], 0.01)).toBe(1);
    expect(stepAtMost(size('a', 1, 0.1), [size('b', 1, 0.1)], -1)).toBe(0);
  });
});
