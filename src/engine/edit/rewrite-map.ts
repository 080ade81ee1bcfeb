/** @module Keys with values made to hold others: kept ones changed where they stand, gone ones taken out, new ones put in. */
import { isScalar, type Node, type YAMLMap } from 'yaml';
import type { FilePath } from '../file-path.ts';
import { endOf, indentAt, lineEnd, lineStart, nextLine, type Pen, type RewriteNode } from './pen.ts';
import { entryText, flowText, keyText } from './value-text.ts';

interface Item {
  readonly name: string;
  readonly key: Node;
  readonly value: Node | undefined;
  readonly from: number;
  readonly to: number;
}

const itemsOf = (map: YAMLMap): readonly Item[] =>
  map.items.flatMap((pair) => {
    const key = pair.key as Node;
    const value = (pair.value ?? undefined) as Node | undefined;
    if (!isScalar(key)) return [];
    const from = key.range?.[0] ?? 0;
    return [{ name: String(key.value), key, value, from, to: endOf(value ?? key) }];
  });

/** Characteristics, components and their like get lines of their own; what belongs to one of them need not. */
const asLines = (path: FilePath): boolean => path.length === 1;

const standsAlone = (pen: Pen, at: number): boolean =>
  pen.text.slice(lineStart(pen.text, at), at).trim() === '';

/** Takes out a run of neighbouring items. */
const takeOut = (pen: Pen, flow: boolean, items: readonly Item[], first: number, last: number): void => {
  const begin = items[first];
  const end = items[last];
  const before = items[first - 1];
  const after = items[last + 1];
  if (!begin || !end) return;
  if (!flow && standsAlone(pen, begin.from))
    pen.put(lineStart(pen.text, begin.from), nextLine(pen.text, end.to), '');
  else if (after) pen.put(begin.from, after.from, '');
  else pen.put(before?.to ?? begin.from, end.to, '');
};

const isGone = (item: Item | undefined, value: Readonly<Record<string, unknown>>): boolean =>
  item !== undefined && !Object.hasOwn(value, item.name);

const takeOutGone = (
  pen: Pen,
  flow: boolean,
  items: readonly Item[],
  value: Readonly<Record<string, unknown>>,
  path: FilePath,
): void => {
  for (let at = 0; at < items.length; at += 1) {
    if (!isGone(items[at], value)) continue;
    let last = at;
    while (isGone(items[last + 1], value)) last += 1;
    takeOut(pen, flow, items, at, last);
    for (const { name } of items.slice(at, last + 1))
      pen.sets.push({ path: [...path, name], value: undefined });
    at = last;
  }
};

/** Text put in behind the item before it, or before the first. */
const putIn = (
  pen: Pen,
  flow: boolean,
  before: Item | undefined,
  first: Item,
  write: (indent: string) => string,
): void => {
  const beside = before ?? first;
  const indent = indentAt(pen.text, beside.from);
  const ownLine = standsAlone(pen, beside.from);
  const between = flow ? (ownLine ? `,${pen.hand.newline}${indent}` : ', ') : `${pen.hand.newline}${indent}`;
  const text = write(indent);
  if (!before) pen.put(first.from, first.from, text + between);
  else {
    const at = flow ? before.to : lineEnd(pen.text, before.to);
    pen.put(at, at, between + text);
  }
};

export const rewriteMap = (
  pen: Pen,
  map: YAMLMap,
  value: Readonly<Record<string, unknown>>,
  path: FilePath,
  rewriteNode: RewriteNode,
): void => {
  const items = itemsOf(map);
  const flow = map.flow === true;
  const [first] = items;
  if (!first || items.every((item) => isGone(item, value))) {
    pen.change(map, flowText(value, pen.hand), { path, value });
    return;
  }
  for (const item of items)
    if (!isGone(item, value) && item.value)
      rewriteNode(pen, item.value, value[item.name], [...path, item.name]);
  takeOutGone(pen, flow, items, value, path);
  let before: Item | undefined;
  for (const [name, entry] of Object.entries(value)) {
    const known = items.find((item) => item.name === name);
    if (known) before = known;
    else {
      putIn(pen, flow, before, first, (indent) =>
        flow
          ? `${keyText(name, pen.hand)}: ${flowText(entry, pen.hand)}`
          : entryText(name, entry, indent, pen.hand, asLines(path)),
      );
      pen.sets.push({ path: [...path, name], value: entry });
    }
  }
};
