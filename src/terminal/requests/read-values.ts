/** @module Reads the values typed behind keys: each by its key, unknown and missing keys told. */
import { type Answer, answer, refuse } from '../../quantity/refusal.ts';
import { keyValues } from '../given.ts';
import { didYouMean } from '../nearest.ts';
import { plain } from '../plain.ts';
import type { Key } from './keys.ts';

/** `place=main.2 characteristic=… [plane=front]`. */
export const keysText = (keys: readonly Key[]): string =>
  keys.map(({ name, needed, example }) => (needed ? `${name}=${example}` : `[${name}=${example}]`)).join(' ');

interface SomeValues {
  readonly values: Readonly<Record<string, unknown>>;
  /** Those of keys that are not among the ones asked for, as typed. */
  readonly others: Readonly<Record<string, string>>;
}

/** As `readValues`, for a request that takes other keys too. */
export const readSomeValues = (
  words: readonly string[],
  keys: readonly Key[],
  where: string,
): Answer<SomeValues> => {
  const pairs = keyValues(words, where);
  if (pairs.kind === 'refused') return pairs;
  const values: [string, unknown][] = [];
  const others: [string, string][] = [];
  for (const [name, typed] of pairs.value) {
    const known = keys.find((one) => one.name === name);
    if (!known) {
      others.push([name, typed]);
      continue;
    }
    const value = known.read(typed);
    if (value.kind === 'refused') return value;
    values.push([name, value.value]);
  }
  const missing = keys.filter(({ name, needed }) => needed && !pairs.value.has(name));
  if (missing.length > 0)
    return refuse(`${missing.map(({ name }) => name).join(', ')} missing`, where, `write ${keysText(keys)}`);
  return answer({ values: Object.fromEntries(values), others: Object.fromEntries(others) });
};

export const readValues = (
  words: readonly string[],
  keys: readonly Key[],
  where: string,
): Answer<SomeValues['values']> => {
  const pairs = keyValues(words, where);
  if (pairs.kind === 'refused') return pairs;
  const names = keys.map((one) => one.name);
  const stray = [...pairs.value.keys()].find((name) => !names.includes(name));
  if (stray !== undefined)
    return refuse(
      `there is no key ${plain(stray).slice(0, 60)}`,
      where,
      didYouMean(stray, names, `the keys are ${names.join(', ')}`),
    );
  const read = readSomeValues(words, keys, where);
  return read.kind === 'refused' ? read : answer(read.value.values);
};
