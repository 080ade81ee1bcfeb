/** @module The rule that walls and hardened depths leave room for the steps, broken by the least change. */
import { describeRule } from '../../../test/engines/breach.ts';

const wall = 'wall: { as-made: 6.2 mm, least: 4.5 mm }';
const gasket =
  '    title: head gasket\n    at: head\n    together: true\n    judged-by: []\n    put-back: false\n    life: 6000 h\n';
const graded = (steps: string): readonly (readonly [string, string])[] => [
  [gasket, `${gasket}    grades:\n      of: head-flatness\n      takes: greatest\n      steps:\n${steps}`],
  [
    'component: head-gasket, does: replace, size: standard',
    "component: head-gasket, does: replace, size: '1.2'",
  ],
];

describeRule('leaves room for its steps and grades', [
  {
    breaks: 'a wall of which nothing is known',
    changes: [[wall, 'wall: { least: 4.5 mm }']],
    says: /how deep it is cannot be told/,
    on: 'wall: { least',
  },
  {
    breaks: 'a wall thinner than its least',
    changes: [[wall, 'wall: { as-made: 4.2 mm, least: 4.5 mm }']],
    says: /it is 4.2 mm as made, less than the least of 4.5 mm/,
    on: 'wall: { as-made: 4.2 mm',
  },
  {
    breaks: 'a step that leaves too thin a wall',
    // source: by hand, 4.9 mm less (86.022 mm - 85.000 mm) / 2
    changes: [[wall, 'wall: { as-made: 4.9 mm, least: 4.5 mm }']],
    says: /step 1.00 would leave 4.389 mm, less than the least of 4.5 mm/,
    on: 'wall: { as-made: 4.9 mm',
    weight: 'warning',
  },
  {
    breaks: 'a least below zero',
    changes: [[wall, 'wall: { as-made: 6.2 mm, least: -4.5 mm }']],
    says: /what must be left is below zero/,
    on: 'least: -4.5 mm',
  },
  {
    breaks: 'a wall measured by a force',
    changes: [
      [wall, 'wall: { of: cam-lift, least: 4.5 mm }'],
      [
        '    title: pump cam lift\n    at: cam\n',
        '    title: pump cam lift\n    at: cam\n    quantity: force\n',
      ],
      [
        'new: { least: 9.95 mm, greatest: 10.05 mm }, wear: { least: 9.80 mm }',
        'new: { least: 9.95 N, greatest: 10.05 N }, wear: { least: 9.80 N }',
      ],
    ],
    says: /a length is wanted, and pump cam lift is a force/,
    on: 'of: cam-lift',
  },
  {
    breaks: 'a hardness scale without a figure',
    changes: [
      [
        'hardness: { scale: HRC, least: 48, greatest: 58 }\n      most-times: 2\n  main-shells',
        'hardness: { scale: HRC }\n      most-times: 2\n  main-shells',
      ],
    ],
    says: /a scale without a figure says nothing/,
    on: 'hardness: { scale: HRC }',
  },
  {
    breaks: 'hardness limits that cross',
    changes: [
      [
        'hardness: { scale: HRC, least: 48, greatest: 58 }\n      most-times: 2\n  main-shells',
        'hardness: { scale: HRC, least: 58, greatest: 48 }\n      most-times: 2\n  main-shells',
      ],
    ],
    says: /the hardness limits cross/,
    on: 'hardness: { scale: HRC, least: 58',
  },
  {
    breaks: 'grades that cross',
    changes: graded("        - { name: '1.2', when: { least: 0.35 mm, greatest: 0.30 mm } }\n"),
    says: /the values for grade 1.2 cross/,
    on: 'when: { least: 0.35 mm',
  },
  {
    breaks: 'grades listed thickest first',
    changes: graded(
      "        - { name: '1.3', when: { greatest: 0.50 mm } }\n        - { name: '1.2', when: { greatest: 0.30 mm } }\n",
    ),
    says: /grade 1.2 is for lower values than grade 1.3 before it/,
    on: 'when: { greatest: 0.30 mm',
  },
  {
    breaks: 'values without a grade',
    changes: graded(
      "        - { name: '1.2', when: { greatest: 0.30 mm } }\n        - { name: '1.3', when: { least: 0.40 mm } }\n",
    ),
    says: /between grades 1.2 and 1.3 there are values without a grade/,
    on: 'when: { least: 0.40 mm',
    weight: 'warning',
  },
]);
