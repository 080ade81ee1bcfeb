/** @module How many readings of a size it takes until its verdict is sure. */
import { coverageFactor } from '../quantity/coverage.ts';
import { answer, refuse } from '../quantity/refusal.ts';
import { standardUncertainty } from '../quantity/uncertain.ts';
import { limitInputs, limitsGiven, misasked } from './limits-given.ts';
import { quantityOf, type Reckoning } from './reckoning.ts';
import { settledBy } from './verdict.ts';

interface Limited {
  readonly least?: number;
  readonly greatest?: number;
}

/**
 * How many readings in all until a size that stays where it is has a sure verdict.
 *
 * The mean of n readings is known to u² = other² + repeat² / n, and the verdict is sure from a certain u on.
 *
 * @param value   the size, mm
 * @param repeat  standard deviation of repeats, mm, 0 and up
 * @param other   standard uncertainty that repeats do not lower (calibration, zero, rounding, heat), mm
 * @param bounds  one limit or both, mm
 * @param asked   probability asked for, above 0.5 and below 1
 * @returns 1 and up; Infinity where no number of readings is enough
 * @source  JCGM 100:2008, 4.2.3; ISO 14253-1:2017
 * @example repeatsNeeded(54.983, 0.0015, 0.0015, { least: 54.98 }, 0.95) // 3
 */
export const repeatsNeeded = (
  value: number,
  repeat: number,
  other: number,
  bounds: Limited,
  asked: number,
): number => {
  const enough = settledBy(value, bounds, asked) / coverageFactor(0.95, Infinity);
  const left = enough * enough - other * other;
  if (left < 0 || enough === 0) return Infinity;
  if (repeat === 0) return 1;
  const count = (repeat * repeat) / left;
  // What arithmetic left a hair above a whole number is that number.
  return Number.isFinite(count) ? Math.max(1, Math.ceil(count - 1e-9)) : Infinity;
};

export const repeatsNeededReckoning: Reckoning = {
  name: 'repeats-needed',
  title: 'How many readings of a size it takes until its verdict is sure',
  inputs: [
    {
      kind: 'quantity',
      key: 'size',
      title: 'the size as read; its ± is what more readings do not lower (calibration, zero, heat)',
      dimension: 'length',
      range: 'any',
      example: '54.983±0.003mm',
    },
    {
      kind: 'quantity',
      key: 'repeatability',
      title: 'standard deviation of repeats',
      dimension: 'length',
      range: '0 and up',
      example: '0.0015mm',
    },
    ...limitInputs,
  ],
  formula: 'least n with √(other² + s² / n) small enough for the verdict',
  source: 'JCGM 100:2008, 4.2.3; ISO 14253-1:2017',
  reckon: (values) => {
    const wrong = misasked(values);
    if (wrong !== undefined) return { kind: 'refused', refusal: wrong };
    const bounds = limitsGiven(values);
    if (bounds.kind === 'refused') return bounds;
    const repeat = quantityOf(values, 'repeatability').value;
    if (repeat < 0)
      return refuse('a deviation less than 0 is out of range', 'repeatability', 'leave out its sign');
    const size = quantityOf(values, 'size');
    const asked = quantityOf(values, 'conformance').value;
    const count = repeatsNeeded(size.value, repeat, standardUncertainty(size), bounds.value, asked);
    return Number.isFinite(count)
      ? answer({
          results: { readings: { value: count, unit: '1' } },
          notes: count > 12 ? ['Nobody reads a size so often: take a better instrument.'] : [],
        })
      : answer({
          results: { readings: { value: 'none', unit: '' } },
          notes: [
            'No number of readings settles it: lower what they share (zero, calibration, heat), or take a better instrument.',
          ],
        });
  },
};
