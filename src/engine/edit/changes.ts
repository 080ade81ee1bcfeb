/** @module What changed between two versions of an engine type, figure by figure. */
import { type Answer, answer } from '../../quantity/refusal.ts';
import { type FilePath, pathText } from '../file-path.ts';
import { fileData } from './edit-engine.ts';
import { sameValue } from './same-value.ts';
import { flowText, isEntries } from './value-text.ts';

export interface Change {
  readonly kind: 'added' | 'taken out' | 'changed';
  /** Keys from the top of the file, for a person: `characteristics, end-float, limits, wear, greatest`. */
  readonly where: string;
  /** As typed; missing where it was added. */
  readonly before?: string;
  readonly after?: string;
}

const hand = { json: false, newline: '\n' };

/** Texts without the quotes of the file. */
const shown = (value: unknown): string => (typeof value === 'string' ? value : flowText(value, hand));

/** What an item of a list is known by, so that one put in front does not make all behind it look changed. */
const nameOf = (item: unknown, at: number, list: readonly unknown[]): string => {
  if (!isEntries(item)) return typeof item === 'string' && list.indexOf(item) === at ? item : `no. ${at + 1}`;
  const known =
    item.name !== undefined
      ? String(item.name)
      : ['component', 'does', 'size', 'supplier', 'kind', 'components', 'if', 'renew', 'at', 'by']
          .flatMap((key) => (item[key] === undefined ? [] : [String(item[key])]))
          .join(' ');
  return known === '' ? `no. ${at + 1}` : known;
};

const namedItems = (list: readonly unknown[]): Readonly<Record<string, unknown>> => {
  const named: Record<string, unknown> = Object.create(null);
  for (const [at, item] of list.entries()) {
    const name = nameOf(item, at, list);
    named[name in named ? `${name}, no. ${at + 1}` : name] = item;
  }
  return named;
};

/** Figures in order, such as stages or shims, mean something together. */
const isPlainList = (value: unknown): boolean =>
  Array.isArray(value) && value.every((item) => !isEntries(item));

const apart = (before: unknown, after: unknown, path: FilePath): readonly Change[] => {
  if (sameValue(before, after)) return [];
  const where = pathText(path);
  if (before === undefined) return [{ kind: 'added', where, after: shown(after) }];
  if (after === undefined) return [{ kind: 'taken out', where, before: shown(before) }];
  const lists = Array.isArray(before) && Array.isArray(after);
  if (lists && !(isPlainList(before) && isPlainList(after)))
    return apart(namedItems(before), namedItems(after), path);
  if (lists || !isEntries(before) || !isEntries(after))
    return [{ kind: 'changed', where, before: shown(before), after: shown(after) }];
  const keys = [...new Set([...Object.keys(before), ...Object.keys(after)])];
  return keys.flatMap((key) => apart(before[key], after[key], [...path, key]));
};

/** Says of itself what version it is and who stands for it; the figures are what a reader asks for. */
const aboutItself: ReadonlySet<string> = new Set(['version', 'entered', 'checked', 'differs']);

const figuresOnly = (data: unknown): unknown =>
  isEntries(data) ? Object.fromEntries(Object.entries(data).filter(([key]) => !aboutItself.has(key))) : data;

/**
 * What changed from one engine type file to another, in the order of the file. Order, comments and layout are no
 * change, nor are the version and the names of those who stand for it.
 */
export const changesBetween = (before: string, after: string): Answer<readonly Change[]> => {
  const one = fileData(before);
  if (one.kind === 'refused') return one;
  const other = fileData(after);
  if (other.kind === 'refused') return other;
  return answer(apart(figuresOnly(one.value.data), figuresOnly(other.value.data), []));
};
