/** @module What if, on the command line: a supplier left out, another price; names looked up in what is open. */
import { chooseName } from '../engine/nearest-name.ts';
import { optionsOf } from '../plan/options.ts';
import type { Demands } from '../plan/plan-model.ts';
import type { PlanQuestion } from '../plan/question.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import type { Given, OptionSpec } from './command.ts';
import { plain } from './plain.ts';

export const whatIfOptions: readonly OptionSpec[] = [
  {
    name: 'without',
    value: 'SUPPLIER',
    many: true,
    says: 'a supplier from whom nothing is to be had; the beginning of the name is enough',
  },
  {
    name: 'price',
    value: 'OPTION=N',
    many: true,
    says: 'what if it cost so much: an option by its id under --json, or what is paid once by its name',
  },
];

const supplierNamed = (typed: string, suppliers: readonly string[]): Answer<string> => {
  const small = typed.toLowerCase();
  const exact = suppliers.filter((name) => name.toLowerCase() === small);
  const found = exact.length > 0 ? exact : suppliers.filter((name) => name.toLowerCase().startsWith(small));
  const [only] = found;
  if (only !== undefined && found.length === 1) return answer(only);
  return refuse(
    found.length === 0
      ? `nobody called ${plain(typed)} offers anything`
      : `${plain(typed)} may be ${found.join(' or ')}`,
    '--without',
    found.length === 0 ? chooseName(typed, suppliers) : 'write more of the name',
  );
};

const priceIn = (pair: string, names: ReadonlySet<string>): Answer<readonly [string, number]> => {
  const at = pair.lastIndexOf('=');
  const [name, price] = [pair.slice(0, Math.max(at, 0)), pair.slice(at + 1)];
  if (name === '' || !/^\d{1,7}(\.\d{1,2})?$/.test(price))
    return refuse(
      `${plain(pair)} is not OPTION=PRICE`,
      '--price',
      'write the option, = and the price with a point, without currency',
    );
  return names.has(name)
    ? answer([name, Math.round(Number(price) * 100)])
    : refuse(`nothing called ${plain(name)} is open or paid once`, '--price', chooseName(name, names));
};

const all = <T>(answers: readonly Answer<T>[]): Answer<readonly T[]> => {
  const values: T[] = [];
  for (const each of answers) {
    if (each.kind === 'refused') return each;
    values.push(each.value);
  }
  return answer(values);
};

/** The question with what is asked about put into its demands. */
export const askingWhatIf = (given: Given, question: PlanQuestion): Answer<PlanQuestion> => {
  const without = given.values.get('without') ?? [];
  const priced = given.values.get('price') ?? [];
  if (without.length === 0 && priced.length === 0) return answer(question);
  const offering = [...new Set(question.sheet.engine.offers.map(({ supplier }) => supplier))];
  const suppliers = all(without.map((typed) => supplierNamed(typed, offering)));
  if (suppliers.kind === 'refused') return suppliers;
  const { options } = optionsOf(question);
  const names = new Set(options.flatMap(({ id, setUps }) => [id, ...setUps.map(({ name }) => name)]));
  const prices = all(priced.map((pair) => priceIn(pair, names)));
  if (prices.kind === 'refused') return prices;
  const asked: Demands = {
    ...question.demands,
    ...(suppliers.value.length > 0 && { withoutSuppliers: suppliers.value }),
    ...(prices.value.length > 0 && { prices: Object.fromEntries(prices.value) }),
  };
  return answer({ ...question, demands: asked });
};
