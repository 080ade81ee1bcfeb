/** @module The parsed file as plain data, with its positions: read with a bound on depth, count and kind of what is in it. */
import { Composer, CST, isAlias, isMap, isScalar, isSeq, Lexer, LineCounter, type Node, Parser } from 'yaml';
import { type FilePath, type Position, positionOf } from './file-path.ts';
import { controlCharacter } from './source-text.ts';
import type { Trouble } from './trouble.ts';
import { yamlWords } from './yaml-words.ts';

/** Levels of nesting: an engine type needs nine, and what is deeper could overrun the stack of a reader. */
const greatestDepth = 40;
/** Lexical tokens: the demonstration engine has some 10,000, two thousand offers about 120,000. */
const greatestTokens = 150_000;
/** More than a page of troubles helps nobody. */
const greatestTroubles = 50;

export interface FileDocument {
  readonly value: unknown;
  readonly position: (path: FilePath, of: 'key' | 'value') => Position;
}

export interface DocumentReading {
  readonly document?: FileDocument;
  readonly troubles: readonly Trouble[];
  /** Tokens looked at before the reading ended. */
  readonly tokens: number;
}

type Tokens =
  | { readonly kind: 'tokens'; readonly tokens: readonly CST.Token[]; readonly looked: number }
  | { readonly kind: 'refused'; readonly trouble: Trouble; readonly looked: number };

const forbidden: Partial<Record<CST.TokenType, { readonly what: string; readonly remedy: string }>> = {
  alias: { what: 'an alias (*name) is not allowed', remedy: 'write the value out where it is needed' },
  anchor: { what: 'an anchor (&name) is not allowed', remedy: 'delete it, and write values out' },
  tag: { what: 'a tag (!name) is not allowed', remedy: 'delete it: values are plain text and numbers' },
  'directive-line': { what: 'a line that begins with a percent sign is not allowed', remedy: 'delete it' },
};

const trouble = (at: Position, what: string, where: string, remedy: string): Trouble => ({
  weight: 'error',
  what,
  where,
  remedy,
  ...at,
});

/** Reads token by token and stops at the first thing that has no place in an engine type. */
const tokensOf = (text: string, lines: LineCounter): Tokens => {
  const parser = new Parser(lines.addNewLine);
  const tokens: CST.Token[] = [];
  let looked = 0;
  const stop = (what: string, remedy: string): Tokens => {
    const { line, col } = lines.linePos(parser.offset);
    const at = { line: Math.max(1, line), column: Math.max(1, col) };
    return { kind: 'refused', trouble: trouble(at, what, `line ${at.line}`, remedy), looked };
  };
  lines.addNewLine(0);
  let insideScalar = false;
  for (const lexeme of new Lexer().lex(text)) {
    looked += 1;
    const type = CST.tokenType(lexeme) ?? 'space';
    const bar = insideScalar ? undefined : forbidden[type];
    if (bar !== undefined) return stop(bar.what, bar.remedy);
    // The lexer marks a scalar first; what follows is its text, whatever it looks like.
    insideScalar = !insideScalar && type === 'scalar' && lexeme === CST.SCALAR;
    if (looked > greatestTokens) return stop('the file has far too many entries', 'give an engine type file');
    for (const token of parser.next(lexeme)) tokens.push(token);
    if (parser.stack.length > greatestDepth + 1) {
      return stop(
        `the nesting is deeper than ${greatestDepth} levels`,
        'look for brackets or dashes too many',
      );
    }
  }
  for (const token of parser.end()) tokens.push(token);
  return { kind: 'tokens', tokens, looked };
};

const reservedKeys: ReadonlySet<string> = new Set(['__proto__', 'constructor', 'prototype']);

interface Walk {
  readonly lines: LineCounter;
  readonly troubles: Trouble[];
}

const tell = ({ lines, troubles }: Walk, node: Node, what: string, remedy: string): void => {
  const { line, col } = lines.linePos(node.range?.[0] ?? 0);
  troubles.push(trouble({ line, column: col }, what, `line ${line}`, remedy));
};

const plainScalar = (walk: Walk, node: Node, value: unknown): unknown => {
  const found = typeof value === 'string' ? controlCharacter(value) : undefined;
  if (found !== undefined)
    tell(walk, node, `a control character (${found.name}) is written here`, 'delete it');
  return value;
};

/** Maps become plain objects, sequences arrays. The depth is bounded by what was let through before. */
const plain = (walk: Walk, node: unknown): unknown => {
  if (isScalar(node)) return plainScalar(walk, node, node.value);
  if (isSeq(node)) return node.items.map((item) => plain(walk, item));
  if (!isMap(node)) {
    if (isAlias(node)) tell(walk, node, 'an alias is not allowed', 'write the value out');
    return null;
  }
  const entries: Record<string, unknown> = {};
  const firstLine = new Map<string, number>();
  for (const { key, value } of node.items) {
    if (!isScalar(key)) {
      tell(walk, node, 'a key is not a plain word', 'write a name, then a colon and a blank');
      continue;
    }
    const name = String(key.value);
    const line = walk.lines.linePos(key.range?.[0] ?? 0).line;
    const before = firstLine.get(name);
    if (reservedKeys.has(name)) {
      tell(walk, key, `the key ${name} is not allowed`, 'use another name');
    } else if (before === undefined) {
      firstLine.set(name, line);
      entries[name] = plain(walk, value);
    } else {
      const twice = `the key ${name.slice(0, 64)} stands twice: at line ${before} and at line ${line}`;
      tell(walk, key, twice, 'delete one of them');
    }
  }
  return entries;
};

const composed = (tokens: readonly CST.Token[], lines: LineCounter, looked: number): DocumentReading => {
  const composer = new Composer({ uniqueKeys: false, prettyErrors: false, logLevel: 'silent' });
  const [first, second] = [...composer.compose(tokens)];
  const troubles: Trouble[] = (first?.errors ?? []).slice(0, greatestTroubles).map(({ code, pos }) => {
    const { line, col } = lines.linePos(pos[0]);
    const { what, remedy } = yamlWords(code);
    return trouble({ line, column: col }, what, `line ${line}`, remedy);
  });
  if (second !== undefined) {
    const { line, col } = lines.linePos(second.range[0]);
    const remedy = 'keep one engine type a file';
    troubles.push(
      trouble({ line, column: col }, 'a second document begins in the file', `line ${line}`, remedy),
    );
  }
  if (troubles.length > 0) return { troubles, tokens: looked };
  const top = first?.contents ?? null;
  if (!isMap(top)) {
    const what = top === null ? 'the file is empty' : 'the file holds no keys';
    const remedy = 'begin with `format: endfloat engine type 1`';
    return { troubles: [trouble({ line: 1, column: 1 }, what, '', remedy)], tokens: looked };
  }
  const value = plain({ lines, troubles }, top);
  if (troubles.length > 0) return { troubles: troubles.slice(0, greatestTroubles), tokens: looked };
  const position = (path: FilePath, of: 'key' | 'value') => positionOf(top, lines, path, of);
  return { document: { value, position }, troubles, tokens: looked };
};

/** Reads YAML or JSON text into plain data; never throws, and does work in proportion to the text. */
export const readDocument = (text: string): DocumentReading => {
  const lines = new LineCounter();
  const read = tokensOf(text, lines);
  return read.kind === 'refused'
    ? { troubles: [read.trouble], tokens: read.looked }
    : composed(read.tokens, lines, read.looked);
};
