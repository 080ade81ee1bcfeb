/** @module Clearance of a piston in its bore, from the measured skirt and the measured bore. */
import { answer } from '../quantity/refusal.ts';
import { clearance, clearanceByDiameter } from './clearance.ts';
import { quantityInput } from './inputs.ts';
import { gapLimits, judgedGap } from './judged-gap.ts';
import { measuredPair, sharedInput } from './measured-pair.ts';
import { type Reckoning, result } from './reckoning.ts';

export const pistonClearanceReckoning: Reckoning = {
  name: 'piston-clearance',
  title: 'Clearance of a piston in its bore, from skirt and bore',
  inputs: [
    quantityInput(
      'bore',
      'length',
      'cylinder bore where the skirt runs, across the crankshaft; where it is worn, its greatest reading',
      'above 0',
      '98.062±0.006mm',
    ),
    quantityInput(
      'piston',
      'length',
      'skirt at the height that the manual names, square to the pin',
      'above 0',
      '97.950±0.005mm',
    ),
    sharedInput,
    ...gapLimits('clearance', { least: '0.08mm', greatest: '0.15mm' }),
  ],
  formula:
    'clearance = bore − piston, per-bore = clearance / bore; u² = u(bore)² + u(piston)² − 2 u(shared)²',
  source:
    'TM 9-2815-226-34-1 (skirt square to the pin, set beside the bore); JCGM 100:2008, 5.2.2; ISO 14253-1:2017',
  reckon: (values) => {
    const pair = measuredPair(values, 'bore', 'piston');
    if (pair.kind === 'refused') return pair;
    const { outer: bore, inner: piston } = pair.value;
    const gap = clearance(bore, piston);
    const judged = judgedGap(values, gap);
    if (judged.kind === 'refused') return judged;
    return answer({
      results: {
        clearance: result(gap, 'mm'),
        'per-bore': result(clearanceByDiameter(bore, piston, 'outer'), '1'),
        ...judged.value.results,
      },
      notes: [
        ...(gap.value <= 0 ? ['The piston is no smaller than the bore: it does not go in.'] : []),
        ...judged.value.notes,
        'Both parts at one temperature: an aluminium piston measured warm reads large, and the clearance small.',
        'For an aluminium skirt 0.0008 to 0.0015 of the bore is usual: common practice, no source, and no limit.',
      ],
    });
  },
};
