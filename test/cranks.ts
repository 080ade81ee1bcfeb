/** @module Cranks for tests: one by its figures, and any that can turn. */
import fc from 'fast-check';
import { mm } from '../src/quantity/brand.ts';
import type { Crank } from '../src/reckon/crank.ts';
import { between } from './between.ts';

export const crankOf = (stroke: number, rod: number, pinOffset = 0): Crank => ({
  stroke: mm(stroke),
  rod: mm(rod),
  pinOffset: mm(pinOffset),
});

/** Any crank that can turn, its pin on the line or off it. */
export const cranks: fc.Arbitrary<Crank> = fc
  .tuple(between(20, 400), between(1.05, 6), between(-0.9, 0.9))
  .map(([stroke, longer, off]) => {
    const rod = (stroke / 2) * longer;
    return crankOf(stroke, rod, off * (rod - stroke / 2));
  });
