/** @module An answer or a refusal: how every expected trouble is told, in words for the fitter. */

export interface Refusal {
  /** What is wrong, in the words of the trade. */
  readonly what: string;
  /** Where: the place, the cell, the line of the file. */
  readonly where: string;
  /** What to do about it. */
  readonly remedy: string;
}

export type Answer<T> =
  | { readonly kind: 'answer'; readonly value: T }
  | { readonly kind: 'refused'; readonly refusal: Refusal };

export const answer = <T>(value: T): Answer<T> => ({ kind: 'answer', value });

export const refuse = (what: string, where: string, remedy: string): Answer<never> => ({
  kind: 'refused',
  refusal: { what, where, remedy },
});

/** One line for a terminal or a screen: `what (where): remedy`. */
export const refusalText = ({ what, where, remedy }: Refusal): string =>
  `${what}${where === '' ? '' : ` (${where})`}: ${remedy}`;
