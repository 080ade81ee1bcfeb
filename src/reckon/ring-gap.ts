/** @module End gap of a piston ring in the bore where it will work, judged with the worse side in mind: too small. */
import { guardBand } from '../measure/guard-band.ts';
import { answer, refuse } from '../quantity/refusal.ts';
import {
  certain,
  effectiveFreedom,
  standardUncertainty,
  times,
  type Uncertain,
} from '../quantity/uncertain.ts';
import { quantityInput } from './inputs.ts';
import { gapLimits, judgedGap } from './judged-gap.ts';
import { quantityOf, type Reckoning, type Result, result } from './reckoning.ts';
import { ringGapFromBore } from './ring-gap-from-bore.ts';

/**
 * How much must come off the ends of a ring before its gap is proved to be no less than the least allowed.
 *
 * least + guard band − gap, where the guard band stands for what is not known of the gap.
 *
 * @param gap    as measured, mm
 * @param least  allowed, mm
 * @param asked  probability asked for, above 0.5 and below 1
 * @returns mm off both ends together, 0 where nothing must come off
 * @source  ISO 14253-1:2017 (guard band at one limit)
 * @example gapToOpen(certain(0.25), 0.3, 0.95) // 0.05 mm
 */
export const gapToOpen = (gap: Uncertain, least: number, asked: number): number =>
  Math.max(0, least + guardBand(standardUncertainty(gap), asked, effectiveFreedom(gap)) - gap.value);

export const ringGapReckoning: Reckoning = {
  name: 'ring-gap',
  title: 'End gap of a piston ring in its own bore, and what the wear of the bore makes of it',
  inputs: [
    quantityInput(
      'gap',
      'length',
      'end gap by feelers, the ring pushed square into the unworn part of its own bore',
      '0 and up',
      '0.38±0.02mm',
    ),
    quantityInput('bore', 'length', 'the bore where the gap was read', 'above 0', '98.002±0.005mm'),
    quantityInput(
      'worn',
      'length',
      'the bore where it is worn most, in the travel of the rings',
      'within a tenth of the bore',
      '98.060±0.005mm',
      {
        optional: true,
      },
    ),
    ...gapLimits('end gap', { least: '0.30mm', greatest: '0.55mm' }),
  ],
  formula: 'per-bore = gap / bore; gap-worn = gap + π (worn − bore); open-by = least + guard band − gap',
  source:
    'circumference of a circle; TM 5-3805-261-34 and TM 5-3825-229-14&P, p 6-24 (gap by bore); ISO 14253-1:2017; the unworn part: common practice, no source',
  reckon: (values) => {
    const gap = quantityOf(values, 'gap');
    const bore = quantityOf(values, 'bore');
    const { worn, least, greatest } = values.quantities;
    if (gap.value < 0) return refuse('a gap less than 0 is out of range', 'gap', 'leave out its sign');
    if (!(bore.value > 0 && gap.value < bore.value))
      return refuse(
        `a gap of ${gap.value} mm is not of a bore of ${bore.value} mm`,
        'gap, bore',
        'check both and their units',
      );
    if (worn && Math.abs(worn.value / bore.value - 1) > 0.1)
      return refuse(
        'the two bores are not of one cylinder',
        'bore, worn',
        'check both bores and their units',
      );
    const judged = judgedGap(values, gap);
    if (judged.kind === 'refused') return judged;
    const there = worn && ringGapFromBore(gap, bore, worn);
    const open = least ? gapToOpen(gap, least.value, quantityOf(values, 'conformance').value) : undefined;
    const opened: Readonly<Record<string, Result>> =
      open === undefined ? {} : { 'open-by': result(certain(open), 'mm') };
    return answer({
      results: {
        gap: result(gap, 'mm'),
        'per-bore': result(times(gap, 1 / bore.value), '1'),
        ...(there && { 'gap-worn': result(there, 'mm') }),
        ...opened,
        ...judged.value.results,
      },
      notes: [
        ...(open !== undefined && open > 0
          ? [
              'Too small is worse than too large: the ends meet when the ring is hot, and it breaks or scores the bore. File from the outer face inward, both ends square.',
            ]
          : []),
        ...(there && there.value <= 0 ? ['In the narrower bore the ends would meet.'] : []),
        ...(there && greatest && gap.value <= greatest.value && there.value > greatest.value
          ? [
              'In the worn part the gap is above the greatest allowed: that is the bore’s wear, not the ring’s.',
            ]
          : []),
        ...judged.value.notes,
        'About 0.003 to 0.004 of the bore is usual: common practice, no source, and no limit.',
      ],
    });
  },
};
