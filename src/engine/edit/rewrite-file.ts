/** @module An engine type file made to hold other values, with every line left alone that need not change. */
import { type Document, isMap, isScalar, isSeq, type Node, parseDocument } from 'yaml';
import { readDocument } from '../file-document.ts';
import type { FilePath } from '../file-path.ts';
import type { Pen } from './pen.ts';
import { rewriteList } from './rewrite-list.ts';
import { rewriteMap } from './rewrite-map.ts';
import { sameValue } from './same-value.ts';
import { flowText, isEntries } from './value-text.ts';

/** Puts a value where a node stands. */
const rewriteNode = (pen: Pen, node: Node, value: unknown, path: FilePath): void => {
  if (sameValue(node.toJSON(), value)) return;
  if (isMap(node) && isEntries(value)) rewriteMap(pen, node, value, path, rewriteNode);
  else if (isSeq(node) && Array.isArray(value)) rewriteList(pen, node, value, path, rewriteNode);
  else pen.change(node, flowText(value, pen.hand, isScalar(node) ? node.type : undefined), { path, value });
};

const spliced = (pen: Pen): string => {
  let written = '';
  let from = 0;
  for (const splice of [...pen.splices].sort((a, b) => a.from - b.from)) {
    written += pen.text.slice(from, splice.from) + splice.text;
    from = Math.max(from, splice.to);
  }
  return written + pen.text.slice(from);
};

/** By the parser's own writer: comments and order stay, layout does not. */
const writtenAnew = (document: Document, pen: Pen): string => {
  for (const { path, value } of pen.sets) {
    if (value === undefined) document.deleteIn(path);
    else document.setIn(path, document.createNode(value));
  }
  return document.toString({ lineWidth: 0 });
};

const penFor = (text: string): Pen => {
  const splices: Pen['splices'] = [];
  const sets: Pen['sets'] = [];
  const hand = { json: /^\s*\{/.test(text), newline: text.includes('\r\n') ? '\r\n' : '\n' };
  return {
    text,
    hand,
    splices,
    sets,
    put: (from, to, words, set) => {
      splices.push({ from, to, text: words });
      if (set) sets.push(set);
    },
    change: (node, words, set) => {
      const [from = 0, to = from] = node.range ?? [];
      splices.push({ from, to, text: words });
      sets.push(set);
    },
  };
};

/**
 * The file with other values in it: comments, order, layout and every figure that is not touched stay as typed.
 *
 * @param text   a file that can be read as YAML or JSON, without a byte order mark
 * @param value  what it must hold then, as plain data
 */
export const rewriteFile = (text: string, value: unknown): string => {
  const document = parseDocument(text, { uniqueKeys: false });
  const pen = penFor(text);
  if (!isMap(document.contents)) throw new Error('only a file with keys is rewritten');
  rewriteNode(pen, document.contents, value, []);
  const holds = (written: string) => sameValue(readDocument(written).document?.value, value);
  const written = spliced(pen);
  if (holds(written)) return written;
  const anew = writtenAnew(document, pen);
  if (!holds(anew)) throw new Error('a file that was rewritten holds something else than it should');
  return anew;
};
