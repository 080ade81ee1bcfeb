/** @module End float of a shaft from a dial pushed both ways, and the washers or shims that bring it to its middle. */
import { coverageFactor } from '../quantity/coverage.ts';
import { formatFigure } from '../quantity/figure.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { certain, combine, type Uncertain } from '../quantity/uncertain.ts';
import { endFloatOf, pushesOf } from './end-float-pushes.ts';
import { quantityInput, textInput } from './inputs.ts';
import { gapLimits, judgedGap } from './judged-gap.ts';
import { type NamedSize, namedSizes } from './named-sizes.ts';
import { piecesFor, setsOf } from './pieces-for-thickness.ts';
import { quantityOf, type Reckoned, type Reckoning, type Result, result, type Values } from './reckoning.ts';
import { withShared } from './shared-error.ts';

const effects = ['thicker closes', 'thicker opens'] as const;

const counts = {
  '1': { least: 1, greatest: 1 },
  '2': { least: 2, greatest: 2 },
  'up to 2': { least: 1, greatest: 2 },
  'up to 3': { least: 1, greatest: 3 },
} as const;

/** More sets than this would keep a bench waiting. */
const mostSets = 2_000_000;

const totalOf = (pieces: readonly NamedSize[]): Uncertain =>
  combine(pieces.map(({ size }) => [1, size] as const));

/** Pieces as listed, each with its own error and the one that all share, so that a piece that stays in cancels. */
const piecesIn = (values: Values, key: string): Answer<readonly NamedSize[]> => {
  const listed = namedSizes(key, values.texts[key] ?? '');
  if (listed.kind === 'refused') return listed;
  const shared = quantityOf(values, 'shared').value / coverageFactor(0.95, Infinity);
  const pieces: NamedSize[] = [];
  for (const [at, { name, size }] of listed.value.entries()) {
    if (!(size.value > 0))
      return refuse(`${name} has no thickness`, key, 'give each piece with its thickness, above 0');
    const own = withShared(size, `${key} ${at + 1}`, shared);
    if (own === undefined)
      return refuse(
        `the shared error is larger than the ± of ${name}`,
        'shared',
        'give every piece with a ± that holds the shared part too',
      );
    pieces.push({ name, size: own });
  }
  return answer(pieces);
};

/** What goes in, and the end float that it makes. */
const chosen = (values: Values, float: Uncertain): Answer<Reckoned> => {
  const { least, greatest } = values.quantities;
  if (!least || !greatest)
    return refuse('a limit is missing', 'least, greatest', 'give both: pieces are chosen for their middle');
  const effect = values.texts.effect;
  if (effect === undefined)
    return refuse(
      'it is not said what a thicker piece does',
      'effect',
      `say which: ${effects.join(', ')}; washers beside the crank close, shims under a housing mostly open`,
    );
  const fitted = piecesIn(values, 'fitted');
  if (fitted.kind === 'refused') return fitted;
  const stock = piecesIn(values, 'stock');
  if (stock.kind === 'refused') return stock;
  const asked = Object.entries(counts).find(([words]) => words === values.texts.pieces)?.[1];
  const as = fitted.value.length;
  if (!asked && as > 3)
    return refuse(`${as} pieces are fitted`, 'fitted', 'give those that will be changed, 3 at most');
  const count = asked ?? { least: as, greatest: as };
  const pieces = [...stock.value, ...(values.texts.again === 'yes' ? fitted.value : [])];
  const sets = setsOf(pieces, count);
  if (sets > mostSets)
    return refuse(
      `there are ${Math.round(sets)} ways to choose`,
      'stock',
      'leave out what is far from wanted',
    );
  const sign = effect === 'thicker closes' ? -1 : 1;
  const middle = (least.value + greatest.value) / 2;
  const old = totalOf(fitted.value);
  const wanted = old.value + sign * (middle - float.value);
  const set = piecesFor(pieces, count, wanted);
  if (set === undefined)
    return refuse('there are fewer pieces than go in', 'stock', `list ${count.least} or more`);
  const total = totalOf(set);
  const after = combine([
    [1, float],
    [sign, total],
    [-sign, old],
  ]);
  const judged = judgedGap(values, after);
  if (judged.kind === 'refused') return judged;
  const results: Record<string, Result> = {
    wanted: result(certain(wanted), 'mm'),
    chosen: { value: set.map(({ name }) => name).join(' + '), unit: '' },
    thickness: result(total, 'mm'),
    after: result(after, 'mm'),
    'off-middle': result(certain(after.value - middle), 'mm'),
  };
  for (const [key, each] of Object.entries(judged.value.results)) results[`after-${key}`] = each;
  const off = Math.max(least.value - after.value, after.value - greatest.value);
  return answer({
    results,
    notes: [
      ...(off > 1e-9
        ? [
            `Nothing in stock brings it within its limits: the nearest is ${formatFigure(off, 3)} mm off them.`,
          ]
        : []),
      ...(set.length === as && set.every((piece) => fitted.value.includes(piece))
        ? ['Nothing is nearer than what is fitted: leave it.']
        : []),
      ...(set.length === 2 ? ['Both halves on one side of the crank must be of one thickness.'] : []),
      'Thrust washers go in with the bearing face, that with the grooves, to the crank. Measure the float again when they are in.',
    ],
  });
};

