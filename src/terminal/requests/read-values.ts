/** @module Reads the values typed behind keys: each by its key, unknown and missing keys told. */
import { type Answer, answer, refuse } from '../../quantity/refusal.ts';
import { keyValues } from '../given.ts';
import { didYouMean } from '../nearest.ts';
import { plain } from '../plain.ts';
import type { Key } from './keys.ts';

/** `place=main.2 characteristic=… [plane=front]`. */
export const keysText = (keys: readonly Key[]): string =>
  keys.map(({ name, needed, example }) => (needed ? `${name}=${example}` : `[${name}=${example}]`)).join(' ');

export const readValues = (
  words: readonly string[],
  keys: readonly Key[],
  where: string,
): Answer<Readonly<Record<string, unknown>>> => {
  const pairs = keyValues(words, where);
  if (pairs.kind === 'refused') return pairs;
  const values: [string, unknown][] = [];
  for (const [name, typed] of pairs.value) {
    const known = keys.find((one) => one.name === name);
    const names = keys.map((one) => one.name);
    if (!known)
      return refuse(
        `there is no key ${plain(name).slice(0, 60)}`,
        where,
        didYouMean(name, names, `the keys are ${names.join(', ')}`),
      );
    const value = known.read(typed);
    if (value.kind === 'refused') return value;
    values.push([name, value.value]);
  }
  const missing = keys.filter(({ name, needed }) => needed && !pairs.value.has(name));
  if (missing.length > 0)
    return refuse(`${missing.map(({ name }) => name).join(', ')} missing`, where, `write ${keysText(keys)}`);
  return answer(Object.fromEntries(values));
};
