/** @module Injection pumps against one another: who delivers too much or too little, and the fewest that need be touched. */
import { verdictOf } from '../measure/guard-band.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { combine, propagate, standardUncertainty, type Uncertain } from '../quantity/uncertain.ts';
import { quantityInput, textInput } from './inputs.ts';
import { type NamedSize, namedSizes } from './named-sizes.ts';
import { quantityOf, type Reckoning, type Result, result, type Values } from './reckoning.ts';

/**
 * The fewest figures to change so that all lie within a width, and what to bring them to.
 *
 * @param figures  any finite ones, one at least
 * @param width    greatest less least that is allowed, 0 and up
 * @param through  a figure that must lie within too, where there is one
 * @returns which by index, in order, and the middle of those that stay (or `through`); of as many to change, the way
 *   whose middle lies nearest to the mean of all
 * @source  every window of sorted figures is tried: exact
 * @example fewestChanges([24, 24.2, 25.5], 0.5).change // [2]
 */
export const fewestChanges = (
  figures: readonly number[],
  width: number,
  through?: number,
): { readonly change: readonly number[]; readonly to: number } => {
  const mean = figures.reduce((sum, each) => sum + each, 0) / figures.length;
  let best: { readonly change: readonly number[]; readonly to: number; readonly off: number } | undefined;
  for (const low of through === undefined ? figures : [...figures, through]) {
    if (through !== undefined && (low > through || through > low + width)) continue;
    const inside = (each: number) => each >= low && each <= low + width * (1 + 1e-12);
    const stays = figures.filter(inside);
    const to = through ?? (Math.min(...stays) + Math.max(...stays)) / 2;
    const change = figures.flatMap((each, index) => (inside(each) ? [] : [index]));
    const off = Math.abs(to - mean);
    const better =
      best === undefined ||
      change.length < best.change.length ||
      (change.length === best.change.length && off < best.off);
    if (better) best = { change, to, off };
  }
  return best ?? { change: [], to: mean };
};

/**
 * The pumps as given to the sum.
 *
 * @param values  read by the sum's list of inputs
 * @returns name and delivery, mm³, of 2 to 40 pumps; refuses fewer, more, a name given twice, and a delivery of nothing
 * @source  none: it looks up
 * @example pumpsGiven({ quantities: {}, texts: { deliveries: '1 24.1 cm³' } }) // refused
 */
export const pumpsGiven = (values: Values): Answer<readonly NamedSize[]> => {
  const pumps = namedSizes('deliveries', values.texts.deliveries ?? '', 'volume');
  if (pumps.kind === 'refused') return pumps;
  if (pumps.value.length < 2)
    return refuse('one pump alone is not balanced', 'deliveries', 'give two at least');
  if (pumps.value.length > 40) return refuse('more than 40 pumps', 'deliveries', 'give those of one engine');
  if (new Set(pumps.value.map(({ name }) => name)).size < pumps.value.length)
    return refuse('a pump is named twice', 'deliveries', 'give each pump once');
  const empty = pumps.value.find(({ size }) => !(size.value > 0 && size.value < 1e9));
  return empty === undefined
    ? pumps
    : refuse(
        `pump ${empty.name.slice(0, 20)} delivers nothing`,
        'deliveries',
        'vent it and look for a stuck plunger or an open delivery valve first; balance needs a figure above 0',
      );
};

const inputs = [
  textInput(
    'deliveries',
    'pumps with what each delivered, same strokes and rack for all',
    '1 24.1, 2 24.6, 3 23.1, 4 24.3 cm³',
    {
      range: 'above 0, two pumps or more',
    },
  ),
  quantityInput(
    'allowed',
    'ratio',
    'greatest less least that the manual allows, in parts of the mean; 3 to 5 % at rated rack is common practice, no source',
    'above 0 to 50 %',
    '4%',
  ),
  quantityInput('wanted', 'volume', 'delivery wanted, where the manual has one', 'above 0', '24.2cm³', {
    optional: true,
  }),
  quantityInput(
    'for-each-mark',
    'volume',
    'how much one mark of the adjustment (tooth, turn, division) changes it',
    'above 0',
    '0.5cm³',
    { optional: true },
  ),
];

