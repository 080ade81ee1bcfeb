/** @module Clearance of a valve stem in its guide, and which of the two has worn. */
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { minus, type Uncertain } from '../quantity/uncertain.ts';
import { clearance } from './clearance.ts';
import { quantityInput } from './inputs.ts';
import { gapLimits, judgedGap } from './judged-gap.ts';
import { measuredPair, sharedInput } from './measured-pair.ts';
import { type Reckoning, type Result, result, type Values } from './reckoning.ts';

/** What a part has lost against its size when new, where that was given. */
const wearOf = (
  values: Values,
  key: 'guide' | 'stem',
  now: Uncertain,
): Answer<Readonly<Record<string, Result>>> => {
  const fresh = values.quantities[`new-${key}`];
  if (fresh === undefined) return answer({});
  if (!(fresh.value > 0 && Math.abs(fresh.value / now.value - 1) < 0.2))
    return refuse(`${fresh.value} mm when new is not of this ${key}`, `new-${key}`, 'check it and its unit');
  return answer({ [`${key}-wear`]: result(key === 'guide' ? minus(now, fresh) : minus(fresh, now), 'mm') });
};

export const stemClearanceReckoning: Reckoning = {
  name: 'stem-clearance',
  title: 'Clearance of a valve stem in its guide, and the share of each in the wear',
  inputs: [
    quantityInput('guide', 'length', 'bore of the guide, its greatest reading', 'above 0', '8.045±0.004mm'),
    quantityInput(
      'stem',
      'length',
      'stem where it runs in the guide, its least reading',
      'above 0',
      '7.955±0.003mm',
    ),
    sharedInput,
    quantityInput(
      'new-guide',
      'length',
      'greatest bore of a new guide, by the manual',
      'about that of the guide',
      '8.015mm',
      {
        optional: true,
      },
    ),
    quantityInput(
      'new-stem',
      'length',
      'least size of a new stem, by the manual',
      'about that of the stem',
      '7.960mm',
      {
        optional: true,
      },
    ),
    ...gapLimits('clearance', { least: '0.03mm', greatest: '0.10mm' }),
  ],
  formula: 'clearance = guide − stem; guide-wear = guide − new-guide, stem-wear = new-stem − stem',
  source:
    'TM 9-2815-260-24, p 5-109 (guide less stem); TM 10-3930-647-14 (wear of each from its limit when new); JCGM 100:2008, 5.2.2',
  reckon: (values) => {
    const pair = measuredPair(values, 'guide', 'stem');
    if (pair.kind === 'refused') return pair;
    const { outer: guide, inner: stem } = pair.value;
    const gap = clearance(guide, stem);
    const guideWear = wearOf(values, 'guide', guide);
    if (guideWear.kind === 'refused') return guideWear;
    const stemWear = wearOf(values, 'stem', stem);
    if (stemWear.kind === 'refused') return stemWear;
    const judged = judgedGap(values, gap);
    if (judged.kind === 'refused') return judged;
    return answer({
      results: {
        clearance: result(gap, 'mm'),
        ...guideWear.value,
        ...stemWear.value,
        ...judged.value.results,
      },
      notes: [
        ...(gap.value <= 0 ? ['The stem is no smaller than the guide: it binds.'] : []),
        ...judged.value.notes,
        'A guide wears bell-mouthed: measure it at both ends and across both ways. Cut the seat after the guide is put right.',
      ],
    });
  },
};
