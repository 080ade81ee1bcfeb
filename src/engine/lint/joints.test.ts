/** @module The rule that the holes and the order of a joint take each bolt once, broken by the least change. */
import { describeRule } from '../../../test/engines/breach.ts';

describeRule('has each bolt of a joint once', [
  {
    breaks: 'a hole short',
    changes: [['    count: 10\n', '    count: 11\n']],
    says: /10 holes are given for 11 head nuts on their studs/,
    on: '- { name: 1,',
  },
  {
    breaks: 'two holes in one place',
    changes: [['{ name: 10, x: 368 mm, y: 128 mm }', '{ name: 10, x: 368 mm, y: 0 mm }']],
    says: /holes 9 and 10 of head nuts on their studs are one and the same/,
    on: '- { name: 1,',
  },
  {
    breaks: 'an order that leaves a bolt out',
    changes: [['    again:\n', '    order: [1, 2, 3, 4, 5, 6, 7, 8, 9]\n    again:\n']],
    says: /the order of head nuts on their studs leaves out 10/,
    on: 'order: [1, 2, 3, 4, 5, 6, 7, 8, 9]',
  },
  {
    breaks: 'an order that goes to a bolt twice',
    changes: [['    again:\n', '    order: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 1]\n    again:\n']],
    says: /names 1 twice, or there is no such bolt/,
    on: 'order: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 1]',
  },
  {
    breaks: 'an order reckoned from nowhere',
    changes: [
      [
        '    title: main cap bolts\n    at: main\n    count: 2\n',
        '    title: main cap bolts\n    at: main\n    order: crosswise\n    count: 2\n',
      ],
    ],
    says: /the order of main cap bolts cannot be reckoned: nothing says where they stand/,
    on: 'order: crosswise',
  },
  {
    breaks: 'many bolts, and neither holes nor order',
    changes: [
      [
        '    title: main cap bolts\n    at: main\n    count: 2\n',
        '    title: main cap bolts\n    at: main\n    count: 4\n',
      ],
    ],
    says: /nothing says where the 4 main cap bolts stand/,
    on: 'count: 4\n    thread: M12',
    weight: 'warning',
  },
]);
