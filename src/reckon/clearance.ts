/** @module Clearance between two measured parts, with the error that both measurements share taken out. */
import { coverageFactor } from '../quantity/coverage.ts';
import { answer, refuse } from '../quantity/refusal.ts';
import { combine, minus, standardUncertainty, type Uncertain } from '../quantity/uncertain.ts';
import { quantityOf, type Reckoning, result } from './reckoning.ts';

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

/** Clearance over shaft: bore / shaft − 1, to first order. */
const perShaft = (bore: Uncertain, shaft: Uncertain): Uncertain => {
  const ratio = bore.value / shaft.value;
  const change = combine([
    [1 / shaft.value, bore],
    [-ratio / shaft.value, shaft],
  ]);
  return { value: (bore.value - shaft.value) / shaft.value, terms: change.terms };
};

/** A size of which one part is the shared error and the rest its own; undefined where the whole is less than the part. */
const parted = (size: Uncertain, own: string, shared: number): Uncertain | undefined => {
  const u = standardUncertainty(size);
  if (shared > u * (1 + 1e-12)) return undefined;
  const rest = Math.sqrt(Math.max(0, u * u - shared * shared));
  const terms = [
    { name: own, share: rest, freedom: Infinity },
    { name: 'shared', share: shared, freedom: Infinity },
  ];
  return { value: size.value, terms: terms.filter(({ share }) => share > 0) };
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
    {
      kind: 'quantity',
      key: 'shared',
      title:
        'the part of both ± that is one and the same error, as where one micrometer served for both: it cancels',
      dimension: 'length',
      range: '0 to the smaller of the two ±',
      example: '0.004mm',
      unlessGiven: '0 mm',
    },
  ],
  formula:
    'clearance = bore − shaft, per-shaft = clearance / shaft; u² = u(bore)² + u(shaft)² − 2 u(shared)²',
  source: 'JCGM 100:2008, 5.2.2',
  reckon: (values) => {
    const bore = quantityOf(values, 'bore');
    const shaft = quantityOf(values, 'shaft');
    const half = quantityOf(values, 'shared').value;
    for (const [key, size] of [
      ['bore', bore],
      ['shaft', shaft],
    ] as const) {
      if (!(size.value > 0)) {
        return refuse(`a ${key} of ${size.value} mm is out of range`, key, 'give its diameter, above 0');
      }
    }
    if (half < 0) {
      return refuse('a shared error less than 0 is out of range', 'shared', 'leave out its sign');
    }
    const shared = half / coverageFactor(0.95, Infinity);
    const ownBore = parted(bore, 'bore', shared);
    const ownShaft = parted(shaft, 'shaft', shared);
    if (ownBore === undefined || ownShaft === undefined) {
      return refuse(
        'the shared error is larger than the ± it is part of',
        'shared',
        'give bore and shaft with a ± that holds the shared part too',
      );
    }
    const gap = clearance(ownBore, ownShaft);
    return answer({
      results: {
        clearance: result(gap, 'mm'),
        'per-shaft': result(perShaft(ownBore, ownShaft), '1'),
      },
      notes: gap.value < 0 ? ['The shaft is the larger: this is an interference.'] : [],
    });
  },
};
