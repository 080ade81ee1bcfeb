/** @module What a picture of a sum is drawn from: what was given, and what came of it. */
import { lengthTable } from '../../reckon/length-list.ts';
import type { Reckoned, Values } from '../../reckon/reckoning.ts';
import { knownText, unitText } from '../../reckon/result-text.ts';
import type { SvgNode } from '../svg.ts';

/** Drawn to the inputs; only ever asked for a sum that has answered. */
export type Picture = (given: Values, reckoned: Reckoned) => SvgNode;

/** A result that is a number, in the unit in which the sum gave it; undefined where the sum left it out. */
export const numberOr = ({ results }: Reckoned, key: string): number | undefined => {
  const value = results[key]?.value;
  return typeof value === 'number' ? value : undefined;
};

/** A result that the sum always gives. */
export const numberIn = (reckoned: Reckoned, key: string): number => {
  const value = numberOr(reckoned, key);
  if (value === undefined) throw new Error(`the sum gives no number ${key}`);
  return value;
};

/** A result as it is lettered beside its place: `3.195 mm`. */
export const lettered = ({ results }: Reckoned, key: string): string => {
  const result = results[key];
  return result === undefined ? '' : `${knownText(result, 2).value} ${unitText(result)}`.trim();
};

/** A table of lengths as the sum read it, mm. */
export const tableIn = ({ texts }: Values, key: string): readonly (readonly number[])[] => {
  const table = lengthTable(key, texts[key] ?? '');
  return table.kind === 'refused' ? [] : table.value;
};
