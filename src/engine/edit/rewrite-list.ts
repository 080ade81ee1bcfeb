/** @module A list made to hold other values: what is the same at both ends stays as it is written. */
import type { Node, YAMLSeq } from 'yaml';
import type { FilePath } from '../file-path.ts';
import { endOf, indentAt, lineEnd, lineStart, nextLine, type Pen, type RewriteNode } from './pen.ts';
import { sameValue } from './same-value.ts';
import { flowText, itemText } from './value-text.ts';

/** How many of the first, and then of the last, are the same in both. */
const sameEnds = (old: readonly unknown[], now: readonly unknown[]): readonly [number, number] => {
  const least = Math.min(old.length, now.length);
  let head = 0;
  while (head < least && sameValue(old[head], now[head])) head += 1;
  let tail = 0;
  while (tail < least - head && sameValue(old.at(-1 - tail), now.at(-1 - tail))) tail += 1;
  return [head, tail];
};

const dashOf = (pen: Pen, node: Node): number => pen.text.lastIndexOf('-', (node.range?.[0] ?? 0) - 1);

const removeLines = (pen: Pen, first: Node, last: Node): void =>
  pen.put(lineStart(pen.text, dashOf(pen, first)), nextLine(pen.text, endOf(last)), '');

const addLines = (pen: Pen, items: readonly Node[], at: number, values: readonly unknown[]): void => {
  const beside = items[at - 1] ?? items[0];
  if (!beside) return;
  const dash = dashOf(pen, beside);
  const indent = indentAt(pen.text, dash);
  const texts = values.map((value) => `- ${itemText(value, indent, pen.hand)}`);
  const between = `${pen.hand.newline}${indent}`;
  if (at === 0) pen.put(dash, dash, texts.map((text) => text + between).join(''));
  else {
    const end = lineEnd(pen.text, endOf(beside));
    pen.put(end, end, texts.map((text) => between + text).join(''));
  }
};

export const rewriteList = (
  pen: Pen,
  list: YAMLSeq,
  value: readonly unknown[],
  path: FilePath,
  rewriteNode: RewriteNode,
): void => {
  const items = list.items as readonly Node[];
  const old = list.toJSON() as readonly unknown[];
  const [head, tail] = sameEnds(old, value);
  const pairs = Math.min(items.length, value.length) - head - tail;
  const others = items.length !== value.length;
  const scalars = value.every((item) => typeof item !== 'object');
  if (list.flow === true ? others || scalars : value.length === 0) {
    pen.change(list, flowText(value, pen.hand), { path, value });
    return;
  }
  for (let at = head; at < head + pairs; at += 1) {
    const item = items[at];
    if (item) rewriteNode(pen, item, value[at], [...path, at]);
  }
  if (!others) return;
  pen.sets.push({ path, value });
  const from = head + pairs;
  const [first, last] = [items[from], items[items.length - tail - 1]];
  if (items.length > value.length && first && last) removeLines(pen, first, last);
  else addLines(pen, items, from, value.slice(from, value.length - tail));
};
