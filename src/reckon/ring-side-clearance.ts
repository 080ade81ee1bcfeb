/** @module Side clearance of a piston ring in its groove: a new ring shows what the groove has lost. */
import { answer } from '../quantity/refusal.ts';
import { clearance } from './clearance.ts';
import { quantityInput, textInput } from './inputs.ts';
import { gapLimits, judgedGap } from './judged-gap.ts';
import { measuredPair, sharedInput } from './measured-pair.ts';
import { type Reckoning, result } from './reckoning.ts';

const conditions = ['new', 'used'] as const;

export const ringSideClearanceReckoning: Reckoning = {
  name: 'ring-side-clearance',
  title: 'Side clearance of a piston ring in its groove',
  inputs: [
    quantityInput(
      'groove',
      'length',
      'width of the groove, cleaned, its greatest reading round the piston',
      'above 0',
      '2.560±0.006mm',
    ),
    quantityInput(
      'ring',
      'length',
      'height of the ring between its side faces, its least reading',
      'above 0',
      '2.478±0.003mm',
    ),
    sharedInput,
    textInput('ring-is', 'whether the ring is a new one or one that has run', 'new', {
      oneOf: conditions,
      unlessGiven: 'new',
    }),
    ...gapLimits('side clearance', { least: '0.05mm', greatest: '0.15mm' }),
  ],
  formula: 'clearance = groove − ring; u² = u(groove)² + u(ring)² − 2 u(shared)²',
  source:
    'TM 9-2815-255-24, p 3-191 (by a new ring); JCGM 100:2008, 5.2.2; ISO 14253-1:2017; for rings with parallel sides',
  reckon: (values) => {
    const pair = measuredPair(values, 'groove', 'ring');
    if (pair.kind === 'refused') return pair;
    const gap = clearance(pair.value.outer, pair.value.inner);
    const judged = judgedGap(values, gap);
    if (judged.kind === 'refused') return judged;
    const used = values.texts['ring-is'] === 'used';
    return answer({
      results: { clearance: result(gap, 'mm'), ...judged.value.results },
      notes: [
        ...(gap.value <= 0
          ? [
              'The ring is no thinner than the groove: it sticks. Look for carbon in the corners of the groove.',
            ]
          : []),
        ...(used
          ? ['With a used ring the wear of the ring is in it: judge the groove with a new one.']
          : ['With a new ring, what is too much is the wear of the groove: a new ring does not mend it.']),
        ...judged.value.notes,
        'Not for rings with tapered sides: those are measured as their manual says.',
      ],
    });
  },
};
