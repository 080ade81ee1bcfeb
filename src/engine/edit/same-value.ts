/** @module Whether two pieces of plain data are the same, in whatever order their keys stand. */
import { isEntries } from './value-text.ts';

export const sameValue = (one: unknown, other: unknown): boolean => {
  if (Array.isArray(one) && Array.isArray(other))
    return one.length === other.length && one.every((item, at) => sameValue(item, other[at]));
  if (!isEntries(one) || !isEntries(other)) return Object.is(one, other);
  const keys = Object.keys(one);
  return (
    keys.length === Object.keys(other).length &&
    keys.every((key) => Object.hasOwn(other, key) && sameValue(one[key], other[key]))
  );
};
