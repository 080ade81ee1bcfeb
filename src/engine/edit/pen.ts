/** @module What a rewriting of a file has collected so far: stretches of text to put in place of others. */
import type { Node } from 'yaml';
import type { FilePath } from '../file-path.ts';
import type { Hand } from './value-text.ts';

export interface Splice {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/** The same by path, for the parser's own writer; a value of undefined takes it out. */
export interface ValueSet {
  readonly path: FilePath;
  readonly value: unknown;
}

export interface Pen {
  readonly text: string;
  readonly hand: Hand;
  readonly splices: Splice[];
  readonly sets: ValueSet[];
  readonly put: (from: number, to: number, text: string, set?: ValueSet) => void;
  readonly change: (node: Node, text: string, set: ValueSet) => void;
}

export type RewriteNode = (pen: Pen, node: Node, value: unknown, path: FilePath) => void;

/** Where the last character of a node's value stands, without the comments and empty lines behind it. */
export const endOf = (node: Node): number => {
  const [start = 0, end = start] = node.range ?? [];
  if (!('items' in node) || ('flow' in node && node.flow === true)) return end;
  const last = (node.items as readonly unknown[]).at(-1) as
    | { value?: Node | null; key?: Node }
    | Node
    | undefined;
  if (last === undefined) return end;
  if ('range' in last) return endOf(last as Node);
  const { value, key } = last as { value?: Node | null; key?: Node };
  return value ? endOf(value) : key ? endOf(key) : end;
};

/** The beginning of the line on which a character stands. */
export const lineStart = (text: string, at: number): number => text.lastIndexOf('\n', at - 1) + 1;

/** The end of the line on which a value ends, its line end not counted: what is added there comes on the next. */
export const lineEnd = (text: string, end: number): number => {
  const last = text[end - 1] === '\n' ? end - 1 : end;
  const found = text.indexOf('\n', last);
  const at = found === -1 ? text.length : found;
  return text[at - 1] === '\r' ? at - 1 : at;
};

/** Behind the line end. */
export const nextLine = (text: string, end: number): number => {
  const found = text.indexOf('\n', text[end - 1] === '\n' ? end - 1 : end);
  return found === -1 ? text.length : found + 1;
};

/** Blanks as far as a character stands in its line. */
export const indentAt = (text: string, at: number): string => ' '.repeat(at - lineStart(text, at));
