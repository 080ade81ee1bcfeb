/** @module A value written as an engine type file writes it: entries on lines of their own, what is small in braces. */
import { parse, type Scalar } from 'yaml';

export type Quotes = Scalar['type'];

/** A file written as JSON stays JSON. */
export interface Hand {
  readonly json: boolean;
  readonly newline: string;
}

/** Longer than this a value in braces is hard to read. */
const widest = 100;

const readsBack = (text: string, value: string): boolean => {
  try {
    return parse(`k: ${text}`)?.k === value && parse(`{ k: ${text} }`)?.k === value;
  } catch {
    return false;
  }
};

// Begins with a letter or a digit, holds nothing that means something in YAML, inside braces or out.
const plainForm = /^[\p{L}\p{N}](?:[^,[\]{}#&*!|>'"%@`:\p{C}]|:(?!\s|$))*$/u;
/** Some readers of YAML make dates of these. */
const dateForm = /^\d{4}-\d{1,2}-\d{1,2}/;
const needsEscapes = /[\p{C}\p{Zl}\p{Zp}\u0085]/u;

const words = (value: string, { json }: Hand, quotes: Quotes): string => {
  if (json || quotes === 'QUOTE_DOUBLE' || needsEscapes.test(value)) return JSON.stringify(value);
  const single = `'${value.replaceAll("'", "''")}'`;
  if (quotes === 'QUOTE_SINGLE') return single;
  return plainForm.test(value) && !dateForm.test(value) && value.trim() === value && readsBack(value, value)
    ? value
    : single;
};

export const isEntries = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** A value on one line; a text in the quotes that it stood in before. */
export const flowText = (value: unknown, hand: Hand, quotes?: Quotes): string => {
  if (typeof value === 'string') return words(value, hand, quotes);
  if (Array.isArray(value)) return `[${value.map((item) => flowText(item, hand)).join(', ')}]`;
  if (!isEntries(value)) return String(value ?? null);
  const entries = Object.entries(value);
  if (entries.length === 0) return '{}';
  return `{ ${entries.map(([key, item]) => `${keyText(key, hand)}: ${flowText(item, hand)}`).join(', ')} }`;
};

export const keyText = (key: string, hand: Hand): string => words(key, hand, undefined);

const lined = (value: unknown, hand: Hand): boolean =>
  !hand.json &&
  (isEntries(value) || Array.isArray(value)) &&
  Object.keys(value).length > 0 &&
  ((isEntries(value) && Object.keys(value).length > 4) || flowText(value, hand).length > widest);

/** What stands behind a dash: an entry's first key beside it, the others under that. */
export const itemText = (value: unknown, indent: string, hand: Hand): string =>
  lined(value, hand) && isEntries(value) ? linesOf(value, `${indent}  `, hand) : flowText(value, hand);

const linesOf = (value: Readonly<Record<string, unknown>>, indent: string, hand: Hand): string =>
  Object.entries(value)
    .map(([key, item]) => entryText(key, item, indent, hand))
    .join(`${hand.newline}${indent}`);

/** A key with its value; the lines below the first begin at the indent. `asLines`: an entry of its own. */
export const entryText = (
  key: string,
  value: unknown,
  indent: string,
  hand: Hand,
  asLines = false,
): string => {
  const name = keyText(key, hand);
  if (!lined(value, hand) && !(asLines && !hand.json && isEntries(value) && Object.keys(value).length > 0))
    return `${name}: ${flowText(value, hand)}`;
  const inner = `${indent}  `;
  if (Array.isArray(value)) {
    const items = value.map((item) => `- ${itemText(item, inner, hand)}`);
    return `${name}:${hand.newline}${inner}${items.join(`${hand.newline}${inner}`)}`;
  }
  return isEntries(value)
    ? `${name}:${hand.newline}${inner}${linesOf(value, inner, hand)}`
    : `${name}: ${flowText(value, hand)}`;
};
