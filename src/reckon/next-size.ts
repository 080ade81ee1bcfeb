/** @module The sizes to regrind a journal and to rebore a cylinder to, asked for by name. */
import { formatFigure } from '../quantity/figure.ts';
import { type Answer, answer, type Refusal, refuse } from '../quantity/refusal.ts';
import { certain, expanded } from '../quantity/uncertain.ts';
import { leftOver, type Machined, nextStep } from './clean-up.ts';
import { lengthTable } from './length-list.ts';
import { type Input, quantityOf, type Reckoned, type Reckoning, result, type Values } from './reckoning.ts';

/** What goes with the metal: the wall of a cylinder, the hard layer of a journal. */
interface Below {
  readonly key: string;
  readonly leastKey: string;
  readonly words: string;
}

const below: Readonly<Record<Machined, Below>> = {
  shaft: { key: 'hardened', leastKey: 'least-hardened', words: 'hard layer' },
  bore: { key: 'wall', leastKey: 'least-wall', words: 'wall' },
};

const stepsOf = (values: Values): Answer<readonly number[]> => {
  const table = lengthTable('steps', values.texts.steps ?? '');
  if (table.kind === 'refused') return table;
  const steps = table.value.flat();
  return steps.some((step) => step <= 0)
    ? refuse('a step of 0 or less is no size', 'steps', 'give finished diameters')
    : answer(steps);
};

const outOfRange = (values: Values, { key, leastKey, words }: Below): Refusal | undefined => {
  const { quantities } = values;
  const worst = quantityOf(values, 'worst').value;
  if (!(worst > 0))
    return { what: `a size of ${worst} mm is out of range`, where: 'worst', remedy: 'give its diameter' };
  const least = ['clean-up', key, leastKey].find((each) => (quantities[each]?.value ?? 0) < 0);
  if (least !== undefined)
    return { what: 'a length less than 0 is out of range', where: least, remedy: 'leave out its sign' };
  if ((quantities[key] === undefined) !== (quantities[leastKey] === undefined))
    return {
      what: `the ${words} can be judged only from both figures`,
      where: `${key}, ${leastKey}`,
      remedy: `give both ${key} and ${leastKey}, or leave both out`,
    };
  return undefined;
};

/** What is left of wall or hard layer at a finished size, its uncertain side counted; undefined where nothing was given. */
const leftBelow = (
  values: Values,
  { key }: Below,
  machined: Machined,
  finished: number,
): number | undefined => {
  const depth = values.quantities[key];
  if (depth === undefined) return undefined;
  const worst = quantityOf(values, 'worst');
  const side = leftOver({ machined, size: worst.value, expanded: 0, allowance: 0, finished }) / 2;
  return depth.value - expanded(depth, 0.95) - side;
};

const reckonNext = (values: Values, machined: Machined): Answer<Reckoned> => {
  const under = below[machined];
  const wrong = outOfRange(values, under);
  if (wrong !== undefined) return { kind: 'refused', refusal: wrong };
  const steps = stepsOf(values);
  if (steps.kind === 'refused') return steps;
  const worst = quantityOf(values, 'worst');
  const question = {
    machined,
    size: worst.value,
    expanded: expanded(worst, 0.95),
    allowance: quantityOf(values, 'clean-up').value,
  };
  const inMm = (value: number) => result(certain(value), 'mm');
  const next = nextStep(question, steps.value);
  if ('short' in next)
    return answer({
      results: { size: { value: 'none', unit: '' }, short: inMm(next.short) },
      notes: [
        `No step cleans up: the furthest, ${formatFigure(next.furthest, 3)} mm, is ${formatFigure(next.short, 3)} mm short. Renew it, or ask what else the maker allows.`,
      ],
    });
  const left = leftBelow(values, under, machined, next.finished);
  const least = values.quantities[under.leastKey]?.value;
  if (left !== undefined && least !== undefined && left < least)
    return answer({
      results: {
        size: { value: 'none', unit: '' },
        'cleans-up-at': inMm(next.finished),
        [`${under.words.replace(' ', '-')}-left`]: inMm(left),
      },
      notes: [
        `At ${formatFigure(next.finished, 3)} mm it cleans up, but the ${under.words} is then ${formatFigure(Math.max(0, left), 3)} mm where ${formatFigure(least, 3)} mm must stay. Renew it, or ask what else the maker allows.`,
      ],
    });
  const group = machined === 'shaft' ? 'journals of the group are ground' : 'cylinders are bored';
  return answer({
    results: {
      size: inMm(next.finished),
      'to-spare': inMm(next.left),
      ...(left !== undefined && { [`${under.words.replace(' ', '-')}-left`]: inMm(left) }),
    },
    notes: [
      `All ${group} to the size that the worst one needs.`,
      'Crack-test before and after; order what fits it only when the finished size is measured.',
    ],
  });
};

