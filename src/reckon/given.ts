/** @module Reads what was given to a sum: texts such as `98mm` or `98±0.05mm`, by the sum's list of inputs. */
import { coverageFactor } from '../quantity/coverage.ts';
import { parseDecimal } from '../quantity/decimal.ts';
import { type Answer, answer, type Refusal, refuse } from '../quantity/refusal.ts';
import { readTyped, unitTyped } from '../quantity/typed.ts';
import { certain, type Uncertain, uncertain } from '../quantity/uncertain.ts';
import { type Dimension, findUnit, stepToCore, toCore } from '../quantity/unit.ts';
import type { Input, Reckoned, Reckoning, Values } from './reckoning.ts';

const spread = /^(.*?)(?:±|\+\/-|\+-)(.*)$/;

const at = (key: string, text: string, { what, remedy }: Refusal): Answer<never> =>
  refuse(what, `${key}=${text.slice(0, 60)}`, remedy);

/** One side of the sign may leave the unit to the other. */
const withUnitOf = (text: string, other: string): string =>
  unitTyped(text) === '' ? `${text.trim()} ${unitTyped(other)}` : text;

const amount = (text: string, dimension: Dimension, asStep: boolean): Answer<number> => {
  const typed = readTyped(text, dimension);
  if (typed.kind === 'refused') return typed;
  const decimal = parseDecimal(typed.value.text);
  const unit = findUnit(typed.value.unit);
  if (decimal.kind === 'refused') return decimal;
  if (unit.kind === 'refused') return unit;
  return answer((asStep ? stepToCore : toCore)(decimal.value.value, unit.value));
};

/**
 * The unit of a quantity as given, on whichever side of the ± it stands.
 *
 * @param text  for example `98 ± 0.05 mm`
 * @returns the symbol as typed, '' where there is none
 * @source  none: it reads
 * @example unitGiven('98 mm ± 0.05') // 'mm'
 */
export const unitGiven = (text: string): string =>
  text
    .split(/±|\+\/-|\+-/)
    .map(unitTyped)
    .find((symbol) => symbol !== '') ?? '';

/**
 * A quantity as given: a figure with its unit, and after `±` (or `+/-`, `+-`) how well it is known.
 *
 * What stands after the sign is half the width of the interval that holds it 95 times in 100.
 *
 * @param key        names the influence
 * @param text       for example `98mm`, `98±0.05mm`, `3.858 in ± 2 thou`
 * @param dimension  what it must be a unit of
 * @returns the quantity in the core's unit; refuses what cannot be read, and a unit of something else
 * @source  the sign stands for such an interval by custom (JCGM 100:2008, 7.2.2, note); normal, so 1.96 standard uncertainties
 * @example readGiven('stroke', '98 ± 0.05 mm', 'length') // 98 mm
 */
export const readGiven = (key: string, text: string, dimension: Dimension): Answer<Uncertain> => {
  const parts = spread.exec(text);
  const [size, step] = parts === null ? [text, undefined] : [parts[1] ?? '', parts[2] ?? ''];
  if (step !== undefined && !/\d/.test(step)) {
    return refuse(
      'no figure stands after ±',
      `${key}=${text}`,
      'write how well it is known, or leave out the ±',
    );
  }
  const value = amount(step === undefined ? size : withUnitOf(size, step), dimension, false);
  if (value.kind === 'refused') return at(key, text, value.refusal);
  if (step === undefined) return answer(certain(value.value));
  const half = amount(withUnitOf(step, size), dimension, true);
  if (half.kind === 'refused') return at(key, text, half.refusal);
  if (half.value < 0)
    return refuse('what stands after ± is less than 0', `${key}=${text}`, 'leave out its sign');
  return answer(uncertain(value.value, key, half.value / coverageFactor(0.95, Infinity)));
};

const keysText = (inputs: readonly Input[]): string => inputs.map(({ key }) => key).join(', ');

const misfit = (
  { name, inputs }: Reckoning,
  texts: Readonly<Record<string, string>>,
): Refusal | undefined => {
  const unknown = Object.keys(texts).filter((key) => !inputs.some((input) => input.key === key));
  if (unknown.length > 0) {
    return {
      what: `${name} does not take ${unknown.join(', ')}`,
      where: unknown.join(', '),
      remedy: `give it ${keysText(inputs)}`,
    };
  }
  const missing = inputs.filter(
    ({ key, unlessGiven, optional }) => !Object.hasOwn(texts, key) && unlessGiven === undefined && !optional,
  );
  if (missing.length === 0) return undefined;
  const examples = missing.map(({ key, example }) => `${key}=${example}`).join(' ');
  return {
    what: `${name} needs ${keysText(missing)} too`,
    where: keysText(missing),
    remedy: `add it with its unit, for example ${examples}`,
  };
};

/** Reads all that was given to a sum; refuses unknown and missing keys, naming them, and what cannot be read. */
const readAll = (
  reckoning: Reckoning,
  texts: Readonly<Record<string, string>>,
): Answer<{ readonly values: Values; readonly texts: Readonly<Record<string, string>> }> => {
  const wrong = misfit(reckoning, texts);
  if (wrong !== undefined) return { kind: 'refused', refusal: wrong };
  const quantities: Record<string, Uncertain> = {};
  const words: Record<string, string> = {};
  const taken: Record<string, string> = {};
  for (const input of reckoning.inputs) {
    const text = Object.hasOwn(texts, input.key) ? texts[input.key] : input.unlessGiven;
    if (text === undefined) continue;
    taken[input.key] = text;
    if (input.kind === 'text') {
      const word = text.trim();
      if (input.oneOf !== undefined && !input.oneOf.includes(word)) {
        return refuse(
          `${input.title} is not understood`,
          `${input.key}=${word.slice(0, 40)}`,
          `write one of ${input.oneOf.join(', ')}`,
        );
      }
      words[input.key] = word;
      continue;
    }
    const quantity = readGiven(input.key, text, input.dimension);
    if (quantity.kind === 'refused') return quantity;
    quantities[input.key] = quantity.value;
  }
  return answer({ values: { quantities, texts: words }, texts: taken });
};

/**
 * Does a sum on what was typed.
 *
 * @param reckoning  the sum
 * @param texts      by key, as typed
 * @returns values, the texts they came from, and what came of them; refuses what cannot be read and what the sum refuses
 * @source  that of the sum
 * @example reckonTyped({ name: 'half', title: '', formula: '', source: '', inputs: [], reckon: () => answer({ results: {}, notes: [] }) }, { rod: '1mm' }) // refused
 */
export const reckonTyped = (
  reckoning: Reckoning,
  texts: Readonly<Record<string, string>>,
): Answer<{
  readonly values: Values;
  readonly texts: Readonly<Record<string, string>>;
  readonly reckoned: Reckoned;
}> => {
  const given = readAll(reckoning, texts);
  if (given.kind === 'refused') return given;
  const reckoned = reckoning.reckon(given.value.values);
  return reckoned.kind === 'refused' ? reckoned : answer({ ...given.value, reckoned: reckoned.value });
};
