/** @module The rule that an engine type leaves a way open for each component, broken by the least change. */
import { describeRule } from '../../../test/engines/breach.ts';

describeRule('leaves a way open for each component', [
  {
    breaks: 'a component with which nothing can be done',
    changes: [
      [
        "  - { component: head-gasket, does: replace, size: standard, supplier: Tump Lane Engine Parts, price: '27.00', per: set, days: 2 }\n",
        '',
      ],
    ],
    says: /nothing can be done with head gasket/,
    on: 'title: head gasket\n    at: head\n    together: true\n    judged-by: []',
  },
  {
    breaks: 'machining without sizes',
    changes: [['component: camshaft, does: replace', 'component: camshaft, does: machine']],
    says: /camshaft have no sizes to be machined to/,
    on: 'component: camshaft, does: machine',
  },
  {
    breaks: 'machining back to the size as made',
    changes: [["does: machine\n    size: '0.25'", 'does: machine\n    size: standard']],
    says: /cannot be machined back to the size as made/,
    on: 'size: standard\n    supplier: Grindle',
  },
  {
    breaks: 'a component judged by something without limits',
    changes: [
      [
        'limits: { new: { least: 9.95 mm, greatest: 10.05 mm }, wear: { least: 9.80 mm } }\n',
        'source: invented, sheet 5\n',
      ],
      ['    source: invented, sheet 5\n    source: invented, sheet 5\n', '    source: invented, sheet 5\n'],
    ],
    says: /camshaft are judged by pump cam lift, which has no limits/,
    on: 'judged-by: [cam-lift]',
  },
  {
    breaks: 'renewal that nobody offers',
    changes: [
      ['is: [machine, sleeve], renew: rings', 'is: [machine, sleeve], renew: timing-gears'],
      ['component: timing-gears, does: replace', 'component: timing-gears, does: build up'],
    ],
    says: /timing-gears are to be renewed with bores, and nobody offers them/,
    on: 'is: [machine, sleeve], renew: timing-gears',
  },
  {
    breaks: 'a step that nobody offers',
    changes: [
      [
        '    title: thrust washers\n    at: thrust\n    together: true\n    judged-by: [end-float]\n    put-back: true\n    life: 6000 h\n',
        '    title: thrust washers\n    at: thrust\n    together: true\n    judged-by: [end-float]\n    put-back: true\n    life: 6000 h\n    sizes:\n      of: end-float\n      clean-up: 0 mm\n      steps:\n        - name: thick\n          limits: { new: { least: 0.10 mm, greatest: 0.25 mm } }\n',
      ],
    ],
    says: /nobody offers thrust washers in thick/,
    on: '- name: thick',
    weight: 'warning',
  },
  {
    breaks: 'a life of nothing',
    changes: [['life: 12000 h', 'life: 0 h']],
    says: /the life of cylinder head is not above zero/,
    on: 'life: 0 h',
  },

  {
    breaks: 'a clean-up below zero',
    changes: [['clean-up: 0.05 mm', 'clean-up: -0.05 mm']],
    says: /the clean-up of main journals of the crankshaft is below zero/,
    on: 'clean-up: -0.05 mm',
  },
]);
