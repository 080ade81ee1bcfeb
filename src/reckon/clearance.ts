/** @module Clearance between two measured parts, with the error that both measurements share taken out. */
import { answer } from '../quantity/refusal.ts';
import { combine, minus, type Uncertain } from '../quantity/uncertain.ts';
import { measuredPair, sharedInput } from './measured-pair.ts';
import { type Reckoning, result } from './reckoning.ts';

/**
 * Clearance of a shaft in a bore, on the diameter.
 *
 * Influences that both sizes name, such as the calibration of the one micrometer that measured the shaft
 * and set the bore gauge, cancel in the difference.
 *
 * @param bore   inner size, mm
 * @param shaft  outer size, mm
 * @returns mm; minus where the shaft is the larger (an interference)
 * @source  JCGM 100:2008, 5.2.2 on inputs that are correlated
 * @example clearance(uncertain(55.03, 'micrometer', 0.002), uncertain(54.98, 'micrometer', 0.002)) // 0.050 mm
 */
export const clearance = (bore: Uncertain, shaft: Uncertain): Uncertain => minus(bore, shaft);

/**
 * Clearance of a shaft in a bore as a part of one of the two diameters, to first order.
 *
 * @param bore   inner size, mm, above 0
 * @param shaft  outer size, mm, above 0
 * @param of     the diameter that it is a part of: the inner one is the shaft's
 * @returns a plain number: 0.001 is one thousandth of the diameter
 * @source  JCGM 100:2008, 5.1.2
 * @example clearanceByDiameter(certain(100.1), certain(100), 'inner') // 0.001
 */
export const clearanceByDiameter = (bore: Uncertain, shaft: Uncertain, of: 'inner' | 'outer'): Uncertain => {
  const gap = minus(bore, shaft);
  const diameter = of === 'inner' ? shaft : bore;
  const ratio = gap.value / diameter.value;
  const change = combine([
    [1 / diameter.value, gap],
    [-ratio / diameter.value, diameter],
  ]);
  return { value: ratio, terms: change.terms };
};

export const clearanceReckoning: Reckoning = {
  name: 'clearance',
  title: 'Clearance between a bore and a shaft, from their measured sizes',
  inputs: [
    {
      kind: 'quantity',
      key: 'bore',
      title: 'inner size: shell in its housing, bush, cylinder bore',
      dimension: 'length',
      range: 'above 0',
      example: '55.031±0.006mm',
    },
    {
      kind: 'quantity',
      key: 'shaft',
      title: 'outer size: journal, pin, piston skirt',
      dimension: 'length',
      range: 'above 0',
      example: '54.980±0.005mm',
    },
    sharedInput,
  ],
  formula:
    'clearance = bore − shaft, per-shaft = clearance / shaft; u² = u(bore)² + u(shaft)² − 2 u(shared)²',
  source: 'JCGM 100:2008, 5.2.2',
  reckon: (values) => {
    const pair = measuredPair(values, 'bore', 'shaft');
    if (pair.kind === 'refused') return pair;
    const { outer: bore, inner: shaft } = pair.value;
    const gap = clearance(bore, shaft);
    return answer({
      results: {
        clearance: result(gap, 'mm'),
        'per-shaft': result(clearanceByDiameter(bore, shaft, 'inner'), '1'),
      },
      notes: gap.value < 0 ? ['The shaft is the larger: this is an interference.'] : [],
    });
  },
};
