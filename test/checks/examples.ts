/**
 * @module Examples in doc comments, found and run: `@example expression // expected`.
 *
 * The expression sees what its own module and the quantity modules export. What is expected is a number,
 * true to half a unit of its last digit, with the unit after it for the reader; `refused`; a text as it
 * stands; or any other value written as code. An answer and an uncertain value stand for the value in them.
 */
import { isDeepStrictEqual } from 'node:util';
import type { TextFile } from './files.ts';

export interface Example {
  /** `path:line`. */
  readonly at: string;
  readonly expression: string;
  readonly expected: string;
}

type Names = Readonly<Record<string, unknown>>;

const comments = /\/\*\*[\s\S]*?\*\//g;
const lineStart = /^\s*(\/\*\*|\*(?!\/))? ?/;

/** The text under each `@example` of a comment, by line. */
const exampleLines = (comment: string): readonly { offset: number; text: string }[] => {
  let inside = false;
  return comment
    .replace(/\s*\*\/$/, '')
    .split('\n')
    .map((line) => line.replace(lineStart, ''))
    .flatMap((line, offset) => {
      if (/^@\w/.test(line)) inside = line.startsWith('@example');
      const text = line.replace(/^@example/, '').trim();
      return inside && text !== '' && !text.startsWith('```') ? [{ offset, text }] : [];
    });
};

/** Every example of a file; one may run over several lines, up to the one that says what is expected. */
export const examplesIn = ({ path, text }: TextFile): readonly Example[] =>
  [...text.matchAll(comments)].flatMap((match) => {
    const firstLine = text.slice(0, match.index).split('\n').length;
    const found: Example[] = [];
    let pending = '';
    let start = '';
    for (const { offset, text: line } of exampleLines(match[0])) {
      if (pending === '') start = `${path}:${firstLine + offset}`;
      const cut = line.lastIndexOf(' // ');
      pending += `${cut < 0 ? line : line.slice(0, cut)}\n`;
      if (cut < 0) continue;
      found.push({
        at: start,
        expression: pending.trim().replace(/;$/, ''),
        expected: line.slice(cut + 4).trim(),
      });
      pending = '';
    }
    if (pending !== '') found.push({ at: start, expression: pending.trim(), expected: '' });
    return found;
  });

const run = (expression: string, names: Names): unknown =>
  new Function(...Object.keys(names), `'use strict'; return (${expression}\n);`)(...Object.values(names));

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;

/** The value in an answer, and in an uncertain value. */
const inner = (value: unknown): unknown => {
  if (!isObject(value)) return value;
  if (value.kind === 'answer') return inner(value.value);
  return 'terms' in value && typeof value.value === 'number' ? value.value : value;
};

const shown = (value: unknown): string =>
  typeof value === 'string' ? value : (JSON.stringify(value) ?? String(value));

const wrongNumber = (got: unknown, digits: string): string | undefined => {
  const [mantissa = '', exponent = '0'] = digits.toLowerCase().split('e');
  const decimals = mantissa.split('.')[1]?.length ?? 0;
  const tolerance = 0.5 * 10 ** (Number(exponent) - decimals) * (1 + 1e-9);
  const right = typeof got === 'number' && Math.abs(got - Number(digits)) <= tolerance;
  return right ? undefined : `gives ${shown(got)}, not ${digits}`;
};

/** What is wrong with an example, or undefined when it holds. */
export const faultOf = ({ expression, expected }: Example, names: Names): string | undefined => {
  if (expected === '') return 'says nothing of what comes out: end it with // and the value';
  try {
    const got = run(expression, names);
    if (expected === 'refused')
      return isObject(got) && got.kind === 'refused' ? undefined : `gives ${shown(got)}`;
    if (inner(got) === expected) return undefined;
    const digits = /^-?\d+(\.\d+)?(e[+-]?\d+)?(?= |$)/i.exec(expected)?.[0];
    if (digits !== undefined) return wrongNumber(inner(got), digits);
    return isDeepStrictEqual(inner(got), run(expected, names))
      ? undefined
      : `gives ${shown(inner(got))}, not ${expected}`;
  } catch (error) {
    return `does not run: ${error instanceof Error ? error.message : String(error)}`;
  }
};
