/** @module The rule that an engine type takes metal off step by step, broken by the least change. */
import { describeRule } from '../../../test/engines/breach.ts';

describeRule('takes metal off step by step', [
  {
    breaks: 'a step that goes back on the one before',
    changes: [
      [
        'new: { least: 85.415 mm, greatest: 85.435 mm }, wear: { least: 85.360 mm }',
        'new: { least: 85.015 mm, greatest: 85.035 mm }, wear: { least: 84.960 mm }',
      ],
    ],
    says: /step 0.50 of pistons goes back on the step before/,
    on: 'least: 85.015 mm',
  },
  {
    breaks: 'machining that would put metal on',
    changes: [
      [
        'new: { least: 54.720 mm, greatest: 54.740 mm }, wear: { least: 54.680 mm }',
        'new: { least: 55.220 mm, greatest: 55.240 mm }, wear: { least: 55.180 mm }',
      ],
    ],
    says: /step 0.25 of main journals of the crankshaft would put metal on: main journal diameter wears smaller/,
    on: 'least: 55.220 mm',
  },
  {
    breaks: 'a step that overlaps the size before',
    changes: [
      ['new: { least: 54.720 mm, greatest: 54.740 mm }', 'new: { least: 54.720 mm, greatest: 54.975 mm }'],
    ],
    says: /limits of step 0.25 of main journals of the crankshaft overlap those of standard/,
    on: 'greatest: 54.975 mm',
  },
  {
    breaks: 'a step that lies elsewhere than its name says',
    changes: [
      ['new: { least: 47.724 mm, greatest: 47.740 mm }', 'new: { least: 47.734 mm, greatest: 47.750 mm }'],
    ],
    says: /step 0.25 of big end journals of the crankshaft lies 0.24 mm from the size as made/,
    on: 'least: 47.734 mm',
    weight: 'warning',
  },

  {
    breaks: 'a size that is computed and cannot be machined',
    changes: [['of: ring-gap', 'of: piston-clearance']],
    says: /piston clearance is computed, and cannot be machined/,
    on: 'of: piston-clearance',
  },
  {
    breaks: 'a size without limits as made',
    changes: [
      [
        '    limits: { new: { least: 0.30 mm, greatest: 0.45 mm }, wear: { greatest: 1.00 mm } }\n    source',
        '    source',
      ],
    ],
    says: /ring gap in its own bore has no limits/,
    on: 'of: ring-gap',
  },
]);
