/** @module A figure that the manual prints in two units, `54.970 mm (2.1642 in)`: both kept, and whether they agree. */

import { amountOf, resolutionOf, type Typed } from '../quantity/typed.ts';
import type { Dimension } from '../quantity/unit.ts';
import { findUnit, fromCore, stepFromCore } from '../quantity/unit.ts';
import type { FilePath } from './file-path.ts';

export interface PrintedPair {
  readonly path: FilePath;
  readonly dimension: Dimension;
  /** The one that is reckoned with. */
  readonly figure: Typed;
  /** The one in brackets. */
  readonly also: Typed;
}

const inBrackets = /^([^()]*[^()\s])\s*\(([^()]*)\)$/;

/** The figure and, where one stands in brackets behind it, the same in another unit. */
export const pairTyped = (text: string): { readonly figure: string; readonly also?: string } => {
  const parts = inBrackets.exec(text.trim());
  return parts === null ? { figure: text } : { figure: parts[1] ?? '', also: parts[2] ?? '' };
};

/** What one figure of a pair is in the unit of the other, in that unit, and how far the print may stray there. */
const seenIn = (
  from: Typed,
  unit: Typed,
  dimension: Dimension,
): { readonly value: number; readonly printed: number; readonly step: number } | undefined => {
  const value = amountOf(from, dimension);
  const printed = amountOf(unit, dimension);
  const target = findUnit(unit.unit);
  if (value.kind === 'refused' || printed.kind === 'refused' || target.kind === 'refused') return undefined;
  return {
    value: fromCore(value.value, target.value),
    printed: fromCore(printed.value, target.value),
    step: stepFromCore(resolutionOf(unit), target.value),
  };
};

/** For the noise of binary fractions at the very edge of one step. */
const edge = 1 + 1e-9;

/**
 * What the printed pair should have been, where its two figures disagree.
 *
 * Makers convert one of the two and round or cut it off at its last digit, and nobody can tell which came first:
 * the pair agrees when either, converted, lies within one step of the last printed digit of the other.
 *
 * @param pair  both figures as printed
 * @returns undefined where they agree; else each figure in the unit of the other, unrounded
 * @source  common practice, no source; the inch is 25.4 mm by definition
 */
export const pairTrouble = ({
  figure,
  also,
  dimension,
}: PrintedPair): { readonly inAlso: number; readonly inFigure: number } | undefined => {
  const there = seenIn(figure, also, dimension);
  const back = seenIn(also, figure, dimension);
  if (there === undefined || back === undefined) return undefined;
  const agrees = [there, back].some(({ value, printed, step }) => Math.abs(value - printed) <= step * edge);
  return agrees ? undefined : { inAlso: there.value, inFigure: back.value };
};
