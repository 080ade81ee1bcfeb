/** @module The order in which the bolts of a joint are tightened, from where they stand, or as its maker says. */
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { textInput } from './inputs.ts';
import type { Reckoning, Values } from './reckoning.ts';

export interface Bolt {
  readonly name: string;
  /** mm in the plane of the joint. */
  readonly x: number;
  readonly y: number;
}

type Way = 'centre out' | 'crosswise' | 'spiral';
const ways: readonly Way[] = ['centre out', 'crosswise', 'spiral'];

const apart = (a: Pick<Bolt, 'x' | 'y'>, b: Pick<Bolt, 'x' | 'y'>): number =>
  Math.hypot(a.x - b.x, a.y - b.y);
const nearest = (bolt: Bolt, others: readonly Bolt[]): number =>
  Math.min(...others.map((other) => apart(bolt, other)));

/** The one that comes first by several figures, the greater before the smaller; the first given where all are alike. */
const first = (bolts: readonly Bolt[], by: (bolt: Bolt) => readonly number[]): Bolt | undefined => {
  let best: { readonly bolt: Bolt; readonly figures: readonly number[] } | undefined;
  for (const bolt of bolts) {
    const figures = by(bolt);
    const differs = figures.findIndex((figure, at) => Math.abs(figure - (best?.figures[at] ?? 0)) > 1e-6);
    if (!best || (differs >= 0 && (figures[differs] ?? 0) > (best.figures[differs] ?? 0)))
      best = { bolt, figures };
  }
  return best?.bolt;
};

const middleOf = (bolts: readonly Bolt[]) => ({
  x: bolts.reduce((sum, { x }) => sum + x, 0) / bolts.length,
  y: bolts.reduce((sum, { y }) => sum + y, 0) / bolts.length,
});

/** From the bolt nearest the middle outwards; of those as near, the one furthest from the last. */
const centreOut = (bolts: readonly Bolt[]): readonly Bolt[] => {
  const middle = middleOf(bolts);
  const order: Bolt[] = [];
  for (let left = bolts; left.length > 0; ) {
    const last = order.at(-1);
    const next = first(left, (bolt) => [-apart(bolt, middle), last ? apart(bolt, last) : 0]);
    if (!next) break;
    order.push(next);
    left = left.filter((bolt) => bolt !== next);
  }
  return order;
};

/** One bolt and then its opposite; each pair as far as can be from all before, and from the pair just done. */
const crosswise = (bolts: readonly Bolt[]): readonly Bolt[] => {
  const order: Bolt[] = [];
  for (let left = bolts; left.length > 0; ) {
    const last = order.at(-1);
    const pair = order.slice(-2);
    const next =
      last && order.length % 2 === 1
        ? first(left, (bolt) => [apart(bolt, last)])
        : first(left, (bolt) => (last ? [nearest(bolt, order), nearest(bolt, pair)] : [0]));
    if (!next) break;
    order.push(next);
    left = left.filter((bolt) => bolt !== next);
  }
  return order;
};

/** From the middle outwards, round and round in one direction: by ring, and in the ring on from the last angle. */
const spiral = (bolts: readonly Bolt[]): readonly Bolt[] => {
  const middle = middleOf(bolts);
  const reach = Math.max(...bolts.map((bolt) => apart(bolt, middle)), 1e-9);
  const ring = (bolt: Bolt) => Math.round((apart(bolt, middle) / reach) * 20);
  const angle = (bolt: Bolt) => Math.atan2(bolt.y - middle.y, bolt.x - middle.x);
  const order: Bolt[] = [];
  for (let left = bolts; left.length > 0; ) {
    const last = order.at(-1);
    const turned = (bolt: Bolt) => (last ? (angle(bolt) - angle(last) + 4 * Math.PI) % (2 * Math.PI) : 0);
    const next = first(left, (bolt) => [-ring(bolt), -turned(bolt)]);
    if (!next) break;
    order.push(next);
    left = left.filter((bolt) => bolt !== next);
  }
  return order;
};

/**
 * The order in which bolts are tightened.
 *
 * @param bolts  names and where they stand, mm; one and up
 * @param way    centre out for heads, crosswise for flanges and covers, spiral for large plates
 * @returns every bolt once; slacken in the reverse order
 * @source  common practice, no source; crosswise on a ring as the star patterns of ASME PCC-1 (from memory)
 * @example tightenOrder([{ name: 'A', x: 0, y: 0 }, { name: 'B', x: 9, y: 0 }, { name: 'C', x: 4, y: 0 }], 'centre out').map(({ name }) => name).join('') // 'CAB'
 */
