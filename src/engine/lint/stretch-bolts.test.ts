/** @module The rule that stretch bolts can be renewed, broken by the least change. */
import { describeRule } from '../../../test/engines/breach.ts';

describeRule('can renew the bolts that stretch for good', [
  {
    breaks: 'bolts that stretch once and have no new ones',
    changes: [['    renewed-by: big-end-stretch-bolts\n', '']],
    says: /big end bolts stretch once, and nothing says what they are renewed by/,
    on: 'stretch: once',
  },
  {
    breaks: 'new ones that are too few',
    changes: [['    count: 2\n    thread: M10', '    count: 4\n    thread: M10']],
    says: /big end bolts are 4 to a place, and big end bolts, stretched once only 2/,
    on: 'renewed-by: big-end-stretch-bolts',
  },
  {
    breaks: 'new ones that belong elsewhere',
    changes: [['renewed-by: big-end-stretch-bolts', 'renewed-by: main-lock-tabs']],
    says: /big end bolts sit at big-end, and lock tabs of the main caps at main/,
    on: 'renewed-by: main-lock-tabs',
  },
  {
    breaks: 'new ones that are not there',
    changes: [['renewed-by: big-end-stretch-bolts', 'renewed-by: big-end-bolts']],
    says: /there is no part used but once big-end-bolts/,
    on: 'renewed-by: big-end-bolts',
  },
  {
    breaks: 'a longest length of nothing',
    changes: [['stretch: once', 'stretch: { longest: 0 mm }']],
    says: /big end bolts cannot be so short/,
    on: 'stretch: { longest: 0 mm }',
  },
]);
