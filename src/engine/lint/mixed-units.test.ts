/** @module The rule that an engine type keeps inches and millimetres apart, broken by the least change. */
import { describeRule } from '../../../test/engines/breach.ts';

const journal = 'limits: { new: { least: 54.970 mm, greatest: 54.990 mm }, wear: { least: 54.930 mm } }';

describeRule('keeps inches and millimetres apart', [
  {
    breaks: 'an inch figure under millimetres in one set of limits',
    changes: [
      [
        'least: 0.10 mm, greatest: 0.25 mm }, wear: { greatest: 0.40 mm }',
        'least: 0.10 mm, greatest: 0.25 mm }, wear: { greatest: 6.35 mm }',
      ],
    ],
    says: /inches and millimetres look mixed in crankshaft end float: 0.25 mm and 6.35 mm/,
    on: 'greatest: 6.35 mm',
    weight: 'warning',
  },
  {
    breaks: 'an inch figure under millimetres in a shell against its journal',
    changes: [
      [
        'new: { least: 55.030 mm, greatest: 55.060 mm }, wear: { greatest: 55.090 mm }',
        'new: { least: 2.1665 mm, greatest: 2.1677 mm }, wear: { greatest: 2.1689 mm }',
      ],
    ],
    says: /inches and millimetres look mixed in main bearing clearance/,
    on: 'derived: { difference: [{ greatest: main-shell-bore }',
    weight: 'warning',
  },
  {
    breaks: 'an inch figure under millimetres in a step',
    changes: [
      [
        'new: { least: 54.720 mm, greatest: 54.740 mm }, wear: { least: 54.680 mm }',
        'new: { least: 2.1543 mm, greatest: 2.1551 mm }, wear: { least: 2.1528 mm }',
      ],
    ],
    says: /inches and millimetres look mixed in main journal diameter, step 0.25/,
    on: 'least: 2.1543 mm',
    weight: 'warning',
  },
  {
    breaks: 'two units in one set of limits',
    changes: [[journal, journal.replace('54.930 mm', '2.1626 in')]],
    says: /written in mm and in in/,
    on: '2.1626 in',
    weight: 'warning',
  },
]);
