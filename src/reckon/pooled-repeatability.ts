/** @module How well an instrument repeats, from several sizes each read a few times. */
import { meanAndDeviation, pooledDeviation } from '../measure/mean-and-deviation.ts';
import { startingFreedom } from '../measure/size.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { lengthOf, type Typed } from '../quantity/typed.ts';
import { lengthRows } from './length-list.ts';
import { quantityOf, type Reckoning, type Values } from './reckoning.ts';

interface Pooled {
  /** mm. */
  readonly deviation: number;
  readonly freedom: number;
}

/**
 * Standard deviation of repeats over several sizes, with what was known of the instrument before.
 *
 * s² = (ν₀ s₀² + Σ (n - 1) s²) / (ν₀ + Σ (n - 1)): each size about its own mean.
 *
 * @param groups   readings of one size each, any one unit, two or more in at least one of them where nothing was known
 * @param before   what was known: a deviation in that unit, with degrees of freedom; none: 0 and 0
 * @returns in that unit, with degrees of freedom
 * @source  JCGM 100:2008, 4.2.4 and H.5.2.3
 * @example pooledRepeatability([[0.012, 0.014], [0.005, 0.007, 0.006]], { deviation: 0, freedom: 0 }).deviation // 0.0011547
 */
export const pooledRepeatability = (groups: readonly (readonly number[])[], before: Pooled): Pooled =>
  pooledDeviation([before, ...groups.map((group) => meanAndDeviation(group))]);

const figuresOf = (rows: readonly (readonly Typed[])[]): readonly (readonly number[])[] =>
  rows.map((row) =>
    row.map((typed) => {
      const length = lengthOf(typed);
      return length.kind === 'answer' ? length.value : Number.NaN;
    }),
  );

const knownBefore = (values: Values): Answer<Pooled> => {
  const deviation = values.quantities.before?.value;
  const freedom = quantityOf(values, 'before-freedom').value;
  if (deviation === undefined) return answer({ deviation: 0, freedom: 0 });
  if (deviation < 0 || !(freedom >= 1 && freedom <= 1e6)) {
    return refuse(
      'what was known before is out of range',
      'before, before-freedom',
      'give a deviation of 0 and up, with one or more degrees of freedom',
    );
  }
  return answer({ deviation, freedom });
};

export const pooledRepeatabilityReckoning: Reckoning = {
  name: 'pooled-repeatability',
  title: 'How well an instrument repeats, from several sizes each read a few times',
  inputs: [
    {
      kind: 'text',
      key: 'readings',
      title: 'repeats of each size parted by commas, the sizes by semicolons, a unit after the last',
      range: 'two or more repeats of at least one size',
      example: '54.980, 54.982, 54.981; 54.971, 54.970; 61.005, 61.007, 61.005 mm',
    },
    {
      kind: 'quantity',
      key: 'before',
      title: 'standard deviation of repeats that stood in the register before',
      dimension: 'length',
      range: '0 and up',
      example: '0.0015mm',
      optional: true,
    },
    {
      kind: 'quantity',
      key: 'before-freedom',
      title: 'degrees of freedom behind that',
      dimension: 'count',
      range: '1 and up',
      example: '9',
      unlessGiven: `${startingFreedom}`,
    },
  ],
  formula: 's² = (ν₀ s₀² + Σ (n − 1) s²) / (ν₀ + Σ (n − 1)), each size about its own mean',
  source: 'JCGM 100:2008, 4.2.4 and H.5.2.3',
  reckon: (values) => {
    const rows = lengthRows('readings', values.texts.readings ?? '');
    if (rows.kind === 'refused') return rows;
    const before = knownBefore(values);
    if (before.kind === 'refused') return before;
    const { deviation, freedom } = pooledRepeatability(figuresOf(rows.value), before.value);
    if (freedom === 0) {
      return refuse('no size was read twice', 'readings', 'read at least one size two times or more');
    }
    return answer({
      results: {
        repeatability: { value: Number(deviation.toPrecision(12)), unit: 'mm' },
        freedom: { value: freedom, unit: '1' },
      },
      notes: freedom < 4 ? ['So few repeats say little: read more sizes twice.'] : [],
    });
  },
};
