/** @module Sorts what was typed behind a command's name into words, switches and values, or says what is wrong with it. */
import { parseArgs } from 'node:util';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import type { Given, OptionSpec, TerminalCommand } from './command.ts';
import { didYouMean } from './nearest.ts';
import { plain } from './plain.ts';
import type { World } from './world.ts';

/** Understood by every command. */
export const everywhere: readonly OptionSpec[] = [
  { name: 'json', says: 'print the answer as JSON, for machines' },
  { name: 'help', says: 'say how the command is used' },
];

const shown = (words: readonly string[]): string => plain(words.join(' ')).slice(0, 200);

export const sortOut = (command: TerminalCommand, typed: readonly string[], world: World): Answer<Given> => {
  const specs = [...(command.options ?? []), ...everywhere];
  const where = `endfloat ${command.name}`;
  const options = Object.fromEntries(
    specs.map((spec) => [
      spec.name,
      {
        type: spec.value === undefined ? ('boolean' as const) : ('string' as const),
        multiple: true as const,
        ...(spec.name === 'help' ? { short: 'h' } : {}),
      },
    ]),
  );
  const { tokens } = parseArgs({
    args: [...typed],
    options,
    strict: false,
    allowPositionals: true,
    tokens: true,
  });
  const words: string[] = [];
  const switches = new Set<string>();
  const values = new Map<string, string[]>();
  for (const token of tokens) {
    if (token.kind === 'positional') words.push(token.value);
    if (token.kind !== 'option') continue;
    const spec = specs.find((known) => known.name === token.name);
    const names = specs.map((known) => known.name);
    const all = names.map((name) => `--${name}`).join(', ');
    if (!spec)
      return refuse(
        `there is no option ${plain(token.rawName)}`,
        where,
        didYouMean(token.name, names, `the options are ${all}`),
      );
    if (spec.value === undefined) {
      if (token.value !== undefined)
        return refuse(`--${spec.name} takes no value`, where, `write --${spec.name} alone`);
      switches.add(spec.name);
      continue;
    }
    const value = token.value;
    if (value === undefined || value === '' || (!token.inlineValue && value.startsWith('-') && value !== '-'))
      return refuse(`--${spec.name} wants a value`, where, `write --${spec.name} ${spec.value}`);
    const before = values.get(spec.name) ?? [];
    if (before.length > 0 && spec.many !== true)
      return refuse(`--${spec.name} is given twice`, where, 'give it once');
    values.set(spec.name, [...before, value]);
  }
  const [least, greatest] = command.words;
  const help = switches.has('help');
  if (!help && words.length < least)
    return refuse('something is missing', where, `write endfloat ${command.usage[0] ?? command.name}`);
  if (!help && words.length > greatest)
    return refuse(
      `too much is given: ${shown(words.slice(greatest))}`,
      where,
      `write endfloat ${command.usage[0] ?? command.name}`,
    );
  return answer({ words, switches, values, world });
};

/** Words written `key=value`; the value may hold further equals signs. */
export const keyValues = (words: readonly string[], where: string): Answer<ReadonlyMap<string, string>> => {
  const pairs = new Map<string, string>();
  for (const word of words) {
    const at = word.indexOf('=');
    if (at < 1)
      return refuse(`${shown([word])} is not key=value`, where, 'write each as key=value without spaces');
    const key = word.slice(0, at);
    if (pairs.has(key)) return refuse(`${plain(key)} is given twice`, where, 'give it once');
    pairs.set(key, word.slice(at + 1));
  }
  return answer(pairs);
};
