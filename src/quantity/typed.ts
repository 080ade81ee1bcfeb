/** @module A figure as a person typed it: the decimal text and the unit, so that resolution and wording are never lost. */
import { type Millimetres, mm } from './brand.ts';
import { parseDecimal } from './decimal.ts';
import { type Answer, answer, refuse } from './refusal.ts';
import { type Dimension, dimensionText, findUnit, stepToCore, toCore, unitOf, unitsOf } from './unit.ts';

export interface Typed {
  /** The decimal as typed, for example `54.980` or `2 9/16`. */
  readonly text: string;
  /** The unit's symbol as the unit list names it, for example `mm` or `in`. */
  readonly unit: string;
}

const figureForm =
  /^([+\-−]?(?:\d{1,6}[ \u00a0]+\d{1,3}\/\d{1,3}|\d{1,3}\/\d{1,3}|[\d.,]{1,80}(?:[eE][+\-−]?\d{1,4})?))[ \u00a0]*((?:1\/)?\D.{0,19})?$/;

/** Reads as thousands to half the world: one to three digits, a mark, three digits. */
const thousands = /^[+]?[1-9]\d{0,2}[.,]\d{3}$/;
/** Read to a thousandth by nobody, and often in thousands. */
const largeByNature: readonly Dimension[] = ['time', 'speed', 'count'];

/** The unit's symbol at the end of a figure, as typed; '' where there is none. */
export const unitTyped = (text: string): string => figureForm.exec(text.trim())?.[2]?.trim() ?? '';

const example = (number: string, dimension: Dimension): string => `${number} ${unitsOf(dimension)[0]}`;

const aKind = (dimension: Dimension): string =>
  `${/^[aeiou]/.test(dimension) ? 'an' : 'a'} ${dimensionText(dimension)}`;

/**
 * Reads a figure with its unit, `54.980 mm`, and keeps both as typed.
 *
 * A ratio and a count need no unit. Hours, speeds and counts such as `1,500 h` are refused, since they
 * mean one and a half to one reader and fifteen hundred to the next.
 */
export const readTyped = (text: string, dimension: Dimension): Answer<Typed> => {
  const typed = text.trim();
  const parts = figureForm.exec(typed);
  const number = parts?.[1] ?? typed;
  const decimal = parseDecimal(number);
  if (decimal.kind === 'refused') return decimal;
  if (largeByNature.includes(dimension) && thousands.test(number)) {
    const bare = number.replace(/[.,]/, '');
    return refuse('it can be read in two ways', typed, `type ${bare}, or leave out the last zeros`);
  }
  const symbol = unitTyped(typed);
  if (symbol === '' && (dimension === 'ratio' || dimension === 'count')) {
    return answer({ text: decimal.value.text, unit: unitsOf(dimension)[0] ?? '' });
  }
  if (symbol === '') {
    return refuse(
      `the unit is missing: ${aKind(dimension)} is asked for`,
      typed,
      `write for example ${example(number, dimension)}`,
    );
  }
  const unit = unitOf(symbol, dimension);
  return unit.kind === 'refused' ? unit : answer({ text: decimal.value.text, unit: unit.value.symbol });
};

/** What was typed, in the core's unit of the dimension (mm, rad, N, N·m, °C, Pa, h, rpm, kg, 1, rad/mm). */
export const amountOf = (typed: Typed, dimension: Dimension): Answer<number> => {
  const decimal = parseDecimal(typed.text);
  if (decimal.kind === 'refused') return decimal;
  const unit = unitOf(typed.unit, dimension);
  return unit.kind === 'refused' ? unit : answer(toCore(decimal.value.value, unit.value));
};

export const lengthOf = (typed: Typed): Answer<Millimetres> => {
  const length = amountOf(typed, 'length');
  return length.kind === 'refused' ? length : answer(mm(length.value));
};

/** An amount, and one step of the last digit typed, both in the core's unit. */
export interface AmountAndStep {
  readonly value: number;
  readonly step: number;
}

export const amountAndStep = (typed: Typed, dimension: Dimension): Answer<AmountAndStep> => {
  const decimal = parseDecimal(typed.text);
  if (decimal.kind === 'refused') return decimal;
  const unit = unitOf(typed.unit, dimension);
  if (unit.kind === 'refused') return unit;
  const value = toCore(decimal.value.value, unit.value);
  return answer({ value, step: stepToCore(decimal.value.resolution, unit.value) });
};

/** One step of the last digit typed, in the core's unit; 0 where the figure cannot be read. */
export const resolutionOf = (typed: Typed): number => {
  const decimal = parseDecimal(typed.text);
  const unit = findUnit(typed.unit);
  return decimal.kind === 'refused' || unit.kind === 'refused'
    ? 0
    : stepToCore(decimal.value.resolution, unit.value);
};

/** As it is shown again: `54.980 mm`. */
export const typedText = ({ text, unit }: Typed): string => (unit === '1' ? text : `${text} ${unit}`);
