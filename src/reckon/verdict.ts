/** @module Verdict of one size against its limits, as a sum that can be asked for by name. */
import { conformanceProbability, guardBand, verdictOf } from '../measure/guard-band.ts';
import { coverageFactor } from '../quantity/coverage.ts';
import { formatFigure, tidy } from '../quantity/figure.ts';
import { type Answer, answer, type Refusal, refuse } from '../quantity/refusal.ts';
import { standardUncertainty } from '../quantity/uncertain.ts';
import { quantityOf, type Reckoning, type Values } from './reckoning.ts';

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

const limitsOf = (values: Values): Answer<Limited> => {
  const least = values.quantities.least?.value;
  const greatest = values.quantities.greatest?.value;
  if (least === undefined && greatest === undefined) {
    return refuse('there is no limit to judge by', 'least, greatest', 'give least, greatest or both');
  }
  if (least !== undefined && greatest !== undefined && least > greatest) {
    return refuse(
      `the least, ${least} mm, is more than the greatest, ${greatest} mm`,
      'least, greatest',
      'check both against the manual',
    );
  }
  return answer({ ...(least !== undefined && { least }), ...(greatest !== undefined && { greatest }) });
};

const misasked = (values: Values): Refusal | undefined => {
  const asked = quantityOf(values, 'conformance').value;
  if (!(asked > 0.5 && asked < 1)) {
    return {
      what: `a probability of ${asked} is out of range`,
      where: 'conformance',
      remedy: 'give one above 50 % and below 100 %, such as 95 %',
    };
  }
  const unsure = ['least', 'greatest', 'conformance'].find(
    (key) => (values.quantities[key]?.terms.length ?? 0) > 0,
  );
  return unsure === undefined
    ? undefined
    : { what: 'it is agreed and not measured', where: unsure, remedy: 'leave out the ±' };
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
    {
      kind: 'quantity',
      key: 'least',
      title: 'least size allowed',
      dimension: 'length',
      range: 'not above the greatest; one of the two may be left out',
      example: '54.980mm',
      optional: true,
    },
    {
      kind: 'quantity',
      key: 'greatest',
      title: 'greatest size allowed',
      dimension: 'length',
      range: 'not below the least; one of the two may be left out',
      example: '55.000mm',
      optional: true,
    },
    {
      kind: 'quantity',
      key: 'conformance',
      title: 'probability asked for before it is called within (or outside)',
      dimension: 'ratio',
      range: 'above 50 % and below 100 %',
      example: '95%',
      unlessGiven: '95 %',
    },
  ],
  formula:
    'p = Φ((greatest − y) / u) − Φ((least − y) / u); within where p ≥ asked, outside where the size lies beyond one limit with the probability asked, else unsure; guard band = z(asked) u',
  source: 'ISO 14253-1:2017 (rule, 95 % where nothing is agreed), JCGM 106:2012, 7 and 8.3',
  reckon: (values) => {
    const wrong = misasked(values);
    if (wrong !== undefined) return { kind: 'refused', refusal: wrong };
    const bounds = limitsOf(values);
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
