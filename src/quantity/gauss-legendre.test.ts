/** @module Gauss and Legendre's integral: polynomials exactly, and known integrals to many digits. */
import { describe, expect, it } from 'vitest';
import { integral } from './gauss-legendre.ts';

describe('the integral by 20 points', () => {
  it('is exact for powers up to the 39th', () => {
    // source: ∫ x^n dx from 0 to 1 = 1 / (n + 1)
    for (let n = 0; n <= 39; n += 1) expect(integral((x) => x ** n, 0, 1)).toBeCloseTo(1 / (n + 1), 13);
  });

  it('gives known integrals, and turns its sign with its bounds', () => {
    // source: ∫ sin x from 0 to π = 2; the error function of 3/√2 (DLMF 7.2.1) = 0.997300203936740
    expect(integral(Math.sin, 0, Math.PI)).toBeCloseTo(2, 13);
    const bell = (z: number): number => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
    expect(integral(bell, -3, 3)).toBeCloseTo(0.99730020393674, 11);
    expect(integral(bell, 3, -3)).toBeCloseTo(-0.99730020393674, 11);
  });
});
