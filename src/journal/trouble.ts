/** @module What every rule answers: nothing where it is kept, else what is wrong, where, and what to do. */
import type { Refusal } from '../quantity/refusal.ts';
import { amountOf, type Typed, typedText } from '../quantity/typed.ts';
import type { Dimension } from '../quantity/unit.ts';

export type Trouble = Refusal | undefined;

export const trouble = (what: string, where: string, remedy: string): Refusal => ({ what, where, remedy });

/** `a, b or c`. */
export const orList = (names: readonly string[]): string =>
  names.length < 2 ? (names[0] ?? 'none') : `${names.slice(0, -1).join(', ')} or ${names.at(-1)}`;

/** Words that must be there. */
export const blank = (text: string, where: string, remedy: string): Trouble =>
  text.trim() === '' ? trouble('nothing is written', where, remedy) : undefined;

interface Span {
  readonly above?: number;
  readonly from?: number;
}

/** A figure that cannot be read, has a unit of the wrong kind, or is too small to make sense. */
export const badFigure = (
  figure: Typed | undefined,
  dimension: Dimension,
  where: string,
  span: Span = {},
): Trouble => {
  if (figure === undefined) return undefined;
  const amount = amountOf(figure, dimension);
  if (amount.kind === 'refused') return { ...amount.refusal, where };
  if (span.above !== undefined && !(amount.value > span.above))
    return trouble(`${typedText(figure)} is not above ${span.above}`, where, 'type it again');
  if (span.from !== undefined && !(amount.value >= span.from))
    return trouble(`${typedText(figure)} is less than ${span.from}`, where, 'type it again');
  return undefined;
};
