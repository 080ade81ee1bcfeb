/** @module `endfloat reckon`: each stand-alone sum by its name, with units in its values. */
import { type Answer, answer, refuse } from '../../quantity/refusal.ts';
import { reckonByName, reckonings } from '../../reckon/list.ts';
import type { Input, Reckoning } from '../../reckon/reckoning.ts';
import { unitText, valueText } from '../../reckon/result-text.ts';
import type { Outcome, TerminalCommand } from '../command.ts';
import { keyValues } from '../given.ts';
import { didYouMean } from '../nearest.ts';
import { plain } from '../plain.ts';
import { table } from '../table.ts';

const named = (name: string): Answer<Reckoning> => {
  const reckoning = reckonings.find((known) => known.name === name);
  if (reckoning) return answer(reckoning);
  const names = reckonings.map((known) => known.name);
  return refuse(
    `there is no sum ${plain(name).slice(0, 60)}`,
    'endfloat reckon',
    didYouMean(name, names, 'endfloat reckon lists them'),
  );
};

const unlessGiven = (input: Input): string => {
  if (input.unlessGiven !== undefined) return `${input.unlessGiven} unless given`;
  return input.optional ? 'may be left out' : 'needed';
};

const exampleOf = ({ name, inputs }: Reckoning): string =>
  [
    'endfloat reckon',
    name,
    ...inputs
      .filter((input) => input.unlessGiven === undefined)
      .map((input) => `${input.key}=${/[\s;,*]/.test(input.example) ? `"${input.example}"` : input.example}`),
  ].join(' ');

const helpText = (reckoning: Reckoning): string => {
  const rows = reckoning.inputs.map((input) => [
    input.key,
    input.kind === 'quantity' ? input.dimension.replaceAll('-', ' ') : 'words',
    input.range,
    unlessGiven(input),
    input.title,
  ]);
  const heads = ['Input', 'Of', 'Range', 'Needed', 'What it is'].map((head) => ({ head }));
  return [
    `${reckoning.name}: ${reckoning.title}\n`,
    `\n${table(heads, rows)}`,
    `\nFormula: ${reckoning.formula}\n`,
    `Source:  ${reckoning.source}\n`,
    `\nExample: ${exampleOf(reckoning)}\n`,
    'A value may carry how well it is known: 98±0.05mm (half the width of the interval that holds it 95 times in 100).\n',
  ].join('');
};

const list = (): Outcome => ({
  text: `${table(
    [{ head: 'Sum' }, { head: 'What it gives' }],
    reckonings.map((reckoning) => [reckoning.name, reckoning.title]),
  )}\nendfloat reckon NAME --help says what a sum takes.`,
  json: {
    reckonings: reckonings.map(({ name, title, inputs, formula, source }) => ({
      name,
      title,
      inputs,
      formula,
      source,
    })),
  },
});

export const reckon: TerminalCommand = {
  name: 'reckon',
  summary: 'work out one sum by its name; alone it lists them',
  usage: ['reckon', 'reckon NAME key=value…', 'reckon NAME --help'],
  about:
    'Values carry their units: endfloat reckon piston-travel stroke=98mm rod=168mm angle=20deg\nendfloat reckon NAME --help gives inputs, units, formula and source.',
  words: [0, 64],
  helpOn: (subject) => {
    const reckoning = named(subject);
    return reckoning.kind === 'refused' ? reckoning : answer(helpText(reckoning.value));
  },
  run: async ({ words: [name, ...words] }) => {
    if (name === undefined) return answer(list());
    const reckoning = named(name);
    if (reckoning.kind === 'refused') return reckoning;
    const pairs = keyValues(words, `endfloat reckon ${name}`);
    if (pairs.kind === 'refused') return pairs;
    const reckoned = reckonByName(name, Object.fromEntries(pairs.value));
    if (reckoned.kind === 'refused') return reckoned;
    const { results, notes } = reckoned.value;
    const rows = Object.entries(results).map(([key, result]) => [
      key,
      valueText(result),
      unitText(result),
      result.u === undefined ? '' : `u ${valueText({ ...result, value: result.u })}`,
    ]);
    return answer({
      text: [
        table([{ head: 'Result' }, { head: 'Value', right: true }, { head: 'Unit' }, { head: '' }], rows),
        ...notes.map((note) => `${note}\n`),
      ].join(''),
      json: reckoned.value,
    });
  },
};
