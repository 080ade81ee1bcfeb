/** @module What machining takes from one side of a round size. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { takenFromSide } from './layer-left.ts';

describe('metal taken from one side', () => {
  it('is half of what the diameter changes by', () => {
    // source: TM 9-2815-205-24, p 0097-6 (the shell's wall grows by half of the undersize)
    expect(takenFromSide(54.98, 54.73)).toBeCloseTo(0.125, 9);
    expect(takenFromSide(85, 85.5)).toBeCloseTo(0.25, 9);
  });

  it('adds up over steps', () => {
    const size = fc.double({ min: 10, max: 300, noNaN: true });
    const grows = fc.double({ min: 0, max: 2, noNaN: true });
    fc.assert(
      fc.property(size, grows, grows, (from, first, second) => {
        const both = takenFromSide(from, from + first) + takenFromSide(from + first, from + first + second);
        expect(both).toBeCloseTo(takenFromSide(from, from + first + second), 9);
      }),
    );
  });
});
