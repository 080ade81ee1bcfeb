/** @module The plain data of an engine type file, looked up and changed by path. Nothing is changed in place. */
import type { FilePath } from '../file-path.ts';
import { isEntries } from './value-text.ts';

export const valueAt = (data: unknown, path: FilePath): unknown =>
  path.reduce<unknown>(
    (found, key) =>
      (isEntries(found) || Array.isArray(found)) && Object.hasOwn(found, key)
        ? (found as Readonly<Record<string | number, unknown>>)[key]
        : undefined,
    data,
  );

/** Groups that mean nothing once the last figure is out of them. */
const prunable: ReadonlySet<string> = new Set(['limits', 'new', 'wear', 'scheme']);

const isEmpty = (value: unknown): boolean => isEntries(value) && Object.keys(value).length === 0;

const without = (entries: Readonly<Record<string, unknown>>, name: string) =>
  Object.fromEntries(Object.entries(entries).filter(([key]) => key !== name));

/** The data with a value at a path; undefined takes out what is there, and a group of limits that it leaves empty. */
export const withValue = (data: unknown, path: FilePath, value: unknown): unknown => {
  const [key, ...rest] = path;
  if (key === undefined) return value;
  if (typeof key === 'number') {
    const list = Array.isArray(data) ? data : [];
    const inner = withValue(list[key], rest, value);
    if (inner === undefined) return list.filter((_, at) => at !== key);
    return key >= list.length ? [...list, inner] : list.map((item, at) => (at === key ? inner : item));
  }
  const entries = isEntries(data) ? data : {};
  const before = entries[key];
  if (value === undefined && before === undefined) return data;
  const inner = withValue(before, rest, value);
  return inner === undefined || (value === undefined && prunable.has(key) && isEmpty(inner))
    ? without(entries, key)
    : { ...entries, [key]: inner };
};

const heading = ['format', 'id', 'title', 'version', 'source', 'entered', 'checked', 'differs'];

/** The data with a key of the file's heading set, which comes to stand among the others there; undefined takes it out. */
export const withHeading = (data: unknown, key: string, value: unknown): unknown => {
  if (value === undefined || !isEntries(data) || Object.hasOwn(data, key))
    return withValue(data, [key], value);
  const before = heading.slice(0, heading.indexOf(key));
  const entries = Object.entries(data);
  const at = 1 + entries.findLastIndex(([name]) => before.includes(name));
  return Object.fromEntries([...entries.slice(0, at), [key, value], ...entries.slice(at)]);
};