const inputs = (
  machined: Machined,
  words: { readonly worst: string; readonly steps: string; readonly depth: string; readonly least: string },
  examples: {
    readonly worst: string;
    readonly steps: string;
    readonly depth: string;
    readonly least: string;
  },
): readonly Input[] => [
  {
    kind: 'quantity',
    key: 'worst',
    title: words.worst,
    dimension: 'length',
    range: 'above 0; what stands after ± is counted against it',
    example: examples.worst,
  },
  {
    kind: 'quantity',
    key: 'clean-up',
    title: 'what must come off on the diameter before the worst place is clean',
    dimension: 'length',
    range: '0 and up; 0.05 to 0.10 mm is usual (common practice, no source)',
    example: '0.05mm',
  },
  {
    kind: 'text',
    key: 'steps',
    title: words.steps,
    range: 'above 0, in any order, commas between and a unit after the last',
    example: examples.steps,
  },
  {
    kind: 'quantity',
    key: below[machined].key,
    title: words.depth,
    dimension: 'length',
    range: '0 and up',
    example: examples.depth,
    optional: true,
  },
  {
    kind: 'quantity',
    key: below[machined].leastKey,
    title: words.least,
    dimension: 'length',
    range: '0 and up',
    example: examples.least,
    optional: true,
  },
];

const source = 'TM 5-3805-262-34, p 4-24 (next listed step); counting the uncertain side is our own caution';

export const regrindSizeReckoning: Reckoning = {
  name: 'regrind-size',
  title: 'The next undersize at which the worst journal cleans up, or by how much none does',
  inputs: inputs(
    'shaft',
    {
      worst: 'the least reading of all journals that are ground together',
      steps: 'greatest finished diameter at each undersize',
      depth: 'depth of the hard layer as it is now',
      least: 'hard layer that must stay',
    },
    { worst: '54.931±0.004mm', steps: '54.740, 54.490, 54.240 mm', depth: '2.0mm', least: '1.5mm' },
  ),
  formula:
    'the nearest step with worst − ± − clean-up − step ≥ 0; hard layer left = layer − (worst − step) / 2',
  source,
  reckon: (values) => reckonNext(values, 'shaft'),
};

export const reboreSizeReckoning: Reckoning = {
  name: 'rebore-size',
  title: 'The next oversize at which the worst bore cleans up, or by how much none does',
  inputs: inputs(
    'bore',
    {
      worst: 'the greatest reading of all bores that are bored together',
      steps: 'least finished diameter at each oversize',
      depth: 'thinnest wall as it is now',
      least: 'wall that must stay',
    },
    { worst: '98.231±0.006mm', steps: '98.250, 98.500, 99.000 mm', depth: '6.2mm', least: '5.5mm' },
  ),
  formula: 'the nearest step with step − worst − ± − clean-up ≥ 0; wall left = wall − (step − worst) / 2',
  source,
  reckon: (values) => reckonNext(values, 'bore'),
};
