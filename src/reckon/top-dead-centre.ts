/** @module Top dead centre between two places of equal drop, and what a dial at the top itself would leave open. */
import { mm, radians, toDegrees } from '../quantity/brand.ts';
import { formatFigure } from '../quantity/figure.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { combine, type Uncertain, uncertain } from '../quantity/uncertain.ts';
import { type Crank, crankInputs, turning } from './crank.ts';
import { crankAngles } from './crank-angle.ts';
import { quantityInput, textInput } from './inputs.ts';
import { quantityOf, type Reckoning, type Result, result, type Values } from './reckoning.ts';

interface Pair {
  /** mm */
  readonly drop: number;
  /** Degrees on the protractor. */
  readonly before: number;
  readonly after: number;
}

const entry =
  /^(\d+(?:\.\d+)?)\s*(?:mm)?\s*:\s*(-?\d+(?:\.\d+)?)\s*(?:deg|°)?\s+(-?\d+(?:\.\d+)?)\s*(?:deg|°)?$/;

/**
 * Drops with the readings of the protractor where the piston stands so far down, before and after the top.
 *
 * @param text  `3 mm: 341.2 18.4; 5 mm: 335.6 24.0`
 * @returns the pairs; refuses what cannot be read, none at all, and more than 40
 * @source  none: it reads
 * @example readPairs('3 mm') // refused
 */
export const readPairs = (text: string): Answer<readonly Pair[]> => {
  const pairs: Pair[] = [];
  for (const each of text
    .split(/[;,\n]/)
    .map((part) => part.trim())
    .filter(Boolean)) {
    const [, drop, before, after] = entry.exec(each) ?? [];
    if (drop === undefined)
      return refuse(
        `“${each.slice(0, 40)}” is no drop with two angles`,
        'pairs',
        'write the drop in mm, a colon, and the two angles in degrees: 3 mm: 341.2 18.4',
      );
    pairs.push({ drop: Number(drop), before: Number(before), after: Number(after) });
  }
  return pairs.length === 0 || pairs.length > 40
    ? refuse('no pair was given, or too many', 'pairs', 'give 1 to 40')
    : answer(pairs);
};

/** The shorter way round from one reading of the protractor to the other, degrees. */
const between = ({ before, after }: Pair): number => ((((after - before) % 360) + 540) % 360) - 180;

/**
 * How far the middle between two places of equal drop lies after the true top, where the pin stands off.
 *
 * @param crank  one that can turn, mm
 * @param drop   below the top, mm, within the stroke
 * @returns degrees; 0 without a pin offset; refuses a drop that the piston does not have
 * @source  the slider-crank triangle
 * @example middleAfterTop({ stroke: mm(98), rod: mm(168), pinOffset: mm(0) }, 5) // 0 deg
 */
export const middleAfterTop = (crank: Crank, drop: number): Answer<number> => {
  const angles = crankAngles(crank, mm(drop));
  return angles.kind === 'refused'
    ? angles
    : answer(toDegrees(radians((angles.value.before + angles.value.after) / 2)));
};

const topsOf = (crank: Crank, pairs: readonly Pair[], own: number): Answer<readonly Uncertain[]> => {
  const tops: Uncertain[] = [];
  for (const [at, pair] of pairs.entries()) {
    const shift = middleAfterTop(crank, pair.drop);
    if (shift.kind === 'refused') return shift;
    const names = ['before', 'after'].map((side) => uncertain(0, `${side} ${at + 1}`, own));
    tops.push(
      combine(
        names.map((name) => [0.5, name]),
        pair.before + between(pair) / 2 - shift.value,
      ),
    );
  }
  return answer(tops);
};

/** Half the angle over which a dial moves by no more than it can be trusted, at the top itself, degrees. */
const blindAt = (crank: Crank, dial: number): number => {
  const angles = crankAngles(crank, mm(dial));
  return angles.kind === 'refused' ? Number.NaN : toDegrees(radians(angles.value.after));
};