export const endFloatReckoning: Reckoning = {
  name: 'end-float',
  title: 'End float of a crankshaft or camshaft, and the thrust washers or shims for it',
  inputs: [
    textInput(
      'readings',
      'dial with the shaft pushed one way, comma, pushed the other; repeats parted by semicolons',
      '0.02, 0.37; 0.01, 0.37; 0.02, 0.36 mm',
      { range: 'two readings for each pushing, up to 25 mm apart' },
    ),
    quantityInput(
      'permissible-error',
      'length',
      'maximum permissible error of the dial, plus or minus',
      '0 and up',
      '0.010mm',
      {
        unlessGiven: '0 mm',
      },
    ),
    quantityInput('step', 'length', 'one step of its scale', '0 and up', '0.01mm', { unlessGiven: '0 mm' }),
    quantityInput(
      'repeatability',
      'length',
      'standard deviation of one float, where it is known',
      '0 and up',
      '0.005mm',
      {
        unlessGiven: '0 mm',
      },
    ),
    ...gapLimits('end float', { least: '0.10mm', greatest: '0.25mm' }),
    textInput(
      'fitted',
      'pieces that were in when it was read, to be changed',
      'front 2.310±0.004, rear 2.300±0.004 mm',
      {
        range: 'names with thicknesses, commas between',
        optional: true,
      },
    ),
    textInput(
      'stock',
      'pieces to choose from',
      'A 2.310±0.004, B 2.310±0.004, C 2.435±0.004, D 2.437±0.004 mm',
      {
        range: 'names with thicknesses, commas between',
        optional: true,
      },
    ),
    textInput('effect', 'what a thicker piece does to the float', 'thicker closes', {
      oneOf: effects,
      optional: true,
    }),
    textInput('pieces', 'how many go in, where not as many as were fitted', '2', {
      oneOf: Object.keys(counts),
      optional: true,
    }),
    textInput('again', 'whether what comes out may go in again', 'no', {
      oneOf: ['no', 'yes'],
      unlessGiven: 'no',
    }),
    quantityInput(
      'shared',
      'length',
      'the part of the ± of every piece that is the error of the one micrometer',
      '0 to the least ±',
      '0.002mm',
      {
        unlessGiven: '0 mm',
      },
    ),
  ],
  formula:
    'float = mean of |other − one|; wanted = fitted ± (float − middle); after = float ± (fitted − thickness), all sets tried',
  source:
    'JCGM 100:2008, 4.2.3, F.2.2.1; ISO 14253-1:2017; TM 5-4210-233-14&P-2, p 6-152 (thrust washers by end play); fewest pieces, bearing face to the crank: common practice, no source',
  reckon: (values) => {
    const below = ['permissible-error', 'step', 'repeatability', 'shared'].find(
      (key) => quantityOf(values, key).value < 0,
    );
    if (below) return refuse('a figure less than 0 is out of range', below, 'leave out its sign');
    const pushes = pushesOf('readings', values.texts.readings ?? '');
    if (pushes.kind === 'refused') return pushes;
    const [error, step, repeatability] = ['permissible-error', 'step', 'repeatability'].map(
      (key) => quantityOf(values, key).value,
    ) as [number, number, number];
    const float = endFloatOf(pushes.value, { error, step, repeatability });
    const judged = judgedGap(values, float);
    if (judged.kind === 'refused') return judged;
    const choice =
      values.texts.stock === undefined ? answer({ results: {}, notes: [] }) : chosen(values, float);
    if (choice.kind === 'refused') return choice;
    const floats = pushes.value.map(([one, other]) => Math.abs(other - one));
    return answer({
      results: {
        'end-float': result(float, 'mm'),
        spread: result(certain(Math.max(...floats) - Math.min(...floats)), 'mm'),
        ...judged.value.results,
        ...choice.value.results,
      },
      notes: [
        ...(floats.length === 1
          ? ['One pushing says nothing of how well it repeats: push it three times.']
          : []),
        ...judged.value.notes,
        ...choice.value.notes,
        'Spindle in line with the shaft; push hard both ways, and read when the oil is squeezed out.',
      ],
    });
  },
};