const misgiven = ({ quantities }: Values): Answer<never> | undefined => {
  const allowed = quantities.allowed?.value ?? 0;
  if (!(allowed > 0 && allowed <= 0.5))
    return refuse('what is allowed is out of range', 'allowed', 'give it above 0, up to 50 %');
  const empty = ['wanted', 'for-each-mark'].find((key) => {
    const value = quantities[key]?.value;
    return value !== undefined && !(value > 0 && value < 1e9);
  });
  return empty === undefined ? undefined : refuse('it is out of range', empty, 'give it above 0');
};

const cm3 = (x: Uncertain): Result => result(x, 'cm³', 1e-3);

export const pumpBalanceReckoning: Reckoning = {
  name: 'pump-balance',
  title: 'Balance of the injection pumps: how far apart they deliver, and the fewest to touch',
  inputs,
  formula:
    'spread = (greatest − least) / mean; fewest changes: the window as wide as allowed that holds most pumps (and the delivery wanted); the others go to its middle (or to that wanted)',
  source:
    'arithmetic; windows of sorted figures; ISO 14253-1 for the verdict; order of work: common practice, no source',
  reckon: (values) => {
    const wrong = misgiven(values);
    if (wrong !== undefined) return wrong;
    const pumps = pumpsGiven(values);
    if (pumps.kind === 'refused') return pumps;
    const sizes = pumps.value.map(({ size }) => size);
    const figures = sizes.map(({ value }) => value);
    const count = figures.length;
    const mean = combine(sizes.map((size) => [1 / count, size] as const));
    const spread = propagate(
      (of) => ((Math.max(...of) - Math.min(...of)) * count) / of.reduce((sum, each) => sum + each, 0),
      sizes,
    );
    if (spread.kind === 'refused') return spread;
    const allowed = quantityOf(values, 'allowed').value;
    const { wanted, 'for-each-mark': mark } = values.quantities;
    const { change, to } = fewestChanges(figures, allowed * (wanted?.value ?? mean.value), wanted?.value);
    const verdict = verdictOf(
      spread.value.value,
      standardUncertainty(spread.value),
      Infinity,
      { greatest: allowed },
      0.95,
    );
    const changes: Record<string, Result> = {};
    for (const [index, { name, size }] of pumps.value.entries()) {
      const off = combine([
        [100 / mean.value, size],
        [(-100 * size.value) / mean.value ** 2, mean],
      ]);
      changes[`${name}.off`] = result({ ...off, value: 100 * (size.value / mean.value - 1) }, '%');
      if (!change.includes(index)) continue;
      const by = combine([[-1, size]], to);
      changes[`${name}.change`] = cm3(by);
      if (mark !== undefined)
        changes[`${name}.marks`] = {
          value: Number((by.value / mark.value).toPrecision(4)),
          unit: by.value > 0 ? 'towards more' : 'towards less',
        };
    }
    const touch = change.map((index) => pumps.value[index]?.name ?? '').join(', ');
    return answer({
      results: {
        mean: cm3(mean),
        spread: result(spread.value, '%', 100),
        verdict: { value: verdict, unit: '' },
        touch: { value: touch === '' ? 'none' : touch, unit: '' },
        'bring-to': cm3({ value: to, terms: [] }),
        ...changes,
      },
      notes: [
        ...(verdict === 'unsure'
          ? [
              'Whether the spread is within what is allowed is not known well enough: measure again over more strokes.',
            ]
          : []),
        ...(touch === ''
          ? []
          : [`Touched: ${change.length} of ${count}; no way touches fewer. Measure all again afterwards.`]),
        `Rack marks alike first; then delivery; then exhaust temperatures and firing pressures under load${wanted === undefined ? '; the mean may move, so look at power and smoke after' : ''}. Change one thing at a time.`,
        'With each change prove that the rack runs free from stop to stop: a rack that sticks lets the engine run away. Fuel under injection pressure goes through skin: keep hands off the jets.',
      ],
    });
  },
};
