/** @module Where something stands in an engine type file: by its keys, and by line and column. */
import { isMap, isNode, isScalar, isSeq, type LineCounter, type Node } from 'yaml';

/** Keys and positions from the top of the file, for example `['components', 'mains', 'life']`. */
export type FilePath = readonly (string | number)[];

export interface Position {
  /** 1 and up. */
  readonly line: number;
  readonly column: number;
}

/** For a message: `components, mains, sizes, steps, no. 2`. */
export const pathText = (path: FilePath): string =>
  path.map((key) => (typeof key === 'number' ? `no. ${key + 1}` : key)).join(', ');

interface Step {
  readonly key: Node | undefined;
  readonly value: Node | undefined;
}

const stepInto = (node: Node | undefined, key: string | number): Step | undefined => {
  if (isMap(node)) {
    const pair = node.items.find((item) => isScalar(item.key) && String(item.key.value) === String(key));
    if (pair === undefined) return undefined;
    return {
      key: isNode(pair.key) ? pair.key : undefined,
      value: isNode(pair.value) ? pair.value : undefined,
    };
  }
  if (!isSeq(node) || typeof key !== 'number') return undefined;
  const item = node.items[key];
  return isNode(item) ? { key: item, value: item } : undefined;
};

/**
 * Finds line and column of a path: of the key where `of` says so, else of the value; of the nearest
 * thing around it where the path leads nowhere, as with a key that is missing.
 */
export const positionOf = (
  top: Node | null,
  lines: LineCounter,
  path: FilePath,
  of: 'key' | 'value',
): Position => {
  let node: Node | undefined = top ?? undefined;
  let found: Node | undefined = node;
  for (const [index, key] of path.entries()) {
    const step = stepInto(node, key);
    if (step === undefined) break;
    const last = index === path.length - 1;
    node = step.value;
    found = (last && of === 'value' ? (step.value ?? step.key) : (step.key ?? step.value)) ?? found;
  }
  const { line, col } = lines.linePos(found?.range?.[0] ?? 0);
  return { line: Math.max(1, line), column: Math.max(1, col) };
};
