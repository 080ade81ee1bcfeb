/** @module Inputs of a sum, written in one line each. */
import type { Dimension } from '../quantity/unit.ts';
import type { QuantityInput, TextInput } from './reckoning.ts';

/**
 * A figure with its unit that a sum takes.
 *
 * @param key        as typed before the equals sign
 * @param dimension  what it must be a unit of
 * @param title      what it is
 * @param range      what is sensible, in words
 * @param example    as it may be typed
 * @param rest       whether it may be left out, and what is taken then
 * @returns the input
 * @source  none: it names
 * @example quantityInput('rod', 'length', 'rod', 'above 0', '168mm').kind // 'quantity'
 */
export const quantityInput = (
  key: string,
  dimension: Dimension,
  title: string,
  range: string,
  example: string,
  rest: Pick<QuantityInput, 'unlessGiven' | 'optional'> = {},
): QuantityInput => ({ kind: 'quantity', key, dimension, title, range, example, ...rest });

/**
 * Words or a list that a sum takes.
 *
 * @param key      as typed before the equals sign
 * @param title    what it is
 * @param example  as it may be typed
 * @param rest     its range in words, which words alone will do, whether it may be left out
 * @returns the input
 * @source  none: it names
 * @example textInput('hub', 'what the hub is made of', 'steel', { oneOf: ['steel', 'bronze'] }).range // 'steel, bronze'
 */
export const textInput = (
  key: string,
  title: string,
  example: string,
  rest: Partial<Pick<TextInput, 'range' | 'oneOf' | 'unlessGiven' | 'optional'>> = {},
): TextInput => ({ kind: 'text', key, title, example, range: rest.oneOf?.join(', ') ?? 'in words', ...rest });
