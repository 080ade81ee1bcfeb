/** @module Verdict of one size against its limits, as a sum that can be asked for by name. */
import { conformanceProbability, guardBand, verdictOf } from '../measure/guard-band.ts';
import { coverageFactor } from '../quantity/coverage.ts';
import { formatFigure, tidy } from '../quantity/figure.ts';
import { answer } from '../quantity/refusal.ts';
import { standardUncertainty } from '../quantity/uncertain.ts';
import { limitInputs, limitsGiven, misasked } from './limits-given.ts';
import { quantityOf, type Reckoning } from './reckoning.ts';

interface Limited {
  readonly least?: number;
  readonly greatest?: number;
}

/**
 * How well a size must be known for its verdict to be sure, if it stays where it is.
 *
 * @param value   the size, mm
 * @param bounds  one limit or both, mm
 * @param asked   probability asked for, above 0.5 and below 1
 * @returns half width of the 95 % interval, mm; 0 on a limit, where no measurement settles it
 * @source  ISO 14253-1:2017, JCGM 106:2012, 7: the standard uncertainty at which the rule turns, by halving
 * @example settledBy(54.983, { least: 54.98 }, 0.95) // 0.0036 mm
 */
export const settledBy = (value: number, bounds: Limited, asked: number): number => {
  const { least = -Infinity, greatest = Infinity } = bounds;
  const away = Math.min(Math.abs(value - least), Math.abs(greatest - value));
  let sure = 0;
  let unsure = away / guardBand(1, asked);
  if (verdictOf(value, unsure * (1 - 1e-9), Infinity, bounds, asked) !== 'unsure') sure = unsure;
  for (let turn = 0; turn < 60 && unsure - sure > 1e-12 * unsure; turn += 1) {
    const middle = (sure + unsure) / 2;
    if (verdictOf(value, middle, Infinity, bounds, asked) === 'unsure') unsure = middle;
    else sure = middle;
  }
  return sure * coverageFactor(0.95, Infinity);
};

export const verdictReckoning: Reckoning = {
  name: 'verdict',
  title: 'Verdict of a measured size against its limits: within, outside or unsure',
  inputs: [
    {
      kind: 'quantity',
      key: 'size',
      title: 'the size measured, with what it is known to',
      dimension: 'length',
      range: 'any',
      example: '54.983±0.004mm',
    },
    ...limitInputs,
  ],
  formula:
    'p = Φ((greatest − y) / u) − Φ((least − y) / u); within where p ≥ asked, outside where the size lies beyond one limit with the probability asked, else unsure; guard band = z(asked) u',
  source: 'ISO 14253-1:2017 (rule, 95 % where nothing is agreed), JCGM 106:2012, 7 and 8.3',
  reckon: (values) => {
    const wrong = misasked(values);
    if (wrong !== undefined) return { kind: 'refused', refusal: wrong };
    const bounds = limitsGiven(values);
    if (bounds.kind === 'refused') return bounds;
    const size = quantityOf(values, 'size');
    const asked = quantityOf(values, 'conformance').value;
    const u = standardUncertainty(size);
    const verdict = verdictOf(size.value, u, Infinity, bounds.value, asked);
    const probability = conformanceProbability(size.value, u, Infinity, bounds.value);
    const settled = settledBy(size.value, bounds.value, asked);
    const unsettled =
      settled === 0
        ? 'It lies on its limit: no measurement settles that.'
        : `Known to ±${formatFigure(Math.floor(settled * 1e5) / 1e5, 5)} mm or better, a size that stays there would be settled.`;
    return answer({
      results: {
        verdict: { value: verdict, unit: '' },
        conformance: { value: tidy(probability), unit: '1' },
        'guard-band': { value: tidy(guardBand(u, asked)), unit: 'mm' },
      },
      notes: [
        ...(u === 0 ? ['No ± was given with the size: it was taken as known exactly.'] : []),
        ...(verdict === 'unsure' ? [unsettled] : []),
      ],
    });
  },
};
