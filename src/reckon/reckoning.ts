/** @module What a stand-alone sum is to whoever asks for it by name: its inputs, its papers, its results. */
import type { Answer } from '../quantity/refusal.ts';
import { standardUncertainty, type Uncertain } from '../quantity/uncertain.ts';
import type { Dimension } from '../quantity/unit.ts';

interface Asked {
  /** As typed before the equals sign. */
  readonly key: string;
  readonly title: string;
  /** What is sensible, in words: `above 0`. */
  readonly range: string;
  readonly example: string;
  /** Text taken when nothing is given. */
  readonly unlessGiven?: string;
  /** May be left out, and has no text that stands for it. */
  readonly optional?: true;
}

/** A figure with its unit, and with `±` where it is not known exactly. */
export interface QuantityInput extends Asked {
  readonly kind: 'quantity';
  readonly dimension: Dimension;
}

/** Words or a list, which the sum reads itself. */
export interface TextInput extends Asked {
  readonly kind: 'text';
  /** Where only a few words will do: which. */
  readonly oneOf?: readonly string[];
}

export type Input = QuantityInput | TextInput;

/** What was given, read: quantities in the core's units, each with an influence named after its key. */
export interface Values {
  readonly quantities: Readonly<Record<string, Uncertain>>;
  readonly texts: Readonly<Record<string, string>>;
}

export interface Result {
  /** A number in the unit, or a word such as a verdict. */
  readonly value: number | string;
  readonly unit: string;
  /** Standard uncertainty in the unit; missing where every input was given as known. */
  readonly u?: number;
}

export interface Reckoned {
  readonly results: Readonly<Record<string, Result>>;
  readonly notes: readonly string[];
}

export interface Reckoning {
  readonly name: string;
  readonly title: string;
  readonly inputs: readonly Input[];
  readonly formula: string;
  readonly source: string;
  readonly reckon: (values: Values) => Answer<Reckoned>;
}

/**
 * A quantity that the sum's inputs name and that was given or has a text unless given.
 *
 * @param values  what was given
 * @param key     an input's key; any other is a mistake in the program
 * @returns the quantity in the core's unit
 * @source  none: it looks up
 * @example quantityOf({ quantities: { rod: certain(168) }, texts: {} }, 'rod') // 168 mm
 */
export const quantityOf = (values: Values, key: string): Uncertain => {
  const value = values.quantities[key];
  if (value === undefined) throw new Error(`the sum asks for ${key}, which is not among its inputs`);
  return value;
};

/** No input is known to a millionth of a millionth: what is left there is the noise of binary sums. */
const quiet = (value: number): number => Number(Number(value.toFixed(12)).toPrecision(12)) + 0;

/**
 * A number as a result, to twelve digits.
 *
 * @param x       what is known of it, in the core's unit
 * @param unit    the unit of the result
 * @param factor  what turns the core's unit into it
 * @returns value, unit and, where the value is uncertain, its standard uncertainty
 * @source  none: it writes out
 * @example result(certain(55.031 - 54.98), 'mm') // { value: 0.051, unit: 'mm' }
 */
export const result = (x: Uncertain, unit: string, factor = 1): Result => {
  const u = standardUncertainty(x) * Math.abs(factor);
  const value = quiet(x.value * factor);
  return u === 0 ? { value, unit } : { value, unit, u: quiet(u) };
};