const crankOf = (values: Values): Answer<Crank> =>
  turning({
    stroke: mm(quantityOf(values, 'stroke').value),
    rod: mm(quantityOf(values, 'rod').value),
    pinOffset: mm(quantityOf(values, 'pin-offset').value),
  });

export const topDeadCentreReckoning: Reckoning = {
  name: 'top-dead-centre',
  title: 'Top dead centre by equal drop on both sides, on the protractor and on the rim',
  inputs: [
    ...crankInputs,
    textInput(
      'pairs',
      'drop of the piston, and what the protractor shows there before and after the top',
      '3 mm: 341.0 18.2; 5 mm: 335.4 23.9; 8 mm: 328.8 30.4',
      { range: 'drop in mm: degrees before, degrees after; semicolons between' },
    ),
    quantityInput(
      'repeatability',
      'angle',
      'standard deviation of one reading of the protractor',
      '0 and up',
      '0.1deg',
      { unlessGiven: '0.1 deg' },
    ),
    quantityInput('dial', 'length', 'least movement of the dial that can be trusted', 'above 0', '0.01mm', {
      unlessGiven: '0.01 mm',
    }),
    quantityInput('rim', 'length', 'diameter of the rim on which the mark is made', 'above 0', '380mm', {
      optional: true,
    }),
  ],
  formula:
    'top = middle of the two angles at one drop, less the offset of that middle for a pin that stands off; mean over the drops; rim length per degree = π D / 360',
  source: 'the slider-crank triangle; equal drop: common practice, no source; JCGM 100:2008, 4.2',
  reckon: (values) => {
    const crank = crankOf(values);
    if (crank.kind === 'refused') return crank;
    const own = toDegrees(radians(quantityOf(values, 'repeatability').value));
    const dial = quantityOf(values, 'dial').value;
    if (!(own >= 0 && dial > 0 && dial < 1))
      return refuse('no such instrument is used', 'repeatability, dial', 'give both as they are known');
    const pairs = readPairs(values.texts.pairs ?? '');
    if (pairs.kind === 'refused') return pairs;
    const turned = pairs.value.find((pair) => between(pair) <= 0);
    if (turned)
      return refuse(
        'the angle after the top is not past the one before it',
        `pairs, ${turned.drop} mm`,
        'write the reading before the top first, in the direction of turning',
      );
    const tops = topsOf(crank.value, pairs.value, own);
    if (tops.kind === 'refused') return tops;
    const mean = combine(tops.value.map((top) => [1 / tops.value.length, top]));
    const spread =
      Math.max(...tops.value.map(({ value }) => value)) - Math.min(...tops.value.map(({ value }) => value));
    const blind = blindAt(crank.value, dial);
    const rim = values.quantities.rim;
    const results: Record<string, Result> = {
      top: { ...result(mean, 'deg'), value: Number((((mean.value % 360) + 360) % 360).toFixed(4)) },
      spread: { value: Number(spread.toFixed(4)), unit: 'deg' },
      'dial-at-top': { value: Number(blind.toFixed(2)), unit: 'deg' },
      ...(rim && { 'rim-per-degree': result(combine([[Math.PI / 360, rim]]), 'mm/deg') }),
      ...(rim && {
        'rim-known-to': {
          value: Number(((Math.PI / 360) * rim.value * (result(mean, 'deg').u ?? 0)).toPrecision(3)),
          unit: 'mm',
        },
      }),
    };
    return answer({
      results,
      notes: [
        `A dial at the top itself stands still within ${formatFigure(blind, 1)}° either way: that is why the middle is taken.`,
        ...(spread > 0.5
          ? [
              'The drops disagree by more than half a degree: come up to each reading in the direction of turning, and look for play.',
            ]
          : []),
        'Turn by hand only, with the injectors out. Take the bar off before anybody reaches in.',
      ],
    });
  },
};