export const tightenOrder = (bolts: readonly Bolt[], way: Way): readonly Bolt[] => {
  switch (way) {
    case 'centre out':
      return centreOut(bolts);
    case 'crosswise':
      return crosswise(bolts);
    case 'spiral':
      return spiral(bolts);
    default:
      return way satisfies never;
  }
};

/** Bolts as they are written, mm: `A 0 0, B 90 0`; refuses what cannot be read, twins, and more than 200. */
const readBolts = (text: string): Answer<readonly Bolt[]> => {
  const bolts: Bolt[] = [];
  for (const entry of text
    .split(/[,;\n]/)
    .map((each) => each.trim())
    .filter(Boolean)) {
    const [, name = '', x = '', y = ''] =
      /^(\S+)\s+(-?\d+(?:\.\d+)?)\s+(-?\d+(?:\.\d+)?)(?:\s*mm)?$/.exec(entry) ?? [];
    if (name === '')
      return refuse(
        `“${entry.slice(0, 40)}” is no bolt`,
        'bolts',
        'write its name, how far along and how far across, mm: A 0 0, B 90 0',
      );
    const bolt = { name, x: Number(x), y: Number(y) };
    const twin = bolts.find((other) => other.name === name || apart(other, bolt) < 1e-6);
    if (twin)
      return refuse(
        `${name} and ${twin.name} are one and the same bolt`,
        'bolts',
        'give each its own name and place',
      );
    bolts.push(bolt);
  }
  if (bolts.length === 0 || bolts.length > 200)
    return refuse('there are no bolts to tighten, or too many', 'bolts', 'give 1 to 200');
  return answer(bolts);
};

/**
 * The order that was asked for: the maker's own where it is given.
 *
 * @param values  bolts, way, the maker's order
 * @returns bolts in order; refuses a maker's order that leaves one out or names one twice
 * @source  common practice, no source
 * @example orderGiven({ quantities: {}, texts: { bolts: 'A 0 0, B 9 0', way: 'spiral', maker: 'B' } }) // refused
 */
export const orderGiven = ({ texts }: Values): Answer<readonly Bolt[]> => {
  const bolts = readBolts(texts.bolts ?? '');
  if (bolts.kind === 'refused') return bolts;
  const named = (texts.maker ?? '').split(/[\s,;]+/).filter(Boolean);
  if (named.length === 0)
    return answer(tightenOrder(bolts.value, ways.find((way) => way === texts.way) ?? 'centre out'));
  const order = named.flatMap((name) => bolts.value.find((bolt) => bolt.name === name) ?? []);
  const lacking = bolts.value.filter((bolt) => !order.includes(bolt)).map(({ name }) => name);
  if (lacking.length > 0 || new Set(order).size !== named.length)
    return refuse(
      lacking.length > 0
        ? `the maker's order leaves out ${lacking.join(', ')}`
        : "the maker's order names a bolt twice or one that is not there",
      'maker',
      'name every bolt once',
    );
  return answer(order);
};

export const tightenOrderReckoning: Reckoning = {
  name: 'tighten-order',
  title: 'The order in which the bolts of a joint are tightened and slackened',
  inputs: [
    textInput(
      'bolts',
      'each bolt with how far along and across it stands, mm',
      '1 0 0, 2 0 120, 3 90 0, 4 90 120, 5 180 0, 6 180 120, 7 270 0, 8 270 120, 9 360 0, 10 360 120',
      {
        range: 'name, along, across; with commas between; 1 to 200',
      },
    ),
    textInput(
      'way',
      'centre out for a head, crosswise for a flange, spiral for a large plate',
      'centre out',
      { oneOf: ways, unlessGiven: 'centre out' },
    ),
    textInput('maker', "the maker's own order, which goes before any other", '5 6 3 8 4 7 1 10 2 9', {
      range: 'every name once',
      optional: true,
    }),
  ],
  formula:
    'centre out: by distance from the middle, then furthest from the last; crosswise: a bolt, its opposite, the pair furthest from all done; spiral: ring by ring, on round',
  source: 'common practice, no source; crosswise as the star patterns of ASME PCC-1 (from memory)',
  reckon: (values) => {
    const order = orderGiven(values);
    if (order.kind === 'refused') return order;
    const names = order.value.map(({ name }) => name);
    return answer({
      results: {
        tighten: { value: names.join(' '), unit: '' },
        slacken: { value: names.toReversed().join(' '), unit: '' },
        ...Object.fromEntries(names.map((name, at) => [`bolt-${name}`, { value: at + 1, unit: '1' }])),
      },
      notes: [
        ...(values.texts.maker === undefined
          ? ["The maker's own order goes before this one: look it up."]
          : []),
        'Go through all bolts at each stage before the next stage begins.',
      ],
    });
  },
};
