/** @module Limits in the manual's own figures, for reading. */
import { typedText } from '../quantity/typed.ts';
import type { Limits } from './engine-type.ts';

/** `54.960 mm to 54.980 mm`, in the manual's own figures. */
export const printedBounds = (limits: Limits | undefined, which: 'new' | 'wear'): string => {
  const least = limits?.printed[`${which}.least`];
  const greatest = limits?.printed[`${which}.greatest`];
  if (least && greatest) return `${typedText(least)} to ${typedText(greatest)}`;
  if (least) return `at least ${typedText(least)}`;
  return greatest ? `at most ${typedText(greatest)}` : '';
};
